package org.drillsheaf.program.build;

import java.util.Arrays;

/**
 * A second bound for partial choices that may leave little or nothing open. Goals get prices: those that the drills with the
 * largest gains leave open become dearer, those that they cover twice cheaper. Whatever the prices, the gains at these prices of as many
 * drills as there are places must come up to what is missing. Whole numbers only. Not safe for several threads.
 */
final class Prices {
    private static final int ROUNDS = 4;
    private static final int FINE = 16;
    /** With more left open than this, prices say little. Points of coverage. */
    private static final int MUCH = 6;

    private final PartialChoice choice;
    private final PhaseModel model;
    private final Objective objective;
    private final int[] price;
    private final int[] covered;
    private final long[] picked;
    private int picks;

    Prices(PartialChoice choice, Objective objective) {
        this.choice = choice;
        this.model = choice.model;
        this.objective = objective;
        price = new int[model.weight.length];
        covered = new int[model.weight.length];
        picked = new long[model.task.most()];
    }

    /** What every completion comes to at least; 0 when the prices found nothing out. */
    long bound(int[] drills, int count, int free, int minutes, int changes, long limit) {
        int positions = Math.max(0, Long.bitCount(choice.positions()) - 1);
        int things = Long.bitCount(choice.equipment());
        long covers = objective.pack(0, minutes, changes, positions, 0, things);
        int mayStayOpen = (int) Math.min(Integer.MAX_VALUE, (limit - 1 - covers) / objective.one(Level.COVERAGE, 1));
        if (mayStayOpen > MUCH) {
            return 0;
        }
        for (int g = 0; g < price.length; g++) {
            price[g] = choice.missing(g) == 0 ? 0 : model.weight[g] * FINE;
        }
        for (int round = 1; ; round++) {
            long gains = pick(drills, count, free);
            if (missing() - gains > (long) dearest() * mayStayOpen) {
                return objective.pack(mayStayOpen + 1, minutes, changes, positions, 0, things);
            }
            if (round == ROUNDS) {
                return 0;
            }
            change(drills);
        }
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

    /** Picks the drills with the largest gains at these prices; the sum of their gains. */
    private long pick(int[] drills, int count, int free) {
        picks = 0;
        for (int k = 0; k < count; k++) {
            long key = (long) choice.gain(drills[k], price) << 32 | k;
            int at;
            if (picks < free) {
                at = picks++;
            } else if (key > picked[picks - 1]) {
                at = picks - 1;
            } else {
                continue;
            }
            while (at > 0 && picked[at - 1] < key) {
                picked[at] = picked[at - 1];
                at--;
            }
            picked[at] = key;
        }
        long sum = 0;
        for (int k = 0; k < picks; k++) {
            sum += picked[k] >>> 32;
        }
        return sum;
    }

    private void change(int[] drills) {
        Arrays.fill(covered, 0);
        for (int k = 0; k < picks; k++) {
            choice.addTo(covered, drills[(int) picked[k]]);
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
