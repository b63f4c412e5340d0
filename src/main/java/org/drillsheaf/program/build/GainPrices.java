package org.drillsheaf.program.build;

/**
 * Which drills can be part of a completion that leaves no more open than it may: whatever the prices of the goals, the gains of as many
 * drills as there are places must come up to what is missing. Other than in {@link Prices}, every
 * single drill is held against the largest gains of the others. Not safe for several threads.
 */
final class GainPrices {
    private final PartialChoice choice;
    private final PhaseModel model;
    private final GoalPrices prices;
    private final int[] table;
    private final int[] gains;
    private final int[] picked;

    GainPrices(PartialChoice choice) {
        this.choice = choice;
        this.model = choice.model;
        prices = new GoalPrices(choice);
        table = new int[model.weight.length * (model.strongest + 1)];
        gains = new int[model.size()];
        picked = new int[model.task.most() + 1];
    }

    /** From now on {@link #gain} is in points of coverage. */
    void usual() {
        choice.fill(table, model.weight);
    }

    int gain(int i) {
        int sum = 0;
        for (int slot : model.slots[i]) {
            sum += table[slot];
        }
        return sum;
    }

    /**
     * Keeps in front the drills that can be part of such a completion; returns how many these are.
     *
     * @param mayStayOpen points of coverage
     */
    int keep(int[] drills, int count, int free, int mayStayOpen) {
        usual();
        long missing = (long) choice.shortfall() - mayStayOpen;
        if (missing <= 0) {
            return count;
        }
        int kept = keep(drills, count, free, missing);
        if (mayStayOpen > GoalPrices.MUCH) {
            return kept;
        }
        prices.begin();
        for (int round = 1; round < GoalPrices.ROUNDS && kept > 0; round++) {
            for (int k = 0; k < Math.min(free, kept); k++) {
                prices.cover(picked[k]);
            }
            prices.change();
            choice.fill(table, prices.now());
            kept = keep(drills, kept, free, prices.missing() - prices.worth(mayStayOpen));
        }
        return kept;
    }

    /** The same at the present prices; the places of the drills with the largest gains are then in {@code picked}. */
    private int keep(int[] drills, int count, int free, long missing) {
        int picks = 0;
        for (int k = 0; k < count; k++) {
            int gain = gain(drills[k]);
            gains[k] = gain;
            int at;
            if (picks < free) {
                at = picks++;
            } else if (gain > gains[picked[picks - 1]]) {
                at = picks - 1;
            } else {
                continue;
            }
            while (at > 0 && gains[picked[at - 1]] < gain) {
                picked[at] = picked[at - 1];
                at--;
            }
            picked[at] = k;
        }
        long others = 0;
        for (int k = 0; k < Math.min(picks, free - 1); k++) {
            others += gains[picked[k]];
        }
        long fewest = missing - others;
        if (picks == 0 || gains[picked[0]] < fewest) {
            return 0;
        }
        for (int k = 0; k < picks; k++) {
            picked[k] = drills[picked[k]];
        }
        int kept = 0;
        for (int k = 0; k < count; k++) {
            if (gains[k] >= fewest) {
                drills[kept++] = drills[k];
            }
        }
        return kept;
    }
}
