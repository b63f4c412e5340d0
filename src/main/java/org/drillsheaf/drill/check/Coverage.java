package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.Collections;
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
 * How far a catalogue reaches, counted over the drills in use.
 *
 * @param byGoalAndPosition goal to position to number of drills
 * @param byCondition condition to what it leaves
 */
public record Coverage(Map<String, Map<String, Integer>> byGoalAndPosition, Map<String, Left> byCondition) {
    /** What every goal needs. House rule. */
    static final int DRILLS_A_GOAL = 5;

    static final int POSITIONS_A_GOAL = 3;
    static final int WITHOUT_EQUIPMENT_A_GOAL = 2;
    /** What every phase needs for a client with one condition. House rule. */
    static final int DRILLS_A_PHASE = 4;

    static final int FAMILIES_A_PHASE = 3;

    public Coverage {
        byGoalAndPosition = Collections.unmodifiableMap(new TreeMap<>(byGoalAndPosition));
        byCondition = Collections.unmodifiableMap(new TreeMap<>(byCondition));
    }

    /** Drills of one phase, and the families that they come from. */
    public record Choice(int drills, int families) {}

    /**
     * What one condition leaves.
     *
     * @param byPhase every phase
     * @param byGoalAndPosition goal to position to number of drills; goals that the condition bars are not in it
     */
    public record Left(Map<Phase, Choice> byPhase, Map<String, Map<String, Integer>> byGoalAndPosition) {
        public Left {
            byPhase = Collections.unmodifiableMap(new EnumMap<>(byPhase));
            byGoalAndPosition = Collections.unmodifiableMap(new TreeMap<>(byGoalAndPosition));
        }
    }

    /** Counts the drills in use. */
    static Coverage of(Catalogue catalogue, Safety safety, Map<String, ClientSafety> clients) {
        Map<String, Left> left = new TreeMap<>();
        clients.forEach((condition, client) -> {
            List<Drill> offered = catalogue.inUse().stream()
                    .filter(drill -> safety.judge(drill, client).isOffered())
                    .toList();
            Map<String, Map<String, Integer>> goals = byGoalAndPosition(catalogue, offered);
            goals.keySet().removeAll(client.barredGoals().keySet());
            left.put(condition, new Left(byPhase(offered), goals));
        });
        return new Coverage(byGoalAndPosition(catalogue, catalogue.inUse()), left);
    }

    private static Map<String, Map<String, Integer>> byGoalAndPosition(Catalogue catalogue, List<Drill> drills) {
        Map<String, Map<String, Integer>> goals = new TreeMap<>();
        catalogue.words().goals().keySet().forEach(g -> goals.put(g, new TreeMap<>()));
        for (Drill drill : drills) {
            for (String goal : drill.goals().keySet()) {
                drill.positions().forEach(p -> goals.computeIfAbsent(goal, g -> new TreeMap<>())
                        .merge(p, 1, Integer::sum));
            }
        }
        return goals;
    }

    private static Map<Phase, Choice> byPhase(List<Drill> offered) {
        Map<Phase, Choice> choices = new EnumMap<>(Phase.class);
        for (Phase phase : Phase.values()) {
            Set<String> families = new HashSet<>();
            List<Drill> drills =
                    offered.stream().filter(d -> d.phases().contains(phase)).toList();
            drills.forEach(d -> families.add(d.family()));
            choices.put(phase, new Choice(drills.size(), families.size()));
        }
        return choices;
    }

    /** Goals, positions and conditions that the catalogue does not serve enough. */
    List<Problem> problems(Catalogue catalogue) {
        List<Problem> problems = new ArrayList<>();
        byGoalAndPosition.forEach((goal, positions) -> goal(catalogue, goal, positions.size(), problems));
        for (String position : catalogue.words().positions().keySet()) {
            if (catalogue.inUse().stream().noneMatch(d -> d.positions().contains(position))) {
                problems.add(Problem.warning(
                        "shared/positions.yaml",
                        0,
                        "No drill is done in the position “" + position + "”",
                        "Add one, or take the position out of the vocabulary"));
            }
        }
        byCondition.forEach((condition, left) -> condition(condition, left, problems));
        return problems;
    }

    private static void goal(Catalogue catalogue, String goal, int positions, List<Problem> problems) {
        List<Drill> drills =
                catalogue.inUse().stream().filter(d -> d.strength(goal) > 0).toList();
        long bare = drills.stream().filter(d -> d.equipment().isEmpty()).count();
        if (drills.size() < DRILLS_A_GOAL || positions < POSITIONS_A_GOAL || bare < WITHOUT_EQUIPMENT_A_GOAL) {
            problems.add(Problem.warning(
                    "shared/goals.yaml",
                    0,
                    "The goal “" + goal + "” is served by " + drills.size() + " drills in " + positions + " positions, "
                            + bare + " of them without any equipment",
                    "Aim at " + DRILLS_A_GOAL + " drills, " + POSITIONS_A_GOAL + " positions and "
                            + WITHOUT_EQUIPMENT_A_GOAL + " drills that need nothing but room"));
        }
    }

    private static void condition(String condition, Left left, List<Problem> problems) {
        left.byPhase().forEach((phase, choice) -> {
            if (choice.drills() < DRILLS_A_PHASE || choice.families() < FAMILIES_A_PHASE) {
                problems.add(Problem.warning(
                        "shared/conditions.yaml",
                        0,
                        "For “" + condition + "” phase " + phase.id() + " has " + choice.drills() + " drills of "
                                + choice.families() + " families left",
                        "Add drills or variants that its rules allow; until then a program is in person only"));
            }
        });
        left.byGoalAndPosition().forEach((goal, positions) -> {
            if (positions.isEmpty()) {
                problems.add(Problem.warning(
                        "shared/conditions.yaml",
                        0,
                        "For “" + condition + "” no drill is left that serves “" + goal + "”",
                        "Add a drill or a variant that its rules allow, or bar the goal"));
            }
        });
    }
}
