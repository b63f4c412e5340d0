package org.drillsheaf.program.build;

import java.util.Arrays;

/**
 * Which drills can be part of a completion that leaves no more open than it may: whatever the prices of the goals, the gains of as many
 * drills as there are places must come up to what is missing. Prices follow what the drills with the largest gains leave open, as in
 * {@link Prices}; but at each of them every single drill is held against the largest gains of the others. Not safe for several threads.
 */
final class GainPrices {
    private static final int ROUNDS = 4;
    private static final int FINE = 16;
    /** With more left open than this, prices say little. Points of coverage. */
    private static final int MUCH = 6;

    private final PartialChoice choice;
    private final PhaseModel model;
    private final int[] price;
    private final int[] covered;
    private final int[] table;
    private final int[] gains;
    private final int[] picked;

    GainPrices(PartialChoice choice) {
        this.choice = choice;
        this.model = choice.model;
        price = new int[model.weight.length];
        covered = new int[model.weight.length];
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
        if (mayStayOpen > MUCH) {
            return kept;
        }
        for (int g = 0; g < price.length; g++) {
            price[g] = choice.missing(g) == 0 ? 0 : model.weight[g] * FINE;
        }
        for (int round = 1; round < ROUNDS && kept > 0; round++) {
            change(drills, Math.min(free, kept));
            choice.fill(table, price);
            kept = keep(drills, kept, free, missing() - (long) dearest() * mayStayOpen);
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

    /** The largest price for a point of weight, rounded up. */
    private int dearest() {
        int dearest = 0;
        for (int g = 0; g < price.length; g++) {
            dearest = Math.max(dearest, (price[g] + model.weight[g] - 1) / model.weight[g]);
        }
        return dearest;
    }

    private long missing() {
        long sum = 0;
        for (int g = 0; g < price.length; g++) {
            sum += (long) price[g] * choice.missing(g);
        }
        return sum;
    }

    private void change(int[] drills, int picks) {
        Arrays.fill(covered, 0);
        for (int k = 0; k < picks; k++) {
            choice.addTo(covered, picked[k]);
        }
        for (int g = 0; g < price.length; g++) {
            int missing = choice.missing(g);
            if (missing > 0 && covered[g] < missing) {
                price[g] += price[g] * (missing - covered[g]) / (2 * missing) + 1;
            } else if (missing > 0 && covered[g] > missing) {
                price[g] -= price[g] / 4;
            }
        }
    }
}
