package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.drillsheaf.Problem;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.safety.ClientSafety;
import org.drillsheaf.drill.safety.Safety;

/**
 * How far a catalogue reaches.
 *
 * @param byGoalAndPosition goal to position to number of drills
 * @param byConditionAndPhase condition to phase to what is left
 */
public record Coverage(
        Map<String, Map<String, Integer>> byGoalAndPosition, Map<String, Map<Phase, Left>> byConditionAndPhase) {
    /** What every goal needs. House rule. */
    static final int DRILLS_A_GOAL = 5;

    static final int POSITIONS_A_GOAL = 3;
    static final int WITHOUT_EQUIPMENT_A_GOAL = 2;
    /** What every phase needs for a client with one condition. House rule. */
    static final int DRILLS_A_PHASE = 4;

    static final int FAMILIES_A_PHASE = 3;

    /** Drills and families that are left. */
    public record Left(int drills, int families) {}

    /** Counts the drills in use. */
    static Coverage of(Catalogue catalogue, Safety safety, Map<String, ClientSafety> clients) {
        Map<String, Map<String, Integer>> goals = new TreeMap<>();
        catalogue.words().goals().keySet().forEach(g -> goals.put(g, new TreeMap<>()));
        for (Drill drill : catalogue.inUse()) {
            for (String goal : drill.goals().keySet()) {
                drill.positions().forEach(p -> goals.computeIfAbsent(goal, g -> new TreeMap<>())
                        .merge(p, 1, Integer::sum));
            }
        }
        Map<String, Map<Phase, Left>> conditions = new TreeMap<>();
        clients.forEach((condition, client) -> conditions.put(condition, left(catalogue, safety, client)));
        return new Coverage(goals, conditions);
    }

    private static Map<Phase, Left> left(Catalogue catalogue, Safety safety, ClientSafety client) {
        Map<Phase, Set<String>> families = new EnumMap<>(Phase.class);
        Map<Phase, Integer> drills = new EnumMap<>(Phase.class);
        for (Drill drill : catalogue.inUse()) {
            if (safety.judge(drill, client).isOffered()) {
                for (Phase phase : drill.phases()) {
                    drills.merge(phase, 1, Integer::sum);
                    families.computeIfAbsent(phase, p -> new HashSet<>()).add(drill.family());
                }
            }
        }
        Map<Phase, Left> left = new EnumMap<>(Phase.class);
        for (Phase phase : Phase.values()) {
            left.put(
                    phase,
                    new Left(
                            drills.getOrDefault(phase, 0),
                            families.getOrDefault(phase, Set.of()).size()));
        }
        return left;
    }

    /** Goals and conditions that the catalogue does not serve enough. */
    List<Problem> problems(Catalogue catalogue) {
        List<Problem> problems = new ArrayList<>();
        byGoalAndPosition.forEach((goal, positions) -> {
            List<Drill> drills =
                    catalogue.inUse().stream().filter(d -> d.strength(goal) > 0).toList();
            long bare = drills.stream()
                    .filter(d -> d.equipment().isEmpty() || d.equipment().equals(List.of("wall")))
                    .count();
            String counts = drills.size() + " drills in " + positions.size() + " positions, " + bare
                    + " of them without equipment";
            if (drills.size() < DRILLS_A_GOAL
                    || positions.size() < POSITIONS_A_GOAL
                    || bare < WITHOUT_EQUIPMENT_A_GOAL) {
                problems.add(Problem.warning(
                        "shared/goals.yaml",
                        0,
                        "The goal “" + goal + "” is served by " + counts,
                        "Aim at " + DRILLS_A_GOAL + " drills, " + POSITIONS_A_GOAL + " positions and "
                                + WITHOUT_EQUIPMENT_A_GOAL + " drills with the floor or a wall only"));
            }
        });
        byConditionAndPhase.forEach((condition, phases) -> phases.forEach((phase, left) -> {
            if (left.drills() < DRILLS_A_PHASE || left.families() < FAMILIES_A_PHASE) {
                problems.add(Problem.warning(
                        "shared/conditions.yaml",
                        0,
                        "For “" + condition + "” phase " + phase.id() + " has " + left.drills() + " drills of "
                                + left.families() + " families left",
                        "Add drills or variants that its rules allow; until then a program is in person only"));
            }
        }));
        return problems;
    }

    /** The table as lines of text, goals down and positions across, then conditions down and phases across. */
    public List<String> table(List<String> positions) {
        List<String> lines = new ArrayList<>();
        lines.add(row("goal", positions));
        byGoalAndPosition.forEach((goal, counts) -> lines.add(row(
                goal,
                positions.stream()
                        .map(p -> String.valueOf(counts.getOrDefault(p, 0)))
                        .toList())));
        lines.add("");
        lines.add(row("condition", List.of("settle", "restore", "reference", "integrate")));
        byConditionAndPhase.forEach((condition, phases) -> lines.add(row(
                condition,
                phases.values().stream()
                        .map(left -> left.drills() + "/" + left.families())
                        .toList())));
        return lines;
    }

    private static String row(String name, List<String> cells) {
        StringBuilder row = new StringBuilder(String.format(java.util.Locale.ROOT, "%-30s", name));
        cells.forEach(cell -> row.append(String.format(java.util.Locale.ROOT, " %15s", cell)));
        return row.toString();
    }
}
