package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * One phase in arrays, for speed: the drills that may stand in it, numbered from 0 in the order of their ids. Immutable after
 * it is made.
 */
final class PhaseModel {
    final BuildTask.PhaseTask task;
    /** Number of the drill in the task. */
    final int[] drill;

    final int[] family;
    final long[] position;
    final long[] equipment;
    final int[] fewestMinutes;
    final int[] mostMinutes;
    final boolean[] strong;
    final boolean[] change;
    /** Goals that the drill serves here, as numbers into weight and target. */
    final int[][] goal;

    final int[][] strength;
    final int[] weight;
    final int[] target;

    /** The largest strength of any drill here for any goal. */
    final int strongest;
    /** For each drill and each goal that it serves, the number of the goal times all strengths with zero, plus the strength. */
    final int[][] slots;

    /** How many positions there are. */
    final int positions;

    private final Map<Integer, Integer> local = new HashMap<>();

    PhaseModel(BuildTask task, int phase, List<Integer> drills, Map<String, Integer> families) {
        this.task = task.phases().get(phase);
        List<BuildTask.GoalTarget> goals = this.task.goals().stream()
                .filter(g -> g.weight() > 0 && g.target() > 0)
                .toList();
        weight = goals.stream().mapToInt(BuildTask.GoalTarget::weight).toArray();
        target = goals.stream().mapToInt(BuildTask.GoalTarget::target).toArray();
        int n = drills.size();
        drill = new int[n];
        family = new int[n];
        position = new long[n];
        equipment = new long[n];
        fewestMinutes = new int[n];
        mostMinutes = new int[n];
        strong = new boolean[n];
        change = new boolean[n];
        goal = new int[n][];
        strength = new int[n][];
        List<String> places = new ArrayList<>(new TreeSet<>(
                task.candidates().stream().map(BuildTask.Candidate::position).toList()));
        TreeSet<String> items = new TreeSet<>();
        task.candidates().forEach(c -> items.addAll(c.equipment()));
        List<String> equipmentItems = new ArrayList<>(items);
        if (places.size() > Long.SIZE || equipmentItems.size() > Long.SIZE) {
            throw new IllegalArgumentException("more than 64 positions or pieces of equipment");
        }
        positions = places.size();
        for (int i = 0; i < n; i++) {
            BuildTask.Candidate candidate = task.candidates().get(drills.get(i));
            BuildTask.Option option = candidate.options().get(phase);
            if (option == null) {
                throw new IllegalArgumentException(candidate.id() + " has no option in phase " + phase);
            }
            drill[i] = drills.get(i);
            local.put(drill[i], i);
            family[i] = families.getOrDefault(candidate.family(), -1);
            position[i] = 1L << places.indexOf(candidate.position());
            for (String item : candidate.equipment()) {
                equipment[i] |= 1L << equipmentItems.indexOf(item);
            }
            fewestMinutes[i] = option.fewestMinutes();
            mostMinutes[i] = option.mostMinutes();
            strong[i] = option.strong();
            change[i] = !this.task.kept().isEmpty() && !this.task.kept().contains(candidate.id());
            List<int[]> served = new ArrayList<>();
            for (int g = 0; g < goals.size(); g++) {
                int s = candidate.strengths().getOrDefault(goals.get(g).goal(), 0);
                if (s > 0) {
                    served.add(new int[] {g, s});
                }
            }
            goal[i] = served.stream().mapToInt(a -> a[0]).toArray();
            strength[i] = served.stream().mapToInt(a -> a[1]).toArray();
        }
        strongest = java.util.Arrays.stream(strength)
                .flatMapToInt(java.util.Arrays::stream)
                .max()
                .orElse(0);
        slots = new int[n][];
        for (int i = 0; i < n; i++) {
            slots[i] = goal[i].clone();
            for (int k = 0; k < slots[i].length; k++) {
                slots[i][k] = goal[i][k] * (strongest + 1) + strength[i][k];
            }
        }
    }

    int size() {
        return drill.length;
    }

    /** What the drill of the task would gain as the only one. */
    int worth(int taskDrill) {
        int i = local(taskDrill);
        int sum = 0;
        for (int k = 0; k < goal[i].length; k++) {
            sum += weight[goal[i][k]] * Math.min(strength[i][k], target[goal[i][k]]);
        }
        return sum;
    }

    /** The number in this phase of a drill of the task, or -1. */
    int local(int taskDrill) {
        return local.getOrDefault(taskDrill, -1);
    }

    /** The bit of the position of a drill that is offered. */
    long positionOf(int taskDrill) {
        return position[local(taskDrill)];
    }

    boolean offers(int taskDrill) {
        return local.containsKey(taskDrill);
    }
}
