package org.drillsheaf.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.client.Client;
import org.drillsheaf.handout.page.ClientHandout;
import org.drillsheaf.handout.page.Frame;
import org.drillsheaf.handout.page.HouseStyle;
import org.drillsheaf.handout.page.ProgressReport;
import org.drillsheaf.handout.paint.Strips;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.saying.Messages;
import org.drillsheaf.screen.ChangeScale;
import org.drillsheaf.screen.Finding;
import org.drillsheaf.screen.Measurement;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.TestChange;

/** Puts the values of the visits side by side; what counts as a change was decided by the re-screen. */
final class ProgressReportMaker {
    private static final double SIDED_WIDTH = 66;
    private static final double UNSIDED_WIDTH = 56;
    private static final double CHART_HEIGHT = 8;

    private final Vocabulary vocabulary;
    private final Messages messages;
    private final Strips strips;

    ProgressReportMaker(Vocabulary vocabulary, Messages messages, HouseStyle.Colours colours) {
        this.vocabulary = vocabulary;
        this.messages = messages;
        this.strips = new Strips(colours.ink(), colours.accent(), colours.grey());
    }

    ProgressReport report(DocumentOrder order, DocumentOrder.Change change, Frame frame) {
        Map<String, List<TestChange>> byTest = new LinkedHashMap<>();
        for (TestChange c : change.comparison().changes()) {
            String key = c.test().id() + c.part().map(p -> "/" + p).orElse("");
            byTest.computeIfAbsent(key, k -> new ArrayList<>()).add(c);
        }
        List<ProgressReport.Row> rows = new ArrayList<>();
        List<ProgressReport.Numbers> numbers = new ArrayList<>();
        for (List<TestChange> sides : byTest.values()) {
            List<ProgressReport.Panel> panels = new ArrayList<>();
            numbers.add(numbers(order, sides, frame));
            for (TestChange side : sides) {
                panel(order, side, sides).ifPresent(panels::add);
            }
            if (!panels.isEmpty()) {
                rows.add(new ProgressReport.Row(
                        name(sides.get(0), frame), sides.get(0).side().isPresent(), panels));
            }
        }
        return new ProgressReport(
                frame,
                order.visits().stream().map(v -> v.visit().date()).toList(),
                count(change, TestChange.Kind.BETTER),
                count(change, TestChange.Kind.NO_REAL_CHANGE),
                count(change, TestChange.Kind.WORSE),
                rows,
                numbers,
                change.decision()
                        .step()
                        .name()
                        .toLowerCase(java.util.Locale.ROOT)
                        .replace('_', '-'),
                change.phaseNow().ordinal() + 1,
                vocabulary
                        .phases()
                        .rows()
                        .get(change.phaseNow().ordinal())
                        .name()
                        .best(List.of(frame.language())),
                order.now().visit().next().map(a -> new ClientHandout.Meeting(a.date(), a.time())));
    }

    private static int count(DocumentOrder.Change change, TestChange.Kind kind) {
        return (int) change.comparison().changes().stream()
                .filter(c -> c.kind() == kind)
                .count();
    }

    private String name(TestChange change, Frame frame) {
        return change.test().names().client().best(List.of(frame.language()))
                + change.part().map(p -> ", " + part(p)).orElse("");
    }

    private String part(String id) {
        return messages.has("progress.part." + id) ? messages.say("progress.part." + id, Map.of()) : id;
    }

    private static String side(TestChange change) {
        return change.side().map(s -> s.id()).orElse("");
    }

    private Optional<ProgressReport.Panel> panel(DocumentOrder order, TestChange change, List<TestChange> both) {
        if (change.kind() == TestChange.Kind.NOT_KNOWN
                || change.before().isEmpty()
                || change.now().isEmpty()) {
            return Optional.empty();
        }
        List<Double> values = values(order, change);
        ChangeScale scale = scale(order, change.test());
        List<Double> reach = new ArrayList<>();
        both.forEach(c -> reach.addAll(values(order, c)));
        scale.aim().ifPresent(reach::add);
        double low = reach.stream().mapToDouble(v -> v).min().orElse(0) - 1.4 * scale.change();
        double high = reach.stream().mapToDouble(v -> v).max().orElse(1) + 1.4 * scale.change();
        double sign = scale.lowerIsFuller() ? -1 : 1;
        List<Double> places =
                values.stream().map(v -> share(sign, v, low, high)).toList();
        double width = change.side().isPresent() ? SIDED_WIDTH : UNSIDED_WIDTH;
        double first = values.get(0);
        double last = values.get(values.size() - 1);
        return Optional.of(new ProgressReport.Panel(
                side(change),
                shown(change.test(), first),
                places.get(0) * width,
                shown(change.test(), last),
                places.get(places.size() - 1) * width,
                change.kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                shown(change.test(), Math.abs(last - first)),
                shown(change.test(), scale.change()),
                strips.progress(
                        places,
                        scale.aim().isPresent()
                                ? Optional.of(share(sign, scale.aim().getAsDouble(), low, high))
                                : Optional.empty(),
                        scale.change() / (high - low),
                        change.kind() != TestChange.Kind.NO_REAL_CHANGE,
                        width,
                        CHART_HEIGHT)));
    }

    /** A value with its unit as the page's language writes it, with a true minus. */
    private String shown(MovementTest test, double value) {
        String words =
                messages.say("value." + test.unit().id(), Map.of("value", Math.round(Math.abs(value) * 100) / 100.0));
        return value < 0 ? "−" + words : words;
    }

    /** 0 to 1 along the chart; to the right is fuller. */
    private static double share(double sign, double value, double low, double high) {
        double share = (value - low) / (high - low);
        return sign < 0 ? 1 - share : share;
    }

    private static ChangeScale scale(DocumentOrder order, MovementTest test) {
        Client client = order.client();
        return ChangeScale.of(client, order.now().reading().age(), test);
    }

    /** The values of all visits on which it was measured. */
    private static List<Double> values(DocumentOrder order, TestChange change) {
        return order.visits().stream()
                .flatMap(v -> v.reading().finding(change.test().id(), change.side()).stream())
                .flatMap(f -> value(f, change).stream())
                .toList();
    }

    private static Optional<Double> value(Finding finding, TestChange change) {
        Optional<Measurement> measured = finding.measurement();
        return change.part().isPresent()
                ? measured.flatMap(
                        m -> Optional.ofNullable(m.parts().get(change.part().get())))
                : measured.flatMap(Measurement::value);
    }

    private ProgressReport.Numbers numbers(DocumentOrder order, List<TestChange> sides, Frame frame) {
        TestChange first = sides.get(0);
        ChangeScale scale = scale(order, first.test());
        return new ProgressReport.Numbers(
                name(first, frame),
                first.side().isPresent(),
                order.visits().stream()
                        .map(visit ->
                                sides.stream().map(side -> number(visit, side)).toList())
                        .toList(),
                scale.aim().isPresent() ? shown(first.test(), scale.aim().getAsDouble()) : "–",
                scale.change() > 0 ? shown(first.test(), scale.change()) : "–");
    }

    private String number(DocumentOrder.Seen visit, TestChange change) {
        return visit.reading()
                .finding(change.test().id(), change.side())
                .flatMap(f -> value(f, change))
                .map(value -> shown(change.test(), value))
                .orElse("–");
    }
}
