package org.drillsheaf.program.build;

import java.util.List;

/**
 * The limits that a search tries one after the other: just above the bound by the last level of the objective, twice as far, and
 * so on, then by the level before it. Most searches end at a near one, where little has to be looked at. Not safe for several threads.
 */
final class Limits {
    private static final int FARTHEST = 4;

    private final Objective objective;
    private long least;
    private final long below;
    private final boolean beginsAgain;
    private int level;
    private long step;
    private long now;

    /**
     * @param least packed; nothing is better
     * @param below packed; nothing from here on counts
     */
    Limits(Objective objective, long least, long below) {
        this(objective, least, below, false);
    }

    /**
     * @param beginsAgain from the last level but one, where the bound has passed the level that the limits are at: what takes much time at
     *     a far limit is better asked at the nearest
     */
    Limits(Objective objective, long least, long below, boolean beginsAgain) {
        this.beginsAgain = beginsAgain;
        this.objective = objective;
        this.least = least;
        this.below = below;
        now = least;
        level = objective.order().size() - 1;
        step = 1;
    }

    /**
     * Whether there is one more limit; it is then the present one.
     *
     * @param bound what is known by now: nothing is better
     */
    boolean next(long bound) {
        if (Math.max(now, bound) >= below) {
            return false;
        }
        if (beginsAgain && isPassed(bound)) {
            level = objective.order().size() - 2;
            step = 1;
            least = objective.above(objective.order().get(level + 1), bound);
            now = least;
        }
        do {
            step();
        } while (now <= bound && now < below);
        return true;
    }

    /** Whether the bound differs from what these limits began at by a level before the present one, but not by more than positions. */
    private boolean isPassed(long bound) {
        Level present = objective.order().get(level);
        boolean isFar = objective.above(Level.POSITIONS, bound) > objective.above(Level.POSITIONS, least);
        return !isFar && objective.above(present, bound) > objective.above(present, least);
    }

    private void step() {
        List<Level> order = objective.order();
        long unit = objective.one(order.get(level), 1);
        boolean far = least > Long.MAX_VALUE / 4 || step * unit > Long.MAX_VALUE / 4;
        now = far ? below : Math.min(below, least + step * unit);
        step *= 2;
        if (step > FARTHEST && level > 0) {
            step = 1;
            level--;
        }
    }

    long now() {
        return now;
    }
}
