package org.drillsheaf.program.build;

/**
 * A second bound for partial choices that may leave little or nothing open: whatever the prices of the goals, the gains at these
 * prices of as many drills as there are places must come up to what is missing. Not safe for several threads.
 */
final class Prices {
    private final PartialChoice choice;
    private final Objective objective;
    private final GoalPrices prices;
    private final long[] picked;
    private int picks;

    Prices(PartialChoice choice, Objective objective) {
        this.choice = choice;
        this.objective = objective;
        prices = new GoalPrices(choice);
        picked = new long[choice.model.task.most()];
    }

    /** What every completion comes to at least; 0 when the prices found nothing out. */
    long bound(int[] drills, int count, int free, int minutes, int changes, long limit) {
        int positions = Math.max(0, Long.bitCount(choice.positions()) - 1);
        int things = Long.bitCount(choice.equipment());
        long covers = objective.pack(0, minutes, changes, positions, 0, things);
        int mayStayOpen = (int) Math.min(Integer.MAX_VALUE, (limit - 1 - covers) / objective.one(Level.COVERAGE, 1));
        if (mayStayOpen > GoalPrices.MUCH) {
            return 0;
        }
        prices.begin();
        for (int round = 1; ; round++) {
            long gains = pick(drills, count, free);
            if (prices.missing() - gains > prices.worth(mayStayOpen)) {
                return objective.pack(mayStayOpen + 1, minutes, changes, positions, 0, things);
            }
            if (round == GoalPrices.ROUNDS) {
                return 0;
            }
            for (int k = 0; k < picks; k++) {
                prices.cover(drills[(int) picked[k]]);
            }
            prices.change();
        }
    }

    /** Picks the drills with the largest gains at these prices; the sum of their gains. */
    private long pick(int[] drills, int count, int free) {
        picks = 0;
        for (int k = 0; k < count; k++) {
            long key = (long) choice.gain(drills[k], prices.now()) << 32 | k;
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
}
