package org.drillsheaf.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.check.Coverage;

/**
 * How far a catalogue reaches, as lines of text for a terminal.
 *
 * @param positions ids in the order of their columns
 */
record CoverageTable(Coverage coverage, List<String> positions) {
    /** Room for the longest id. */
    private static final int NAME = 27;

    /** Goals down and positions across, then conditions down and phases across. */
    List<String> goalsAndConditions() {
        List<String> lines = new ArrayList<>();
        List<String> heads = positions.stream().map(CoverageTable::head).toList();
        lines.add(row("goal", heads, 9));
        coverage.byGoalAndPosition()
                .forEach((goal, counts) -> lines.add(row(
                        goal,
                        positions.stream()
                                .map(p -> String.valueOf(counts.getOrDefault(p, 0)))
                                .toList(),
                        9)));
        lines.add("");
        lines.add(row(
                "condition (drills/families)",
                Stream.of(Phase.values()).map(Phase::id).toList(),
                10));
        coverage.byCondition()
                .forEach((condition, left) -> lines.add(row(
                        condition,
                        left.byPhase().values().stream()
                                .map(choice -> choice.drills() + "/" + choice.families())
                                .toList(),
                        10)));
        return lines;
    }

    /** Conditions down and goals across: drills and positions left. A goal that the condition bars has a dash. */
    List<String> goalsByCondition() {
        List<String> goals = List.copyOf(coverage.byGoalAndPosition().keySet());
        List<String> lines = new ArrayList<>();
        lines.add("Drills/positions left for each goal; – is barred");
        for (int i = 0; i < goals.size(); i++) {
            lines.add(String.format(Locale.ROOT, "  %2d %s", i + 1, goals.get(i)));
        }
        lines.add(row(
                "condition",
                IntStream.rangeClosed(1, goals.size()).mapToObj(String::valueOf).toList(),
                6));
        lines.add(row(
                "(none)",
                goals.stream()
                        .map(g -> cell(coverage.byGoalAndPosition().getOrDefault(g, Map.of())))
                        .toList(),
                6));
        coverage.byCondition()
                .forEach((condition, left) -> lines.add(row(
                        condition,
                        goals.stream()
                                .map(g -> left.byGoalAndPosition().containsKey(g)
                                        ? cell(left.byGoalAndPosition().getOrDefault(g, Map.of()))
                                        : "–")
                                .toList(),
                        6)));
        return lines;
    }

    private static String cell(Map<String, Integer> byPosition) {
        int drills = byPosition.values().stream().mapToInt(Integer::intValue).sum();
        return drills + "/" + byPosition.size();
    }

    /** A position’s id, short enough for a column. */
    private static String head(String position) {
        return position.length() <= 8 ? position : position.substring(0, 7) + ".";
    }

    private static String row(String name, List<String> cells, int width) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "%-" + NAME + "s", name));
        cells.forEach(cell -> row.append(String.format(Locale.ROOT, " %" + (width - 1) + "s", cell)));
        return row.toString();
    }
}
