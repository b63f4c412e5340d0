package org.drillsheaf.drill;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.Source;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/** Reads one drill file. The schema tells what has the wrong shape; here only what a schema cannot see is looked at. */
public final class DrillReader {
    /** Longest pause after a breath out, throat open. Common practice, no source. Seconds. */
    public static final double LONGEST_PAUSE_SECONDS = 2;

    private final YamlSchema schema;

    public DrillReader(YamlSchema schema) {
        this.schema = schema;
    }

    /** Empty when the file is unusable; the reasons then stand in {@code problems}. */
    public Optional<Drill> read(YamlNode file, Problems problems) {
        Problems own = new Problems();
        schema.check(file, own);
        Optional<Drill> drill = own.hasErrors() ? Optional.empty() : Optional.of(drill(file, own));
        problems.addAll(own.all());
        return own.hasErrors() ? Optional.empty() : drill;
    }

    /**
     * The drill with written changes laid over it, all at once.
     *
     * @return empty when the changed file would be no drill, or two changes write different values in one place
     */
    public Optional<Drill> withVariants(Drill drill, List<Variant> variants, Problems problems) {
        YamlNode changed = drill.written();
        Map<String, String> claimed = new HashMap<>();
        for (Variant variant : variants) {
            YamlNode changes = variant.changes().without("id").without("name").without("change");
            if (clash(changes, claimed, variant.id(), problems)) {
                return Optional.empty();
            }
            // A description of the unchanged picture would be wrong for a changed one.
            changed = (changes.has("pose") ? changed.without("alt-text") : changed).with(changes);
        }
        return read(changed, problems);
    }

    /** Two changes may meet in one place only with the same value there. */
    private static boolean clash(YamlNode changes, Map<String, String> claimed, String variant, Problems problems) {
        if (changes.isMap()) {
            boolean any = false;
            for (YamlNode part : changes.entries().values()) {
                any |= clash(part, claimed, variant, problems);
            }
            return any;
        }
        String place = changes.path().replaceFirst("^/variants/\\d+", "");
        String value = changes.json().toString();
        String before = claimed.putIfAbsent(place, value);
        if (before != null && !before.equals(value)) {
            changes.error(
                    problems,
                    "“" + place.substring(1).replace('/', '.') + "” is changed in two ways at once",
                    "Write one version that holds for both, or leave the drill out");
            return true;
        }
        return false;
    }

    private static Drill drill(YamlNode file, Problems problems) {
        Breathing breathing = breathing(file.nearest("/breathing"), problems);
        return new Drill(
                file.text("id").orElseThrow(),
                text(file, "name"),
                file.text("family").orElseThrow(),
                file.integer("level").orElseThrow(),
                each(file.texts("phases"), Phase::of),
                goals(file),
                file.texts("positions"),
                file.texts("equipment"),
                file.text("status").flatMap(DrillStatus::of).orElseThrow(),
                edition(file, problems),
                file.texts("prerequisites"),
                file.text("easier"),
                file.text("harder"),
                text(file, "purpose"),
                steps(file, "set-up", Keyframe.START),
                steps(file, "action", Keyframe.MOVE),
                breathing,
                texts(file, "feel"),
                texts(file, "not-feel"),
                faults(file),
                dose(file.nearest("/dose"), problems),
                texts(file, "stop"),
                conditionTags(file),
                file.get("tags").map(DrillReader::tags).orElse(Tags.NONE),
                translations(file),
                file.get("pose").orElseThrow(),
                variants(file, problems),
                altText(file),
                file);
    }

    private static Drill.Edition edition(YamlNode file, Problems problems) {
        YamlNode day = file.get("reviewed-on").orElseThrow();
        if (day.date().isEmpty()) {
            day.error(problems, "“" + day.text().orElse("") + "” is no day of the calendar", "Write it as 2026-10-12");
        }
        return new Drill.Edition(
                file.integer("revision").orElseThrow(),
                file.integer("based-on"),
                file.text("author").orElseThrow(),
                day.date().orElse(java.time.LocalDate.EPOCH),
                file.text("reason").orElseThrow());
    }

    private static Map<String, Integer> goals(YamlNode file) {
        Map<String, Integer> goals = new LinkedHashMap<>();
        file.nearest("/goals")
                .entries()
                .forEach((goal, strength) -> goals.put(goal, strength.integer().orElseThrow()));
        return goals;
    }

    private static Breathing breathing(YamlNode node, Problems problems) {
        if (node.keys().isEmpty()) {
            return Breathing.FREE;
        }
        Breathing free = Breathing.FREE;
        Breathing.Seconds pause = seconds(node, "pause-seconds", free.pause(), problems);
        if (pause.most() > LONGEST_PAUSE_SECONDS) {
            node.nearest("/pause-seconds")
                    .error(
                            problems,
                            "The pause after the breath out is longer than two seconds",
                            "Write 0, 1 or 2; the throat stays open");
        }
        return new Breathing(
                seconds(node, "in-seconds", free.in(), problems),
                seconds(node, "out-seconds", free.out(), problems),
                pause,
                node.text("in-by").flatMap(Breathing.Airway::of).orElse(free.inBy()),
                node.text("out-by").flatMap(Breathing.Airway::of).orElse(free.outBy()),
                node.integer("focus").orElse(0),
                node.truth("full-exhale").orElse(false),
                node.truth("resist").orElse(false),
                node.localText("cue"));
    }

    private static Breathing.Seconds seconds(YamlNode node, String key, Breathing.Seconds missing, Problems problems) {
        Optional<YamlNode> value = node.get(key);
        if (value.isEmpty()) {
            return missing;
        }
        if (value.get().number().isPresent()) {
            return Breathing.Seconds.of(value.get().number().get());
        }
        List<YamlNode> bounds = value.get().items();
        double least = bounds.get(0).number().orElse(0.0);
        double most = bounds.get(1).number().orElse(0.0);
        if (least > most) {
            value.get().error(problems, "The first number is larger than the second", "Write the smaller one first");
            return missing;
        }
        return new Breathing.Seconds(least, most);
    }

    private static Dose dose(YamlNode node, Problems problems) {
        return new Dose(
                node.text("count").flatMap(Dose.Count::of).orElseThrow(),
                noun(node.nearest("/noun")),
                range(node, "sets", problems).orElseThrow(),
                range(node, "each", problems).orElseThrow(),
                node.number("seconds").orElse(Dose.USUAL_REPETITION_SECONDS),
                range(node, "hold-seconds", problems).orElse(DoseRange.fixed(0)),
                range(node, "effort", problems).orElseThrow(),
                node.text("sides").flatMap(Dose.Sides::of).orElseThrow());
    }

    private static Optional<DoseRange> range(YamlNode dose, String key, Problems problems) {
        Optional<YamlNode> node = dose.get(key);
        if (node.isEmpty()) {
            return Optional.empty();
        }
        int usual = node.get().integer("default").orElseThrow();
        List<YamlNode> bounds = node.get().nearest("/range").items();
        int least = bounds.get(0).integer().orElse(0);
        int most = bounds.get(1).integer().orElse(0);
        if (usual < least || usual > most) {
            node.get()
                    .error(
                            problems,
                            "The default of " + key + " is " + usual + ", outside its range " + least + " to " + most,
                            "Move the default into the range, the smaller number first");
            return Optional.of(DoseRange.fixed(usual));
        }
        return Optional.of(new DoseRange(usual, least, most));
    }

    private static Map<String, Map<String, String>> noun(YamlNode node) {
        Map<String, Map<String, String>> noun = new LinkedHashMap<>();
        node.entries().forEach((language, forms) -> {
            Map<String, String> words = new LinkedHashMap<>();
            forms.entries()
                    .forEach((category, word) -> words.put(category, word.text().orElseThrow()));
            noun.put(language, Map.copyOf(words));
        });
        return Map.copyOf(noun);
    }

    private static List<Step> steps(YamlNode file, String key, Keyframe usual) {
        List<Step> steps = new ArrayList<>();
        for (YamlNode node : file.nearest("/" + key).items()) {
            LocalText text = node.without("mark").without("picture").localText().orElseThrow();
            Keyframe keyframe = node.text("picture").flatMap(Keyframe::of).orElse(usual);
            steps.add(new Step(text, node.text("mark"), keyframe, node.line()));
        }
        return steps;
    }

    private static List<Fault> faults(YamlNode file) {
        return file.nearest("/faults").items().stream()
                .map(f -> new Fault(text(f, "fault"), text(f, "fix")))
                .toList();
    }

    private static List<ConditionTag> conditionTags(YamlNode file) {
        List<ConditionTag> tags = new ArrayList<>();
        for (YamlNode node : file.get("conditions").map(YamlNode::items).orElse(List.of())) {
            tags.add(new ConditionTag(
                    node.text("id").orElseThrow(),
                    node.text("action").flatMap(Action::of).orElseThrow(),
                    node.text("variant"),
                    text(node, "reason"),
                    source(node.nearest("/source")),
                    node.line()));
        }
        return tags;
    }

    static Source source(YamlNode node) {
        return new Source(
                node.text("kind").flatMap(Source.Kind::of).orElseThrow(),
                node.text("text").orElseThrow());
    }

    private static Tags tags(YamlNode node) {
        Map<String, Double> numbers = new HashMap<>();
        Map<String, Boolean> truths = new HashMap<>();
        node.entries().forEach((key, value) -> {
            value.number().ifPresent(n -> numbers.put(key, n));
            value.truth().ifPresent(t -> truths.put(key, t));
        });
        return new Tags(numbers, truths, node.text("stop"), Set.copyOf(node.texts("kinds")));
    }

    private static List<Translation> translations(YamlNode file) {
        List<Translation> all = new ArrayList<>();
        file.get("translations").ifPresent(node -> node.entries()
                .forEach((language, t) -> all.add(
                        new Translation(language, t.text("by").orElse("").equals("machine"), t.date("reviewed-on")))));
        return all;
    }

    private static List<Variant> variants(YamlNode file, Problems problems) {
        List<Variant> variants = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (YamlNode node : file.get("variants").map(YamlNode::items).orElse(List.of())) {
            String id = node.text("id").orElseThrow();
            if (!ids.add(id)) {
                problems.add(Problem.error(
                        node.file(),
                        node.line(),
                        "Two variants are called “" + id + "”",
                        "Give one of them another id"));
            }
            variants.add(new Variant(id, text(node, "name"), text(node, "change"), node));
        }
        return variants;
    }

    private static Map<Keyframe, LocalText> altText(YamlNode file) {
        Map<Keyframe, LocalText> texts = new EnumMap<>(Keyframe.class);
        for (Keyframe keyframe : Keyframe.values()) {
            file.get("alt-text").flatMap(n -> n.localText(keyframe.id())).ifPresent(text -> texts.put(keyframe, text));
        }
        return texts;
    }

    private static LocalText text(YamlNode node, String key) {
        return node.localText(key).orElseThrow();
    }

    private static List<LocalText> texts(YamlNode node, String key) {
        return node.get(key).map(YamlNode::items).orElse(List.of()).stream()
                .map(n -> n.localText().orElseThrow())
                .toList();
    }

    private static <T> Set<T> each(List<String> ids, Function<String, Optional<T>> of) {
        Set<T> all = new LinkedHashSet<>();
        ids.forEach(id -> all.add(of.apply(id).orElseThrow()));
        return all;
    }
}
