package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.Source;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.client.Sex;

/**
 * Reads the movement tests, and a clinic's own file over them: an entry with a known id replaces only the keys it names, an
 * entry with a new id adds a test at the end. Immutable and safe for several threads.
 */
public final class BatteryReader {
    private static final List<String> NEEDED =
            List.of("name", "sided", "unit", "step", "plausible", "norm", "minutes", "sign", "steps", "ends", "source");

    private final YamlSchema schema;

    public BatteryReader(YamlSchema schema) {
        this.schema = schema;
    }

    /** Reads our tests alone. */
    public Optional<Battery> read(YamlNode ours, Problems problems) {
        return read(List.of(ours), problems);
    }

    /** Reads our tests with a clinic's own file over them. */
    public Optional<Battery> read(YamlNode ours, YamlNode ofTheClinic, Problems problems) {
        return read(List.of(ours, ofTheClinic), problems);
    }

    private Optional<Battery> read(List<YamlNode> files, Problems problems) {
        Problems found = new Problems();
        files.forEach(f -> schema.check(f, found));
        if (found.hasErrors()) {
            problems.addAll(found.all());
            return Optional.empty();
        }
        Map<String, Layered> entries = new LinkedHashMap<>();
        for (YamlNode file : files) {
            LinkedHashSet<String> seen = new LinkedHashSet<>();
            for (YamlNode node : file.get("tests").map(YamlNode::items).orElse(List.of())) {
                String id = node.text("id").orElseThrow();
                if (!seen.add(id)) {
                    node.error(found, "The test " + id + " stands twice", "Keep one of the two");
                }
                entries.merge(id, new Layered(List.of(node)), (below, above) -> above.over(below));
            }
        }
        Map<String, MovementTest> tests = new LinkedHashMap<>();
        entries.forEach((id, entry) -> test(id, entry, found).ifPresent(t -> tests.put(id, t)));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(new Battery(tests));
    }

    /** An entry with the entries it replaces in part, the nearest first. */
    private record Layered(List<YamlNode> nodes) {
        Layered over(Layered below) {
            List<YamlNode> all = new ArrayList<>(nodes);
            all.addAll(below.nodes);
            return new Layered(all);
        }

        Optional<YamlNode> get(String key) {
            return nodes.stream().filter(n -> n.has(key)).findFirst().flatMap(n -> n.get(key));
        }

        YamlNode need(String key) {
            return get(key).orElseThrow();
        }

        String text(String key) {
            return get(key).flatMap(YamlNode::text).orElse("");
        }

        List<YamlNode> items(String key) {
            return get(key).map(YamlNode::items).orElse(List.of());
        }

        YamlNode node() {
            return nodes.get(0);
        }
    }

    private static Optional<MovementTest> test(String id, Layered entry, Problems problems) {
        List<String> missing =
                NEEDED.stream().filter(k -> entry.get(k).isEmpty()).toList();
        if (!missing.isEmpty()) {
            entry.node()
                    .error(
                            problems,
                            "The test " + id + " lacks: " + String.join(", ", missing),
                            "Write these keys, or use the id of a test that there is");
            return Optional.empty();
        }
        BigDecimal step = decimal(entry.need("step"));
        List<YamlNode> range = entry.need("plausible").items();
        Norm norm = norm(entry.need("norm"), step, problems);
        List<MeasurementError> errors = errors(entry);
        if (errors.isEmpty() && !(norm instanceof Norm.Count) && !(norm instanceof Norm.ReferenceOnly)) {
            entry.node()
                    .error(
                            problems,
                            "The test " + id + " has a cut-off but no error of measurement",
                            "Write “errors” with its standard error, population and source");
        }
        LocalText name = words(entry, "name");
        return Optional.of(new MovementTest(
                id,
                new MovementTest.Names(
                        name,
                        entry.get("client-name").flatMap(YamlNode::localText).orElse(name)),
                entry.need("sided").truth().orElse(false),
                Unit.of(entry.text("unit")).orElseThrow(),
                step,
                range.get(0).number().orElseThrow(),
                range.get(1).number().orElseThrow(),
                texts(entry, "marks"),
                norm,
                errors,
                entry.need("minutes").integer().orElseThrow(),
                entry.get("short-set").flatMap(YamlNode::truth).orElse(false),
                entry.items("bars").stream().map(BatteryReader::bar).toList(),
                entry.get("cares").map(BatteryReader::texts).orElse(Map.of()),
                new MovementTest.Method(
                        words(entry, "sign"),
                        entry.items("steps").stream()
                                .flatMap(n -> n.localText().stream())
                                .toList(),
                        words(entry, "ends"),
                        entry.get("doubts").flatMap(YamlNode::localText)),
                entry.get("goal").flatMap(YamlNode::text),
                entry.get("stand-in").map(BatteryReader::standIn),
                List.of(source(entry.need("source"))),
                entry.get("pose")));
    }

    private static LocalText words(Layered entry, String key) {
        return entry.need(key).localText().orElseThrow();
    }

    private static List<MeasurementError> errors(Layered entry) {
        List<MeasurementError> errors = new ArrayList<>();
        entry.get("own-error").ifPresent(own -> errors.add(error(own, true)));
        entry.items("errors").forEach(e -> errors.add(error(e, false)));
        return errors;
    }

    private static MeasurementError error(YamlNode node, boolean ofThisClinic) {
        return new MeasurementError(
                decimal(node.get("sem").orElseThrow()),
                node.text("sex").flatMap(Sex::of),
                node.text("population").orElse(""),
                source(node.get("source").orElseThrow()),
                ofThisClinic);
    }

    private static Norm norm(YamlNode node, BigDecimal step, Problems problems) {
        Optional<YamlNode> threshold = node.get("threshold");
        if (threshold.isPresent()) {
            return new Norm.Threshold(
                    threshold.get().truth("higher-is-fuller").orElseThrow(),
                    marks(threshold.get(), "cut-offs", step, problems),
                    marks(threshold.get(), "beyond", step, problems));
        }
        Optional<YamlNode> range = node.get("range");
        if (range.isPresent()) {
            return new Norm.Range(
                    marks(range.get(), "low", step, problems),
                    marks(range.get(), "high", step, problems),
                    range.get().text("low-word").orElseThrow(),
                    range.get().text("high-word").orElseThrow());
        }
        Optional<YamlNode> pair = node.get("pair");
        if (pair.isPresent()) {
            List<Norm.Pair.Part> parts = pair.get().get("parts").orElseThrow().items().stream()
                    .map(p -> new Norm.Pair.Part(
                            p.text("id").orElseThrow(),
                            p.localText("name").orElseThrow(),
                            p.number("at-least").orElseThrow(),
                            source(p.get("source").orElseThrow())))
                    .toList();
            return new Norm.Pair(pair.get().text("word").orElseThrow(), parts.get(0), parts.get(1));
        }
        Optional<YamlNode> count = node.get("count");
        if (count.isPresent()) {
            return new Norm.Count(
                    count.get().text("word").orElseThrow(),
                    marks(count.get(), "cut-offs", step, problems),
                    count.get().texts("items"),
                    count.get().texts("questions"),
                    count.get().integer("questions-needed").orElseThrow());
        }
        return new Norm.ReferenceOnly();
    }

    private static List<Norm.Mark> marks(YamlNode node, String key, BigDecimal step, Problems problems) {
        List<Norm.Mark> marks = new ArrayList<>();
        for (YamlNode item : node.get(key).map(YamlNode::items).orElse(List.of())) {
            YamlNode value = item.get("value").orElseThrow();
            if (decimal(value).remainder(step).signum() != 0) {
                value.error(
                        problems,
                        "The number " + value.text().orElse("") + " is finer than the step of its test",
                        "Write a whole multiple of " + step.toPlainString());
            }
            marks.add(new Norm.Mark(
                    item.integer("from-age").orElse(0),
                    item.integer("to-age").orElse(200),
                    item.text("sex").flatMap(Sex::of),
                    value.number().orElseThrow(),
                    source(item.get("source").orElseThrow())));
        }
        return marks;
    }

    private static Bar bar(YamlNode node) {
        return new Bar(
                node.text("condition"),
                new LinkedHashSet<>(node.texts("recent")),
                node.get("unless").map(BatteryReader::words).orElse(Map.of()),
                node.get("when").map(BatteryReader::words).orElse(Map.of()),
                integer(node, "from-week"),
                integer(node, "weeks"),
                node.truth("both-sides").orElse(false),
                node.localText("reason").orElseThrow());
    }

    private static MovementTest.StandIn standIn(YamlNode node) {
        return new MovementTest.StandIn(
                node.text("key").orElseThrow(),
                node.text("recorded-with").orElseThrow(),
                node.localText("question").orElseThrow());
    }

    private static OptionalInt integer(YamlNode node, String key) {
        return node.integer(key).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private static Map<String, String> words(YamlNode node) {
        Map<String, String> words = new LinkedHashMap<>();
        node.entries().forEach((key, value) -> words.put(key, value.text().orElse("")));
        return words;
    }

    private static Map<String, LocalText> texts(YamlNode node) {
        Map<String, LocalText> texts = new LinkedHashMap<>();
        node.entries().forEach((key, value) -> value.localText().ifPresent(text -> texts.put(key, text)));
        return texts;
    }

    private static List<String> texts(Layered entry, String key) {
        return entry.items(key).stream().map(n -> n.text().orElse("")).toList();
    }

    private static BigDecimal decimal(YamlNode node) {
        return BigDecimal.valueOf(node.number().orElseThrow());
    }

    static Source source(YamlNode node) {
        return new Source(
                node.text("kind").flatMap(Source.Kind::of).orElse(Source.Kind.HOUSE),
                node.text("text").orElse(""));
    }
}
