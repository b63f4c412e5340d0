package org.drillsheaf.handout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.drill.Goal;
import org.drillsheaf.drill.check.Readability;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.CoachSheet;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.Messages;
import org.drillsheaf.handout.page.Told;
import org.drillsheaf.program.CoachWishes;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.Served;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.screen.CoachStrip;
import org.drillsheaf.screen.Evidence;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.Verdict;

/** Puts reading, reasons and decisions together for the coach. Decides nothing. */
final class CoachSheetMaker {
    private final Vocabulary vocabulary;
    private final Messages messages;

    CoachSheetMaker(Vocabulary vocabulary, Messages messages) {
        this.vocabulary = vocabulary;
        this.messages = messages;
    }

    /** @param handout the client's pages of the same program, for their reading grade and what the report tells of them */
    CoachSheet sheet(DocumentOrder order, Program program, Frame frame, ClientHandout handout) {
        Reading reading = order.now().reading();
        return new CoachSheet(
                frame,
                reading.age(),
                (int) Math.round(order.client().statureCentimetres()),
                rows(order),
                headline(reading),
                reading.presentations().stream()
                        .filter(p -> p.verdict() != Verdict.NOT_SUPPORTED)
                        .map(CoachSheetMaker::guess)
                        .toList(),
                reading.nextTest().map(n -> n.reason()),
                drills(program),
                program.proof().words(),
                cautions(order, program, handout),
                changed(order.now().wishes()),
                order.now().safety().remarks(),
                grade(handout),
                report(order, program, handout));
    }

    private static List<CoachSheet.Row> rows(DocumentOrder order) {
        List<CoachSheet.Row> rows = new ArrayList<>();
        String before = "";
        for (Finding finding : order.now().reading().findings()) {
            CoachStrip strip =
                    CoachStrip.of(order.client(), order.now().reading().age(), finding);
            String test = finding.test().name();
            rows.add(new CoachSheet.Row(
                    test,
                    !test.equals(before),
                    finding.side().map(s -> s.id()),
                    strip.errors().isPresent() ? Optional.of(strip.errors().getAsDouble()) : Optional.empty(),
                    finding.values(),
                    finding.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                    finding.kindWords(),
                    strip.cutoff().isEmpty() ? finding.reason() : strip.cutoff() + " ± " + strip.error()));
            before = test;
        }
        return rows;
    }

    private static String headline(Reading reading) {
        List<PresentationReading> held = reading.supported();
        List<PresentationReading> shown = held.isEmpty() ? reading.open() : held;
        String words = String.join(
                "; ",
                shown.stream()
                        .map(p -> p.name() + " (" + p.verdictWords() + ")")
                        .toList());
        return words.isEmpty() ? "nothing is held" : words;
    }

    private static CoachSheet.Guess guess(PresentationReading p) {
        List<String> unknown = new ArrayList<>(words(p, Evidence.Kind.NOT_KNOWN));
        if (unknown.isEmpty()) {
            unknown.addAll(p.openBecause());
        }
        return new CoachSheet.Guess(
                p.name(), p.verdictWords(), words(p, Evidence.Kind.FOR), words(p, Evidence.Kind.AGAINST), unknown);
    }

    private static List<String> words(PresentationReading p, Evidence.Kind kind) {
        return p.evidence(kind).stream().map(Evidence::words).toList();
    }

    private List<CoachSheet.Why> drills(Program program) {
        List<CoachSheet.Why> whys = new ArrayList<>();
        for (Entry entry : program.now().entries()) {
            Optional<Served> best = entry.serves().stream()
                    .max(Comparator.comparingInt(Served::adds).thenComparingInt(Served::strength));
            whys.add(new CoachSheet.Why(
                    whys.size() + 1,
                    drill(entry.drill()),
                    best.map(s -> goal(s.goal())).orElse("–"),
                    best.map(Served::strength).orElse(0),
                    String.join("; ", entry.reasons()),
                    entry.alternatives().stream()
                            .findFirst()
                            .map(a -> drill(a.drill()) + ": " + a.words())
                            .orElse("–")));
        }
        return whys;
    }

    /** What the conditions changed, drill by drill, and the sentences that the client got. */
    private List<String> cautions(DocumentOrder order, Program program, ClientHandout handout) {
        LinkedHashSet<String> lines = new LinkedHashSet<>();
        order.now()
                .safety()
                .active()
                .forEach(a -> lines.add(a.condition().name().best(languages())));
        int number = 0;
        for (Entry entry : program.now().entries()) {
            number++;
            if (!entry.variants().isEmpty()) {
                lines.add(number + " " + drill(entry.drill()) + ": " + String.join(", ", entry.variants()));
            }
        }
        handout.cautions().forEach(c -> lines.add(c.text().text()));
        return List.copyOf(lines);
    }

    private List<String> changed(CoachWishes wishes) {
        List<String> lines = new ArrayList<>();
        wishes.start().ifPresent(s -> lines.add(s.phase().title() + ": " + s.reason()));
        wishes.weights()
                .forEach(w ->
                        lines.add(w.phase().title() + ", " + goal(w.goal()) + " " + w.weight() + ": " + w.reason()));
        wishes.pins()
                .forEach(p -> lines.add(p.kind().id().replace('-', ' ') + ", " + drill(p.drill()) + ": " + p.reason()));
        wishes.doses().forEach(d -> lines.add(drill(d.drill()) + ": " + d.reason()));
        wishes.order()
                .forEach(o -> lines.add(o.phase().title() + ": "
                        + String.join(", ", o.drills().stream().map(this::drill).toList())));
        return lines;
    }

    /** Over every sentence of the drills as they are printed. */
    static double grade(ClientHandout handout) {
        StringBuilder text = new StringBuilder();
        for (DrillBlock drill : handout.drills()) {
            drill.groups().forEach(g -> g.steps()
                    .forEach(s -> text.append(s.text().text()).append('\n')));
            drill.faults()
                    .forEach(f ->
                            text.append(f.fault()).append('\n').append(f.fix()).append('\n'));
            text.append(drill.purpose()).append('\n');
        }
        handout.cautions().forEach(c -> text.append(c.text().text()).append('\n'));
        handout.setUp().forEach(s -> text.append(s.text()).append('\n'));
        return Readability.of(text.toString()).grade();
    }

    private List<CoachSheet.Item> report(DocumentOrder order, Program program, ClientHandout handout) {
        String things = handout.things().isEmpty()
                ? messages.say("facts.nothing", Map.of())
                : String.join(
                        messages.say("list.comma", Map.of()),
                        handout.things().stream().map(Told::text).toList());
        String minutes = handout.minutes() + " min × " + handout.sessionsPerWeek();
        List<CoachSheet.Item> items = new ArrayList<>();
        items.add(new CoachSheet.Item("1", things));
        items.add(new CoachSheet.Item("2", order.client().coach()));
        for (String id : List.of("3", "4", "5", "6")) {
            items.add(new CoachSheet.Item(id, messages.say("report.fixed." + id, Map.of())));
        }
        items.add(new CoachSheet.Item("7", String.join("; ", program.startReasons())));
        items.add(new CoachSheet.Item("8", handout.drills().size() + " × " + messages.say("report.fixed.8", Map.of())));
        for (String id : List.of("9", "10", "11")) {
            items.add(new CoachSheet.Item(id, messages.say("report.fixed." + id, Map.of())));
        }
        items.add(new CoachSheet.Item("12", messages.say("report.fixed.12", Map.of())));
        items.add(new CoachSheet.Item("13", minutes));
        items.add(new CoachSheet.Item("14", messages.say("report.fixed.14", Map.of())));
        items.add(new CoachSheet.Item("15", program.start().title()));
        items.add(new CoachSheet.Item("16", ""));
        return items;
    }

    private List<String> languages() {
        return List.of(messages.language(), "en");
    }

    private String drill(String id) {
        return vocabulary
                .library()
                .catalogue()
                .drill(id)
                .map(d -> d.name().best(languages()))
                .orElse(id);
    }

    private String goal(String id) {
        Goal goal = vocabulary.library().catalogue().words().goals().get(id);
        return goal == null ? id : goal.name().best(languages());
    }
}
