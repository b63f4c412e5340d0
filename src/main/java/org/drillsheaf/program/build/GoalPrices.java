package org.drillsheaf.program.build;

import java.util.Arrays;

/**
 * Prices of the goals that a partial choice leaves open. They begin at the weights; those that the drills with the largest gains
 * leave open become dearer, those that they cover twice cheaper. Any prices give a true bound, good ones a near one. Whole numbers
 * only. Not safe for several threads.
 */
final class GoalPrices {
    static final int ROUNDS = 4;
    /** With more left open than this, prices say little. Points of coverage. */
    static final int MUCH = 6;

    private static final int FINE = 16;

    private final PartialChoice choice;
    private final int[] weight;
    private final int[] price;
    private final int[] covered;

    GoalPrices(PartialChoice choice) {
        this.choice = choice;
        weight = choice.model.weight;
        price = new int[weight.length];
        covered = new int[weight.length];
    }

    /** Begins at the weights, for what is open now. */
    void begin() {
        for (int g = 0; g < price.length; g++) {
            price[g] = choice.missing(g) == 0 ? 0 : weight[g] * FINE;
        }
    }

    /** By goal; changes with the prices. */
    int[] now() {
        return price;
    }

    /** What is missing, at these prices. */
    long missing() {
        long sum = 0;
        for (int g = 0; g < price.length; g++) {
            sum += (long) price[g] * choice.missing(g);
        }
        return sum;
    }

    /** What so many points of coverage that stay open are worth at most: the dearest goal's price for a point, rounded up. */
    long worth(int points) {
        int dearest = 0;
        for (int g = 0; g < price.length; g++) {
            dearest = Math.max(dearest, (price[g] + weight[g] - 1) / weight[g]);
        }
        return (long) dearest * points;
    }

    /** One of the drills with the largest gains at these prices. */
    void cover(int drill) {
        choice.addTo(covered, drill);
    }

    /** Changes the prices by what was covered, which is forgotten. */
    void change() {
        for (int g = 0; g < price.length; g++) {
            int missing = choice.missing(g);
            if (missing > 0 && covered[g] < missing) {
                price[g] += price[g] * (missing - covered[g]) / (2 * missing) + 1;
            } else if (missing > 0 && covered[g] > missing) {
                price[g] -= price[g] / 4;
            }
        }
        Arrays.fill(covered, 0);
    }
}
