package org.drillsheaf.drill.safety;

import java.util.OptionalInt;

/**
 * What a condition takes from a dose without a written version of the drill.
 *
 * @param effortAtMost upper end of the effort
 * @param holdSecondsAtMost longest steady work
 * @param breathOutSecondsAtMost longest breath out
 * @param noPause no wait after the breath out
 * @param noCounts no counted seconds, no long end of the breath
 */
public record DoseLimits(
        OptionalInt effortAtMost,
        OptionalInt holdSecondsAtMost,
        OptionalInt breathOutSecondsAtMost,
        boolean noPause,
        boolean noCounts) {

    public static final DoseLimits NONE =
            new DoseLimits(OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), false, false);

    public boolean isNone() {
        return equals(NONE);
    }

    /** Both together: the stricter of each. */
    public DoseLimits and(DoseLimits other) {
        return new DoseLimits(
                least(effortAtMost, other.effortAtMost),
                least(holdSecondsAtMost, other.holdSecondsAtMost),
                least(breathOutSecondsAtMost, other.breathOutSecondsAtMost),
                noPause || other.noPause,
                noCounts || other.noCounts);
    }

    private static OptionalInt least(OptionalInt a, OptionalInt b) {
        if (a.isEmpty()) {
            return b;
        }
        return b.isEmpty() ? a : OptionalInt.of(Math.min(a.getAsInt(), b.getAsInt()));
    }
}
