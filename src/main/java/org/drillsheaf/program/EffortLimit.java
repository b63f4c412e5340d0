package org.drillsheaf.program;

/**
 * How hard the drills of a phase may be, on the own scale from 0 to 10.
 *
 * @param wish lower end that is aimed at, not a limit
 * @param limit most effort of any drill
 * @param exceptions how many drills may go above the limit
 * @param exceptionLimit how far they may go; at least {@code limit}
 */
public record EffortLimit(int wish, int limit, int exceptions, int exceptionLimit) {
    public EffortLimit {
        if (exceptionLimit < limit || exceptions < 0 || limit < 0) {
            throw new IllegalArgumentException("effort limit " + limit + ", exceptions to " + exceptionLimit);
        }
    }

    /** The same under a cap that a condition or a reading sets. */
    public EffortLimit cappedAt(int cap) {
        int lower = Math.min(limit, cap);
        int exception = Math.min(exceptionLimit, cap);
        return new EffortLimit(Math.min(wish, lower), lower, exception > lower ? exceptions : 0, exception);
    }
}
