package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.Problems;
import org.drillsheaf.Source;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.drill.Phase;

/** Reads the phases of the house from YAML. */
public final class PhaseTableReader {
    private PhaseTableReader() {}

    /**
     * @param goals ids of the goals that may be named
     * @param positions ids of the positions that may be named
     * @return empty when the file has errors, which then stand in {@code problems}
     */
    public static Optional<PhaseTable> read(
            YamlNode file, YamlSchema schema, Set<String> goals, Set<String> positions, Problems problems) {
        Problems own = new Problems();
        schema.check(file, own);
        if (!own.hasErrors()) {
            checkNames(file, goals, positions, own);
        }
        problems.addAll(own.all());
        if (own.hasErrors()) {
            return Optional.empty();
        }
        YamlNode least = file.nearest("/least-choice");
        return Optional.of(new PhaseTable(
                file.nearest("/phases").items().stream()
                        .map(PhaseTableReader::row)
                        .toList(),
                file.nearest("/changes").items().stream()
                        .map(PhaseTableReader::change)
                        .toList(),
                Set.copyOf(file.texts("settle-first")),
                whole(least, "drills"),
                whole(least, "families"),
                measuredBy(file.nearest("/measured-by"))));
    }

    private static void checkNames(YamlNode file, Set<String> goals, Set<String> positions, Problems problems) {
        List<YamlNode> rows = file.nearest("/phases").items();
        for (int i = 0; i < rows.size(); i++) {
            YamlNode row = rows.get(i);
            if (!row.text("id").orElse("").equals(Phase.values()[i].id())) {
                row.error(problems, "The phases stand in another order", "Write settle, restore, reference, integrate");
            }
            row.nearest("/goals").entries().forEach((goal, node) -> known(goal, node, goals, "goal", problems));
            for (String goal : goals) {
                if (!row.nearest("/goals").has(goal)) {
                    row.error(
                            problems,
                            "The goal “" + goal + "” is missing in this phase",
                            "Give it [0, 0] if it asks nothing");
                }
            }
            ordered(row.nearest("/drills"), problems);
            ordered(row.nearest("/minutes"), problems);
            ordered(row.nearest("/weeks"), problems);
            YamlNode effort = row.nearest("/effort");
            if (whole(effort, "exception-limit") < whole(effort, "limit")) {
                effort.error(problems, "The exception is below the limit", "Give it at least the limit");
            }
        }
        file.nearest("/measured-by").entries().forEach((goal, node) -> known(goal, node, goals, "goal", problems));
        for (YamlNode change : file.nearest("/changes").items()) {
            for (YamlNode add : change.nearest("/add").items()) {
                known(add.text("goal").orElse(""), add, goals, "goal", problems);
            }
            for (YamlNode not : change.nearest("/not-offered").items()) {
                known(not.text("goal").orElse(""), not, goals, "goal", problems);
                not.texts("positions").forEach(p -> known(p, not, positions, "position", problems));
            }
        }
    }

    private static void ordered(YamlNode list, Problems problems) {
        for (int i = 1; i < list.items().size(); i++) {
            if (number(list, i) < number(list, i - 1)) {
                list.error(problems, "These numbers fall", "Write the smaller one first");
            }
        }
    }

    private static void known(String id, YamlNode node, Set<String> known, String kind, Problems problems) {
        if (!known.contains(id)) {
            node.error(problems, "There is no " + kind + " “" + id + "”", "Use an id of the vocabulary");
        }
    }

    private static Map<String, List<String>> measuredBy(YamlNode node) {
        Map<String, List<String>> tests = new LinkedHashMap<>();
        node.keys().forEach(goal -> tests.put(goal, node.texts(goal)));
        return tests;
    }

    private static PhaseRow row(YamlNode node) {
        Map<String, PhaseRow.Asked> goals = new LinkedHashMap<>();
        node.nearest("/goals")
                .entries()
                .forEach((goal, asked) -> goals.put(goal, new PhaseRow.Asked(number(asked, 0), number(asked, 1))));
        YamlNode drills = node.nearest("/drills");
        YamlNode effort = node.nearest("/effort");
        return new PhaseRow(
                Phase.of(node.text("id").orElseThrow()).orElseThrow(),
                node.localText("name").orElseThrow(),
                node.text("meaning").orElseThrow(),
                node.localText("sentence").orElseThrow(),
                node.localText("good").orElseThrow(),
                number(drills, 0),
                number(drills, 1),
                number(drills, 2),
                number(node.nearest("/minutes"), 0),
                number(node.nearest("/minutes"), 1),
                number(node.nearest("/weeks"), 0),
                number(node.nearest("/weeks"), 1),
                new EffortLimit(
                        whole(effort, "wish"),
                        whole(effort, "limit"),
                        whole(effort, "exceptions"),
                        whole(effort, "exception-limit")),
                whole(node, "sessions-per-week"),
                goals,
                source(node.nearest("/source")));
    }

    private static ReadingChange change(YamlNode node) {
        List<ReadingChange.Add> adds = new ArrayList<>();
        for (YamlNode add : node.nearest("/add").items()) {
            adds.add(new ReadingChange.Add(add.text("goal").orElseThrow(), phases(add), whole(add, "by")));
        }
        List<ReadingChange.NotOffered> nots = new ArrayList<>();
        for (YamlNode not : node.nearest("/not-offered").items()) {
            nots.add(new ReadingChange.NotOffered(
                    not.text("goal").orElseThrow(),
                    Set.copyOf(not.texts("positions")),
                    phases(not),
                    not.localText("words").orElseThrow()));
        }
        return new ReadingChange(
                node.text("id").orElseThrow(),
                Set.copyOf(node.texts("when")),
                node.localText("words").orElseThrow(),
                adds,
                maybe(node, "level"),
                maybe(node, "wish-by"),
                maybe(node, "effort-limit"),
                nots,
                source(node.nearest("/source")));
    }

    static Set<Phase> phases(YamlNode node) {
        return node.texts("phases").stream()
                .map(p -> Phase.of(p).orElseThrow())
                .collect(Collectors.toUnmodifiableSet());
    }

    static Source source(YamlNode node) {
        return new Source(
                Source.Kind.of(node.text("kind").orElseThrow()).orElseThrow(),
                node.text("text").orElseThrow());
    }

    static int whole(YamlNode node, String key) {
        return node.integer(key).orElseThrow();
    }

    private static OptionalInt maybe(YamlNode node, String key) {
        return node.integer(key).map(OptionalInt::of).orElse(OptionalInt.empty());
    }

    static int number(YamlNode list, int index) {
        return list.items().get(index).integer().orElseThrow();
    }
}
