package org.drillsheaf.program.build;

import org.jspecify.annotations.Nullable;

/**
 * The best choice for one phase alone, or how good one could be at most.
 *
 * @param value packed, without what lies between phases; without drills no choice is better than this
 * @param drills null when none was found below the limit that was asked for
 */
record PhaseAnswer(long value, @Nullable Choice drills) {
    static PhaseAnswer atLeast(long value) {
        return new PhaseAnswer(value, null);
    }

    boolean isBelow(long limit) {
        return drills != null && value < limit;
    }

    Choice found() {
        return java.util.Objects.requireNonNull(drills, "nothing found");
    }
}
