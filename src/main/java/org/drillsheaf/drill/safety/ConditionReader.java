package org.drillsheaf.drill.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.Problems;
import org.drillsheaf.Source;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.drill.Action;

/** Reads the conditions file: its shape by the schema, then every rule and every name in it. */
public final class ConditionReader {
    private final Problems problems = new Problems();
    private final Set<String> kinds = new TreeSet<>();

    private ConditionReader() {}

    /** Empty when anything is wrong with the file: half a set of safety rules would be worse than none. */
    public static Optional<SafetyRules> read(YamlNode file, YamlSchema schema, Problems problems) {
        ConditionReader reader = new ConditionReader();
        schema.check(file, reader.problems);
        Optional<SafetyRules> rules = reader.problems.hasErrors() ? Optional.empty() : Optional.of(reader.rules(file));
        problems.addAll(reader.problems.all());
        return reader.problems.hasErrors() ? Optional.empty() : rules;
    }

    private SafetyRules rules(YamlNode file) {
        Map<String, Set<String>> byKind = new LinkedHashMap<>();
        for (YamlNode kind : file.nearest("/kinds").items()) {
            byKind.put(kind.text("id").orElseThrow(), Set.copyOf(kind.texts("drills")));
        }
        kinds.addAll(byKind.keySet());
        Map<String, Condition> conditions = new LinkedHashMap<>();
        for (YamlNode node : file.nearest("/conditions").items()) {
            Condition condition = condition(node);
            if (conditions.putIfAbsent(condition.id(), condition) != null) {
                node.error(problems, "“" + condition.id() + "” stands here a second time", "Keep one of the two");
            }
        }
        links(file, conditions);
        return new SafetyRules(
                conditions,
                byKind,
                combinations(file, conditions.keySet()),
                file.integer("in-person-from").orElseThrow(),
                byAge(file, conditions.keySet()));
    }

    private Condition condition(YamlNode node) {
        Map<String, SettingDefinition> settings = settings(node);
        ExpressionParser parser = new ExpressionParser(settings);
        return new Condition(
                node.text("id").orElseThrow(),
                node.text("group").orElseThrow(),
                node.localText("name").orElseThrow(),
                node.localText("meaning").orElseThrow(),
                node.localText("yours").orElseThrow(),
                node.truth("sided").orElse(false),
                node.truth("lie-on-other-side").orElse(false),
                settings,
                node.get("applies").map(n -> expression(parser, n)).orElse(new Expression.Always()),
                items(node, "waits").stream()
                        .map(n -> new Condition.Wait(
                                expression(parser, n.nearest("/when")),
                                n.localText("reason").orElseThrow()))
                        .toList(),
                items(node, "rules").stream().map(n -> rule(parser, n)).toList(),
                Set.copyOf(node.texts("bars-goals")),
                items(node, "switches-on").stream().map(n -> link(parser, n)).toList(),
                node.localText("client-text"),
                source(node.nearest("/source")),
                node.truth("disputed").orElse(false));
    }

    private Map<String, SettingDefinition> settings(YamlNode condition) {
        Map<String, SettingDefinition> settings = new LinkedHashMap<>();
        for (YamlNode node : items(condition, "settings")) {
            SettingDefinition.Kind kind =
                    switch (node.text("kind").orElseThrow()) {
                        case "yes-no" -> SettingDefinition.Kind.YES_NO;
                        case "number" -> SettingDefinition.Kind.NUMBER;
                        default -> SettingDefinition.Kind.CHOICE;
                    };
            SettingDefinition setting = new SettingDefinition(
                    node.text("id").orElseThrow(),
                    kind,
                    node.text("cautious").orElseThrow(),
                    node.texts("words"),
                    node.localText("name").orElseThrow(),
                    node.truth("disputed").orElse(false),
                    source(node.nearest("/source")));
            if (setting.read(setting.cautious()).isEmpty()) {
                node.nearest("/cautious")
                        .error(
                                problems,
                                "“" + setting.cautious() + "” is no value of this setting",
                                "Write yes or no, a number, or one of its words");
            }
            settings.put(setting.id(), setting);
        }
        return settings;
    }

    private Rule rule(ExpressionParser parser, YamlNode node) {
        Action action = node.has("exclude") ? Action.EXCLUDE : node.has("modify") ? Action.MODIFY : Action.CAUTION;
        YamlNode expression = node.nearest("/" + action.id());
        return new Rule(
                action,
                expression(parser, expression),
                expression.text().orElseThrow(),
                node.texts("variants"),
                node.get("limits").map(ConditionReader::limits).orElse(DoseLimits.NONE),
                node.truth("answered-by-change").orElse(false),
                node.truth("as-written").orElse(false),
                node.localText("text"));
    }

    private static DoseLimits limits(YamlNode node) {
        return new DoseLimits(
                number(node, "effort"),
                number(node, "hold"),
                number(node, "breath-out"),
                node.has("pause"),
                node.has("counts"));
    }

    private static OptionalInt number(YamlNode node, String key) {
        return node.integer(key).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    private Condition.Link link(ExpressionParser parser, YamlNode node) {
        Map<String, String> settings = new LinkedHashMap<>();
        node.get("settings").ifPresent(n -> n.entries()
                .forEach((key, value) -> settings.put(key, value.text().orElseThrow())));
        return new Condition.Link(
                node.text("condition").orElseThrow(), expression(parser, node.nearest("/when")), settings);
    }

    private Expression expression(ExpressionParser parser, YamlNode node) {
        String text = node.text().orElseThrow();
        try {
            Expression expression = parser.parse(text);
            kindsIn(expression, node);
            return expression;
        } catch (ExpressionParser.UnreadableException e) {
            node.error(
                    problems,
                    "The rule “" + text + "” cannot be read: " + e.getMessage(),
                    "Write it like “hip-flexion > 80 and not limits-lifted”");
            return new Expression.Always();
        }
    }

    private void kindsIn(Expression expression, YamlNode node) {
        expression
                .labels()
                .filter(l -> l.startsWith("kind:"))
                .map(l -> l.substring("kind:".length()))
                .filter(kind -> !kinds.contains(kind))
                .forEach(kind -> node.error(
                        problems,
                        "There is no kind of movement called “" + kind + "”",
                        "Add it under “kinds”, or correct the name"));
    }

    private void links(YamlNode file, Map<String, Condition> conditions) {
        for (YamlNode node : file.nearest("/conditions").items()) {
            for (YamlNode link : items(node, "switches-on")) {
                expect(link.nearest("/condition"), conditions.keySet());
                Condition other = conditions.get(link.text("condition").orElseThrow());
                link.get("settings").ifPresent(s -> s.entries().forEach((key, value) -> {
                    SettingDefinition setting =
                            other == null ? null : other.settings().get(key);
                    if (setting == null || setting.read(value.text().orElse("")).isEmpty()) {
                        value.error(
                                problems, "“" + key + "” cannot be set so there", "Look at that condition's settings");
                    }
                }));
            }
        }
    }

    private List<SafetyRules.Combination> combinations(YamlNode file, Set<String> conditions) {
        ExpressionParser parser = new ExpressionParser(Map.of());
        List<SafetyRules.Combination> all = new ArrayList<>();
        for (YamlNode node : items(file, "combinations")) {
            List<List<String>> needs = new ArrayList<>();
            for (YamlNode any : node.nearest("/needs").items()) {
                any.items().forEach(id -> expect(id, conditions));
                needs.add(any.items().stream().flatMap(n -> n.text().stream()).toList());
            }
            all.add(new SafetyRules.Combination(
                    node.text("id").orElseThrow(),
                    node.localText("reason").orElseThrow(),
                    needs,
                    node.text("unless-seen"),
                    items(node, "rules").stream().map(n -> rule(parser, n)).toList()));
        }
        return all;
    }

    private List<SafetyRules.ByAge> byAge(YamlNode file, Set<String> conditions) {
        List<SafetyRules.ByAge> all = new ArrayList<>();
        for (YamlNode node : items(file, "by-age")) {
            expect(node.nearest("/condition"), conditions);
            all.add(new SafetyRules.ByAge(
                    node.text("condition").orElseThrow(),
                    node.integer("from").orElseThrow(),
                    node.text("unless-seen").orElseThrow()));
        }
        return all;
    }

    private void expect(YamlNode node, Set<String> conditions) {
        String id = node.text().orElse("");
        if (!conditions.contains(id)) {
            node.error(problems, "There is no condition called “" + id + "”", "Use an id of this file");
        }
    }

    private static List<YamlNode> items(YamlNode node, String key) {
        return node.get(key).map(YamlNode::items).orElse(List.of());
    }

    private static Source source(YamlNode node) {
        return new Source(
                node.text("kind").flatMap(Source.Kind::of).orElseThrow(),
                node.text("text").orElseThrow());
    }
}
