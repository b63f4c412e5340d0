package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.RuleReader;
import org.drillsheaf.screen.rule.Words;

/** Reads presentations, layers and contradictions with their rules. Immutable and safe for several threads. */
public final class PresentationReader {
    private final YamlSchema schema;
    private final Battery battery;

    public PresentationReader(YamlSchema schema, Battery battery) {
        this.schema = schema;
        this.battery = battery;
    }

    /** Empty when anything is wrong; the reasons then stand in {@code problems}, each with its line. */
    public Optional<Presentations> read(YamlNode root, Problems problems) {
        Problems found = new Problems();
        schema.check(root, found);
        Optional<Presentations> read = found.hasErrors() ? Optional.empty() : Optional.of(presentations(root, found));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : read;
    }

    /** The names that rules about this battery and these presentations may use. */
    static Words words(Battery battery, Set<String> presentations) {
        Map<String, Words.Subject> tests = battery.tests().values().stream()
                .collect(Collectors.toMap(
                        MovementTest::id,
                        t -> new Words.Subject(
                                t.sided(),
                                t.norm() instanceof Norm.Pair pair
                                        ? pair.parts().stream()
                                                .map(Norm.Pair.Part::id)
                                                .collect(Collectors.toSet())
                                        : Set.of(),
                                marks(t),
                                Outcomes.hasUpperMark(t.norm()),
                                t.norm() instanceof Norm.Range)));
        return new Words(tests, presentations);
    }

    private static Set<String> marks(MovementTest test) {
        Set<String> marks = new LinkedHashSet<>(test.marks());
        if (test.norm() instanceof Norm.Count count) {
            marks.addAll(count.items());
            marks.addAll(count.questions());
        }
        return marks;
    }

    private Presentations presentations(YamlNode root, Problems problems) {
        Map<String, YamlNode> definitions = entries(root, "definitions");
        Map<String, YamlNode> groups = entries(root, "groups");
        Set<String> ids = new LinkedHashSet<>();
        for (YamlNode node : items(root, "presentations")) {
            if (!ids.add(text(node, "id"))) {
                node.error(problems, "The presentation " + text(node, "id") + " stands twice", "Keep one of the two");
            }
        }
        Words words = words(battery, ids);
        RuleReader rules = new RuleReader(words, definitions, groups, problems);
        // Read once on their own too, so that a mistake in a definition that nobody uses is found.
        definitions.values().forEach(rules::readSided);
        List<Presentation> list = items(root, "presentations").stream()
                .map(n -> presentation(n, rules))
                .toList();
        YamlNode none = root.get("none").orElseThrow();
        return new Presentations(
                list,
                new Presentation(
                        text(none, "id"),
                        words(none, "name"),
                        text(none, "meaning"),
                        false,
                        List.of(),
                        List.of(),
                        List.of(),
                        1,
                        List.of(),
                        Rule.FALSE,
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        true,
                        new org.drillsheaf.Source(org.drillsheaf.Source.Kind.COMMON_PRACTICE, "")),
                layers(root.get("layers").orElseThrow(), rules),
                items(root, "conditions").stream()
                        .map(n -> new Presentations.ConditionRule(
                                text(n, "id"), rules.read(n.get("when").orElseThrow()), words(n, "words")))
                        .toList(),
                restrictions(root, "lax-restrictions"),
                new LinkedHashSet<>(root.texts("not-progress-when-lax")),
                items(root, "contradictions").stream()
                        .map(n -> new Presentations.ContradictionRule(
                                text(n, "id"),
                                rules.read(n.get("when").orElseThrow()),
                                words(n, "meaning"),
                                words(n, "next-step"),
                                n.truth("refer").orElse(false)))
                        .toList(),
                definitions,
                groups);
    }

    private static Presentation presentation(YamlNode node, RuleReader rules) {
        boolean sided = node.truth("sided").orElse(false);
        Optional<YamlNode> whileOpen = node.get("holds-while-open");
        Optional<Rule> holdsWhileOpen = whileOpen.flatMap(n -> n.truth().isPresent()
                ? n.truth().filter(yes -> yes).map(yes -> Rule.TRUE)
                : Optional.of(rules.read(n)));
        return new Presentation(
                text(node, "id"),
                words(node, "name"),
                text(node, "meaning"),
                sided,
                list(node, "required", sided, rules),
                list(node, "supporting", sided, rules),
                list(node, "against", sided, rules),
                node.integer("against-needed").orElse(1),
                list(node, "open-when", sided, rules),
                node.get("clear-when")
                        .map(n -> sided ? rules.readSided(n) : rules.read(n))
                        .orElse(Rule.FALSE),
                holdsWhileOpen,
                restrictions(node, "restrictions"),
                node.text("condition"),
                node.truth("leans-on-untaken").orElse(true),
                BatteryReader.source(node.get("source").orElseThrow()));
    }

    private static Presentations.LayerRules layers(YamlNode node, RuleReader rules) {
        YamlNode underneath = node.get("underneath").orElseThrow();
        YamlNode onTop = node.get("on-top").orElseThrow();
        YamlNode fronts = node.get("hip-fronts").orElseThrow();
        return new Presentations.LayerRules(
                new LinkedHashSet<>(underneath.texts("names")),
                rules.read(underneath.get("requires").orElseThrow()),
                rules.readSided(underneath.get("side-when").orElseThrow()),
                words(underneath, "words"),
                text(onTop, "of"),
                text(onTop, "name"),
                rules.read(onTop.get("when").orElseThrow()),
                words(onTop, "words"),
                rules.read(fronts.get("when").orElseThrow()),
                words(fronts, "words"),
                fronts.text("goal"),
                "left".equals(text(node, "expected-first")) ? Side.LEFT : Side.RIGHT);
    }

    private static List<Presentation.RestrictionRule> restrictions(YamlNode node, String key) {
        return items(node, key).stream()
                .map(n -> new Presentation.RestrictionRule(text(n, "id"), words(n, "words")))
                .toList();
    }

    private static List<Rule> list(YamlNode node, String key, boolean sided, RuleReader rules) {
        return node.get(key).map(n -> rules.readList(n, sided)).orElse(new ArrayList<>());
    }

    private static Map<String, YamlNode> entries(YamlNode node, String key) {
        return node.get(key).map(YamlNode::entries).orElse(new LinkedHashMap<>());
    }

    private static List<YamlNode> items(YamlNode node, String key) {
        return node.get(key).map(YamlNode::items).orElse(List.of());
    }

    /** The schema wants them. */
    private static LocalText words(YamlNode node, String key) {
        return node.localText(key).orElse(LocalText.english(""));
    }

    private static String text(YamlNode node, String key) {
        return node.text(key).orElse("");
    }
}
