package org.drillsheaf.program.build;

/**
 * Some drills of a phase with what they come to; drills are put on and taken off like cards from a pile. Not safe for several
 * threads.
 */
final class PartialChoice {
    final PhaseModel model;
    private final boolean[] familyUsed;
    private final int[] chosen;
    private final int[][] top;
    private final int[][] missing;
    private final int[] shortfall;
    private final long[] positions;
    private final long[] equipment;
    private int size;
    private int fewestMinutes;
    private int mostMinutes;
    private int strong;
    private int changes;

    PartialChoice(PhaseModel model, int families) {
        this.model = model;
        int deep = model.task.most() + 1;
        familyUsed = new boolean[families];
        chosen = new int[deep];
        top = new int[deep][model.weight.length];
        missing = new int[deep][];
        missing[0] = model.target.clone();
        for (int d = 1; d < deep; d++) {
            missing[d] = new int[model.weight.length];
        }
        shortfall = new int[deep];
        for (int g = 0; g < model.weight.length; g++) {
            shortfall[0] += model.weight[g] * model.target[g];
        }
        positions = new long[deep];
        equipment = new long[deep];
        changes = model.task.kept().size();
    }

    void clear() {
        while (size > 0) {
            removeLast();
        }
    }

    int size() {
        return size;
    }

    int[] drills() {
        return java.util.Arrays.copyOf(chosen, size);
    }

    /** The drills by their numbers in the task. */
    Choice taken() {
        int[] numbers = new int[size];
        for (int k = 0; k < size; k++) {
            numbers[k] = model.drill[chosen[k]];
        }
        return Choice.of(numbers);
    }

    int shortfall() {
        return shortfall[size];
    }

    /** What is missing of the goal to its target. */
    int missing(int goal) {
        return missing[size][goal];
    }

    long positions() {
        return positions[size];
    }

    long equipment() {
        return equipment[size];
    }

    int changes() {
        return changes;
    }

    /** Minutes under the target when so many more can be had. */
    int minutesUnder(int more) {
        return Math.max(0, model.task.targetMinutes() - mostMinutes - more);
    }

    boolean fits(int i) {
        return !familyUsed[model.family[i]]
                && fewestMinutes + model.fewestMinutes[i] <= model.task.mostMinutes()
                && (!model.strong[i] || strong < model.task.strongAtMost());
    }

    /** By how much the drill would lessen the shortfall. */
    int gain(int i) {
        return gain(i, model.weight);
    }

    /** The same with other weights. */
    int gain(int i, int[] weights) {
        int[] tops = top[size];
        int[] open = missing[size];
        int sum = 0;
        int[] goals = model.goal[i];
        int[] strengths = model.strength[i];
        for (int k = 0; k < goals.length; k++) {
            int g = goals[k];
            if (open[g] > 0) {
                sum += weights[g] * Math.min(open[g], adds(strengths[k], tops[g]));
            }
        }
        return sum;
    }

    /** Puts down in {@link PhaseModel#slots} what each strength for each goal would gain, with these weights. */
    void fill(int[] table, int[] weights) {
        int slot = 0;
        for (int g = 0; g < weights.length; g++) {
            int open = missing[size][g];
            int strongest = top[size][g];
            for (int s = 0; s <= model.strongest; s++) {
                table[slot++] = weights[g] * Math.min(open, adds(s, strongest));
            }
        }
    }

    /** Adds what the drill would add to each goal. */
    void addTo(int[] covered, int i) {
        int[] goals = model.goal[i];
        for (int k = 0; k < goals.length; k++) {
            int g = goals[k];
            covered[g] += Math.min(missing[size][g], adds(model.strength[i][k], top[size][g]));
        }
    }

    /** The strongest counts in full, half of each further one. */
    private static int adds(int strength, int strongest) {
        return strength > strongest ? strength - strongest + (strongest >> 1) : strength >> 1;
    }

    boolean serves(int i, int goal) {
        int[] goals = model.goal[i];
        for (int k = 0; k < goals.length; k++) {
            if (goals[k] == goal) {
                return adds(model.strength[i][k], top[size][goal]) > 0;
            }
        }
        return false;
    }

    void add(int i) {
        int from = size;
        chosen[size++] = i;
        System.arraycopy(top[from], 0, top[size], 0, model.weight.length);
        System.arraycopy(missing[from], 0, missing[size], 0, model.weight.length);
        shortfall[size] = shortfall[from];
        int[] goals = model.goal[i];
        for (int k = 0; k < goals.length; k++) {
            int g = goals[k];
            int s = model.strength[i][k];
            int adds = Math.min(missing[from][g], adds(s, top[from][g]));
            missing[size][g] -= adds;
            shortfall[size] -= model.weight[g] * adds;
            top[size][g] = Math.max(top[from][g], s);
        }
        positions[size] = positions[from] | model.position[i];
        equipment[size] = equipment[from] | model.equipment[i];
        count(i, 1);
    }

    /** Takes off the drill that was put on last. */
    void removeLast() {
        count(chosen[--size], -1);
    }

    private void count(int i, int times) {
        familyUsed[model.family[i]] = times > 0;
        fewestMinutes += times * model.fewestMinutes[i];
        mostMinutes += times * model.mostMinutes[i];
        strong += model.strong[i] ? times : 0;
        // A drill that was not planned before is a change; one that was, and stands again, takes one back.
        changes += times * (model.change[i] ? 1 : model.task.kept().isEmpty() ? 0 : -1);
    }
}
