package org.drillsheaf.screen;

import org.drillsheaf.screen.rule.Truth;

/**
 * What is known of one value: everything from {@code low} to {@code high}, in whole steps of its test, counted so that more is
 * fuller. An exact value has both ends alike; a value that is not known reaches from end to end.
 */
record Span(long low, long high) {
    private static final long FAR = 1_000_000;
    static final Span UNKNOWN = new Span(-FAR, FAR);

    static Span exactly(long steps) {
        return new Span(steps, steps);
    }

    static Span atLeast(long steps) {
        return new Span(steps, FAR);
    }

    static Span atMost(long steps) {
        return new Span(-FAR, steps);
    }

    boolean isUnknown() {
        return low <= -FAR && high >= FAR;
    }

    Span negated() {
        return new Span(-high, -low);
    }

    Span minus(Span other) {
        return new Span(low - other.high, high - other.low);
    }

    /** True when the value passes the mark by at least the line, false when it misses it by at least the line. */
    Truth passes(long mark, long line) {
        if (low >= mark + line) {
            return Truth.TRUE;
        }
        return high <= mark - line ? Truth.FALSE : Truth.UNKNOWN;
    }

    /** True when the difference reaches the whole change, false when it stays within half of it. */
    Truth reaches(long change) {
        if (low >= change) {
            return Truth.TRUE;
        }
        return 2 * high <= change ? Truth.FALSE : Truth.UNKNOWN;
    }
}
