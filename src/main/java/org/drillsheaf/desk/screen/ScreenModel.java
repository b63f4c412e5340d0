package org.drillsheaf.desk.screen;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillsheaf.Side;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.course.Course;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.FindingStrip;
import org.drillsheaf.screen.Measurement;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.Norm;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.screen.TestChange;
import org.drillsheaf.store.record.Content;

/** What the sheet with the screen shows and does. Knows no toolkit. */
public final class ScreenModel {
    private final ClientCase client;

    public ScreenModel(ClientCase client) {
        this.client = client;
    }

    public ClientCase client() {
        return client;
    }

    /** Every test in the best order of the day. */
    public List<MovementTest> tests() {
        return List.copyOf(client.evaluator()
                .knowledge()
                .vocabulary()
                .reading()
                .battery()
                .tests()
                .values());
    }

    /** The position a client is in for a test; {@code anywhere} for a count. */
    public static String position(MovementTest test) {
        if (test.norm() instanceof Norm.Count) {
            return "anywhere";
        }
        String root = test.pose()
                .flatMap(p -> p.get("start"))
                .flatMap(s -> s.text("root"))
                .orElse("standing");
        return root.startsWith("side-lying") ? "side-lying" : root;
    }

    /**
     * How one field stands.
     *
     * @param written the number as written; empty when not tested
     * @param finding what the value means; empty while nothing was read
     * @param before the value of the visit before
     */
    public record State(
            Optional<String> written,
            boolean painful,
            Optional<Finding> finding,
            Optional<FindingStrip> strip,
            OptionalDouble value,
            OptionalDouble before) {

        boolean isLimited() {
            return finding.map(Finding::kind)
                    .filter(k -> k == FindingKind.LIMITED || k == FindingKind.PAINFUL)
                    .isPresent();
        }
    }

    /** The trade's words in the language of the window. */
    public TradeWords trade() {
        return new TradeWords(
                client.workplace().words(), client.evaluator().knowledge().vocabulary());
    }

    public State state(ScreenEntry entry) {
        Content visit = client.content();
        Optional<Evaluation> read = client.evaluation().get();
        Optional<Finding> finding = read.flatMap(Evaluation::reading).flatMap(r -> finding(r, entry));
        Optional<FindingStrip> strip = read.flatMap(Evaluation::visit)
                .flatMap(v -> FindingStrip.of(v.client(), v.reading().age(), entry.test()));
        Optional<String> written = entry.value(visit);
        return new State(
                written,
                entry.isPainful(visit),
                finding,
                strip,
                written.map(w -> OptionalDouble.of(Double.parseDouble(w))).orElse(OptionalDouble.empty()),
                before(entry));
    }

    private static Optional<Finding> finding(Reading reading, ScreenEntry entry) {
        return reading.finding(entry.test().id(), entry.side());
    }

    /** The value of the visit before. */
    private OptionalDouble before(ScreenEntry entry) {
        return readingBefore()
                .flatMap(r -> finding(r, entry))
                .flatMap(Finding::measurement)
                .flatMap(m -> entry.part().isPresent()
                        ? Optional.ofNullable(m.parts().get(entry.part().get()))
                        : m.value())
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private Optional<Reading> readingBefore() {
        return client.evaluation().get().flatMap(Evaluation::visit).flatMap(ClientVisit::before);
    }

    private String numbers(MovementTest test, Measurement taken) {
        Stream<Double> numbers = test.norm() instanceof Norm.Pair pair
                ? pair.parts().stream()
                        .flatMap(p -> Optional.ofNullable(taken.parts().get(p.id())).stream())
                : taken.value().stream();
        return numbers.map(number -> trade().say(Saying.amount(number, ""))).collect(Collectors.joining(" · "));
    }

    /**
     * What earlier visits say about a test.
     *
     * @param before findings of the visit before, left and right
     * @param carriedOver see {@link #carriedOver}
     * @param changes since the visit before, by side
     */
    public record Past(
            List<Finding> before, Optional<LocalDate> carriedOver, Map<Optional<Side>, TestChange> changes) {}

    public Past past(MovementTest test) {
        return new Past(before(test), carriedOver(test), changes(test));
    }

    private List<Finding> before(MovementTest test) {
        return readingBefore()
                .map(r -> ScreenEntry.of(test).stream()
                        .map(e -> finding(r, e))
                        .flatMap(Optional::stream)
                        .toList())
                .orElse(List.of());
    }

    /** Last time's values of a test, left and right. */
    public String last(MovementTest test) {
        return before(test).stream()
                .map(f -> f.measurement().map(m -> numbers(test, m)).orElse(""))
                .distinct()
                .collect(Collectors.joining(" · "));
    }

    /** The values of the visit before may be older than it: the joint count keeps its last one with its date. */
    public Optional<LocalDate> carriedOver(MovementTest test) {
        return client.evaluation()
                .get()
                .flatMap(Evaluation::reading)
                .flatMap(r -> r.finding(test.id(), Optional.empty()))
                .flatMap(Finding::measurement)
                .map(Measurement::date)
                .filter(d -> d.isBefore(client.visit().get()));
    }

    /** What has changed since the visit before, by side. */
    public Map<Optional<Side>, TestChange> changes(MovementTest test) {
        Map<Optional<Side>, TestChange> changes = new LinkedHashMap<>();
        client.evaluation()
                .get()
                .flatMap(Evaluation::course)
                .flatMap(c -> c.last().change())
                .map(Course.Change::comparison)
                .ifPresent(c -> c.changes().stream()
                        .filter(change -> change.test().id().equals(test.id()))
                        .filter(change -> change.kind() != TestChange.Kind.NOT_KNOWN)
                        .forEach(change -> changes.putIfAbsent(change.side(), change)));
        return changes;
    }

    /** What was typed into a field; a number that cannot be true is not taken. */
    public void type(ScreenEntry entry, Optional<Double> number, boolean empty, String name) {
        String group = entry.test().id()
                + entry.side().map(Side::id).orElse("")
                + entry.part().orElse("");
        if (empty) {
            client.edit(name, group, entry::withoutValue);
        } else if (number.isPresent() && entry.isPossible(number.get()) && entry.isOnStep(number.get())) {
            client.edit(name, group, visit -> entry.with(visit, number.get()));
        }
    }

    public void togglePain(ScreenEntry entry, String name) {
        client.edit(name, "", visit -> entry.withPain(visit, !entry.isPainful(visit)));
    }

    public void notTested(ScreenEntry entry, String name) {
        client.edit(name, "", entry::withoutValue);
    }

    public void mark(ScreenEntry entry, String mark, boolean truth, String name) {
        client.edit(name, "", visit -> entry.withMark(visit, mark, truth));
    }

    /** The safety questions this client is asked, in their order. */
    public List<SafetyQuestion> questions() {
        List<SafetyQuestion> open = openQuestions();
        Content visit = client.content();
        List<SafetyQuestion> asked = new ArrayList<>();
        for (SafetyQuestion question : client.evaluator()
                .knowledge()
                .vocabulary()
                .reading()
                .safetyGate()
                .questions()) {
            if (open.contains(question)
                    || visit.below("/safety/" + question.id()).isPresent()) {
                asked.add(question);
            }
        }
        return asked;
    }

    /** Those still to be asked. */
    public List<SafetyQuestion> openQuestions() {
        return client.evaluation()
                .get()
                .flatMap(Evaluation::reading)
                .map(r -> r.safety().unanswered())
                .orElse(List.of());
    }

    /** The answer as written: {@code yes}, {@code no}, {@code not-sure}; empty when not asked yet. */
    public Optional<String> answer(SafetyQuestion question) {
        Content visit = client.content();
        String path = "/safety/" + question.id();
        return visit.value(path).or(() -> visit.value(path + "/answer")).map(a -> switch (a) {
            case "true" -> "yes";
            case "false" -> "no";
            default -> a;
        });
    }

    public void answer(SafetyQuestion question, String answer, String name) {
        String path = "/safety/" + question.id();
        client.edit(
                name,
                "",
                visit -> visit.below(path).isPresent() && visit.value(path).isEmpty()
                        ? visit.with(path + "/answer", answer)
                        : visit.with(path, answer));
    }

    /** A detail of an answer: {@code part}, {@code date}, or {@code release/by}, {@code release/date}, {@code release/words}. */
    public Optional<String> detail(SafetyQuestion question, String detail) {
        return client.content().value("/safety/" + question.id() + "/" + detail);
    }

    /** Writes details of an answer; empty ones are taken out. */
    public void detail(SafetyQuestion question, Map<String, String> details, String name) {
        String path = "/safety/" + question.id();
        client.edit(name, "", visit -> {
            Optional<String> answer = answer(question);
            Content changed = visit.value(path).isPresent()
                    ? visit.without(path).with(path + "/answer", answer.orElse("not-sure"))
                    : visit;
            for (Map.Entry<String, String> detail : details.entrySet()) {
                changed = detail.getValue().isBlank()
                        ? changed.without(path + "/" + detail.getKey())
                        : changed.with(
                                path + "/" + detail.getKey(), detail.getValue().strip());
            }
            return changed;
        });
    }

    /** Number of tests with at least one value. */
    public int taken() {
        Content visit = client.content();
        return (int) tests().stream()
                .filter(t ->
                        ScreenEntry.of(t).stream().anyMatch(e -> e.value(visit).isPresent() || e.isPainful(visit)))
                .count();
    }

    /** Number of findings of a kind. */
    public int count(FindingKind kind) {
        return client.evaluation()
                .get()
                .flatMap(Evaluation::reading)
                .map(r -> (int)
                        r.findings().stream().filter(f -> f.kind() == kind).count())
                .orElse(0);
    }
}
