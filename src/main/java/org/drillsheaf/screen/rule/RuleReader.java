package org.drillsheaf.screen.rule;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/**
 * Reads rules from YAML. A rule is
 *
 * <ul>
 *   <li>a statement: {@code limited thigh-drop both}, {@code value breath-out >= 5}, {@code not tucks};
 *   <li>the name of a definition: {@code stall};
 *   <li>a list, of which all must hold;
 *   <li>a map with one of {@code all}, {@code any}, {@code not}, {@code at-least} (a number, with {@code of} and perhaps
 *       {@code at-most}), {@code each-side}, {@code some-side}, and perhaps {@code words}.
 * </ul>
 *
 * A number that is compared is three-valued by the error of its test. Whatever is wrong is reported with its line, and the
 * rule is then false. One reader reads one set of definitions; not safe for several threads.
 */
public final class RuleReader {
    private static final Set<String> OPERATORS = Set.of("all", "any", "not", "at-least", "each-side", "some-side");
    private static final int DEEPEST = 40;

    private final Words words;
    private final Problems problems;
    private final Map<String, YamlNode> definitions;
    private final Map<String, YamlNode> groups;
    private final Set<String> beingRead = new LinkedHashSet<>();

    /**
     * @param definitions named rules
     * @param groups named lists of rules, for {@code of}
     */
    public RuleReader(Words words, Map<String, YamlNode> definitions, Map<String, YamlNode> groups, Problems problems) {
        this.words = words;
        this.definitions = new LinkedHashMap<>(definitions);
        this.groups = new LinkedHashMap<>(groups);
        this.problems = problems;
    }

    /** Reads one rule that may not speak of {@code this} side. */
    public Rule read(YamlNode node) {
        return read(node, false, 0);
    }

    /** Reads one rule that is read for each side. */
    public Rule readSided(YamlNode node) {
        return read(node, true, 0);
    }

    /** Reads a list of rules, or one rule. */
    public List<Rule> readList(YamlNode node, boolean sided) {
        if (!node.isList()) {
            return List.of(read(node, sided, 0));
        }
        List<Rule> rules = new ArrayList<>();
        node.items().forEach(n -> rules.add(read(n, sided, 0)));
        return rules;
    }

    /** A definition or the members of a group by name, as they are read for each side. */
    public List<Rule> readGroup(String name, YamlNode place) {
        YamlNode group = groups.get(name);
        if (group == null) {
            place.error(
                    problems, "There is no group “" + name + "”", "Known are: " + String.join(", ", groups.keySet()));
            return List.of();
        }
        return readList(group, true);
    }

    private Rule read(YamlNode node, boolean sided, int depth) {
        if (depth > DEEPEST) {
            return wrong(node, "The rules are nested too deep here", "Use a definition");
        }
        Optional<String> text = node.text();
        if (text.isPresent()) {
            return statement(text.get().strip(), node, sided, depth);
        }
        if (node.isList()) {
            return new Rule.All(list(node, sided, depth));
        }
        if (!node.isMap()) {
            return wrong(node, "There is no rule here", "Write a statement, a list, or a map");
        }
        return map(node, sided, depth);
    }

    private Rule statement(String text, YamlNode node, boolean sided, int depth) {
        if (text.startsWith("not ")) {
            return new Rule.Not(statement(text.substring(4).strip(), node, sided, depth + 1));
        }
        String first = text.split("\\s+", 2)[0];
        if (AtomReader.isAtomWord(first)) {
            return new AtomReader(words, node, sided, problems).read(text).orElse(Rule.FALSE);
        }
        YamlNode definition = definitions.get(text);
        if (definition == null) {
            return wrong(
                    node,
                    "“" + text + "” is neither a statement nor a definition",
                    "Begin with a word such as limited, free or beyond, or use one of: "
                            + String.join(", ", definitions.keySet()));
        }
        if (!beingRead.add(text)) {
            return wrong(node, "The definition “" + text + "” leads back to itself", "Write it without itself");
        }
        Rule rule = read(definition, sided, depth + 1);
        beingRead.remove(text);
        return rule;
    }

    private Rule map(YamlNode node, boolean sided, int depth) {
        List<String> operators =
                node.keys().stream().filter(OPERATORS::contains).toList();
        if (operators.size() != 1) {
            return wrong(
                    node,
                    "This rule has " + operators.size() + " of the words all, any, not, at-least, each-side, some-side",
                    "Write exactly one of them");
        }
        String operator = operators.get(0);
        for (String key : node.keys()) {
            boolean ofCount =
                    operator.equals("at-least") && Set.of("of", "at-most").contains(key);
            if (!key.equals(operator) && !key.equals("words") && !ofCount) {
                return wrong(node, "“" + key + "” is not known in a rule", "Remove it");
            }
        }
        YamlNode inner = node.get(operator).orElseThrow();
        Rule rule =
                switch (operator) {
                    case "all" -> new Rule.All(list(inner, sided, depth));
                    case "any" -> new Rule.Any(list(inner, sided, depth));
                    case "not" -> new Rule.Not(read(inner, sided, depth + 1));
                    case "each-side" -> new Rule.ForSides(true, read(inner, true, depth + 1));
                    case "some-side" -> new Rule.ForSides(false, read(inner, true, depth + 1));
                    default -> count(node, inner, sided, depth);
                };
        return node.localText("words").<Rule>map(w -> new Rule.Named(w, rule)).orElse(rule);
    }

    private Rule count(YamlNode node, YamlNode number, boolean sided, int depth) {
        Optional<YamlNode> of = node.get("of");
        if (number.integer().isEmpty() || of.isEmpty()) {
            return wrong(node, "“at-least” needs a whole number and “of”", "Write {at-least: 2, of: [ … ]}");
        }
        YamlNode members = of.get();
        Optional<String> group = members.text();
        if (group.isPresent()) {
            members = groups.get(group.get());
            if (members == null) {
                return wrong(
                        node,
                        "There is no group “" + group.get() + "”",
                        "Known are: " + String.join(", ", groups.keySet()));
            }
        }
        OptionalInt most = node.integer("at-most").map(OptionalInt::of).orElse(OptionalInt.empty());
        return new Rule.Count(number.integer().get(), most, list(members, sided, depth));
    }

    private List<Rule> list(YamlNode node, boolean sided, int depth) {
        if (!node.isList()) {
            return List.of(read(node, sided, depth + 1));
        }
        List<Rule> rules = new ArrayList<>();
        node.items().forEach(n -> rules.add(read(n, sided, depth + 1)));
        return rules;
    }

    private Rule wrong(YamlNode node, String what, String remedy) {
        node.error(problems, what, remedy);
        return Rule.FALSE;
    }
}
