package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Invented catalogues and needs for tests; the same seed always gives the same task. */
final class RandomTasks {
    private static final List<String> POSITIONS = List.of(
            "supine",
            "prone",
            "side-lying",
            "hands-and-knees",
            "kneeling",
            "half-kneeling",
            "seated",
            "leaning",
            "standing",
            "split-stance",
            "walking");
    private static final List<String> EQUIPMENT =
            List.of("wall", "chair", "cushion", "pillow", "band", "towel", "step");

    private RandomTasks() {}

    /** Few drills, few goals, tight rules: small enough to try everything. */
    static BuildTask small(long seed) {
        Random random = new Random(seed);
        int phases = 1 + random.nextInt(3);
        int goals = 2 + random.nextInt(3);
        int drills = 6 + random.nextInt(phases == 3 ? 4 : 6);
        List<BuildTask.PhaseTask> phaseTasks = new ArrayList<>();
        for (int p = 0; p < phases; p++) {
            List<BuildTask.GoalTarget> targets = new ArrayList<>();
            for (int g = 0; g < goals; g++) {
                targets.add(new BuildTask.GoalTarget("goal-" + g, random.nextInt(6), random.nextInt(5)));
            }
            int target = 4 + random.nextInt(8);
            phaseTasks.add(new BuildTask.PhaseTask(
                    "phase-" + p,
                    targets,
                    2,
                    3 + random.nextInt(2),
                    target,
                    target + random.nextInt(5),
                    random.nextInt(3),
                    Set.of()));
        }
        List<BuildTask.Candidate> candidates = candidates(random, drills, phases, goals, 4, 3);
        Set<String> taught = random.nextInt(3) == 0 ? Set.of("drill-1", "drill-2") : Set.of();
        Set<String> before = random.nextInt(3) == 0 ? Set.of("drill-0", "drill-3", "drill-4") : Set.of();
        List<BuildTask.Want> wants = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            wants.add(new BuildTask.Want(
                    "drill-" + random.nextInt(drills),
                    random.nextBoolean() ? java.util.Optional.empty() : java.util.Optional.of(random.nextInt(phases))));
        }
        List<BuildTask.PhaseTask> kept = new ArrayList<>();
        boolean replan = random.nextInt(4) == 0;
        for (BuildTask.PhaseTask p : phaseTasks) {
            kept.add(new BuildTask.PhaseTask(
                    p.name(),
                    p.goals(),
                    p.fewest(),
                    p.most(),
                    p.targetMinutes(),
                    p.mostMinutes(),
                    p.strongAtMost(),
                    replan ? Set.of("drill-0", "drill-1", "drill-5") : Set.of()));
        }
        return new BuildTask(
                kept, candidates, random.nextInt(3), taught, before, before.isEmpty() ? 0 : random.nextInt(2), wants);
    }

    /**
     * So little to cover that most programs leave nothing open but positions, and many drills that need another one first.
     *
     * @param phases 2 to 4
     */
    static BuildTask undemanding(long seed, int phases, int drills) {
        Random random = new Random(seed);
        List<BuildTask.PhaseTask> phaseTasks = new ArrayList<>();
        Set<String> kept = random.nextInt(5) == 0 ? Set.of("drill-0", "drill-2", "drill-5") : Set.of();
        for (int p = 0; p < phases; p++) {
            List<BuildTask.GoalTarget> targets = List.of(
                    new BuildTask.GoalTarget("goal-0", 1 + random.nextInt(3), random.nextInt(3)),
                    new BuildTask.GoalTarget("goal-1", 1 + random.nextInt(3), random.nextInt(2)));
            int fewest = random.nextInt(6) == 0 ? 0 : 2;
            int most = 3 + random.nextInt(2);
            int target = random.nextInt(5);
            phaseTasks.add(new BuildTask.PhaseTask(
                    "phase-" + p, targets, fewest, most, target, target + 6, 1 + random.nextInt(3), kept));
        }
        List<BuildTask.Candidate> candidates = new ArrayList<>();
        for (int d = 0; d < drills; d++) {
            int goal = random.nextInt(2); // mostly practised in other positions than the other one
            Map<Integer, BuildTask.Option> options = new TreeMap<>();
            int first = random.nextInt(phases);
            int last = Math.min(phases - 1, first + random.nextInt(phases));
            for (int p = first; p <= last; p++) {
                int fewest = 1 + random.nextInt(2);
                options.put(p, new BuildTask.Option(fewest, fewest + random.nextInt(4), random.nextInt(4) == 0));
            }
            Set<String> prerequisites = new TreeSet<>();
            for (int k = random.nextInt(4) == 0 ? 1 + random.nextInt(2) : 0; k > 0; k--) {
                prerequisites.add("drill-" + random.nextInt(drills));
            }
            prerequisites.remove("drill-" + d);
            candidates.add(new BuildTask.Candidate(
                    "drill-" + d,
                    "family-" + random.nextInt(Math.max(3, 2 * drills / 3)),
                    1 + random.nextInt(3),
                    POSITIONS.get(2 * goal + random.nextInt(3)),
                    random.nextBoolean() ? Set.of() : Set.of(EQUIPMENT.get(random.nextInt(3))),
                    Map.of("goal-" + goal, 1 + random.nextInt(3)),
                    prerequisites,
                    random.nextInt(15) == 0,
                    options));
        }
        Set<String> before = random.nextInt(4) == 0 ? Set.of("drill-0", "drill-3", "drill-4") : Set.of();
        List<BuildTask.Want> wants = new ArrayList<>();
        if (random.nextInt(4) == 0) {
            wants.add(new BuildTask.Want(
                    "drill-" + random.nextInt(drills),
                    random.nextBoolean() ? java.util.Optional.empty() : java.util.Optional.of(random.nextInt(phases))));
        }
        return new BuildTask(
                phaseTasks,
                candidates,
                random.nextInt(random.nextInt(8) == 0 ? 4 : 3),
                random.nextInt(4) == 0 ? Set.of("drill-1") : Set.of(),
                before,
                before.isEmpty() ? 0 : random.nextInt(2),
                wants);
    }

    /** As many drills as asked, four phases and twelve goals like the real ones. */
    static BuildTask large(long seed, int drills) {
        Random random = new Random(seed);
        int[][] most = {{4, 12}, {5, 15}, {6, 18}, {6, 20}};
        List<BuildTask.PhaseTask> phaseTasks = new ArrayList<>();
        for (int p = 0; p < 4; p++) {
            List<BuildTask.GoalTarget> targets = new ArrayList<>();
            for (int g = 0; g < 12; g++) {
                int home = g / 3;
                int weight = home == p ? 3 + random.nextInt(3) : random.nextInt(3);
                int target = home == p ? 3 + random.nextInt(2) : random.nextInt(3);
                targets.add(new BuildTask.GoalTarget("goal-" + g, weight, target));
            }
            phaseTasks.add(new BuildTask.PhaseTask(
                    "phase-" + p, targets, 3, most[p][0], Math.min(most[p][1], 15), 15, p == 0 ? 1 : 6, Set.of()));
        }
        return new BuildTask(phaseTasks, candidates(random, drills, 4, 12, 11, 7), 2, Set.of(), Set.of(), 0, List.of());
    }

    private static List<BuildTask.Candidate> candidates(
            Random random, int drills, int phases, int goals, int positions, int equipment) {
        List<BuildTask.Candidate> candidates = new ArrayList<>();
        int families = Math.max(2, drills / 3);
        for (int d = 0; d < drills; d++) {
            Map<String, Integer> strengths = new TreeMap<>();
            int served = 1 + random.nextInt(3);
            for (int k = 0; k < served; k++) {
                strengths.put("goal-" + random.nextInt(goals), 1 + random.nextInt(3));
            }
            Map<Integer, BuildTask.Option> options = new TreeMap<>();
            int first = random.nextInt(phases);
            int last = Math.min(phases - 1, first + random.nextInt(3));
            for (int p = first; p <= last; p++) {
                int fewest = 1 + random.nextInt(3);
                options.put(p, new BuildTask.Option(fewest, fewest + random.nextInt(4), random.nextInt(4) == 0));
            }
            Set<String> items = new TreeSet<>();
            for (int k = random.nextInt(3); k > 0; k--) {
                items.add(EQUIPMENT.get(random.nextInt(equipment)));
            }
            Set<String> prerequisites = new TreeSet<>();
            if (random.nextInt(12) == 0) {
                prerequisites.add("drill-" + random.nextInt(drills));
            }
            prerequisites.remove("drill-" + d);
            candidates.add(new BuildTask.Candidate(
                    "drill-" + d,
                    "family-" + random.nextInt(families),
                    1 + random.nextInt(4),
                    POSITIONS.get(random.nextInt(positions)),
                    items,
                    strengths,
                    prerequisites,
                    random.nextInt(15) == 0,
                    options));
        }
        return candidates;
    }
}
