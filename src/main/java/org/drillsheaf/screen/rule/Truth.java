package org.drillsheaf.screen.rule;

import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;

/**
 * Strong three-valued logic: false is below unknown, unknown below true; AND takes the smallest, OR the largest, NOT turns
 * the order round. Source: Kleene SC, Introduction to Metamathematics, 1952, §64.
 */
public enum Truth {
    FALSE,
    UNKNOWN,
    TRUE;

    public static Truth of(boolean value) {
        return value ? TRUE : FALSE;
    }

    public Truth and(Truth other) {
        return compareTo(other) <= 0 ? this : other;
    }

    public Truth or(Truth other) {
        return compareTo(other) >= 0 ? this : other;
    }

    public Truth not() {
        return values()[TRUE.ordinal() - ordinal()];
    }

    /** Kleene's implication: NOT this OR other, so that unknown implies unknown is unknown. */
    public Truth implies(Truth other) {
        return not().or(other);
    }

    public Truth exclusiveOr(Truth other) {
        return or(other).and(and(other).not());
    }

    /** True when this many are true, false when so many cannot become true any more, else unknown. */
    public static Truth atLeast(int count, Iterable<Truth> truths) {
        int yes = 0;
        int possible = 0;
        for (Truth truth : truths) {
            yes += truth == TRUE ? 1 : 0;
            possible += truth == FALSE ? 0 : 1;
        }
        return yes >= count ? TRUE : possible >= count ? UNKNOWN : FALSE;
    }

    public boolean isTrue() {
        return this == TRUE;
    }

    public boolean isFalse() {
        return this == FALSE;
    }

    public boolean isUnknown() {
        return this == UNKNOWN;
    }

    /** AND over a stream; true when it is empty. */
    public static <T> Collector<T, ?, Truth> all(Function<T, Truth> truth) {
        return Collectors.reducing(TRUE, truth, Truth::and);
    }

    /** OR over a stream; false when it is empty. */
    public static <T> Collector<T, ?, Truth> any(Function<T, Truth> truth) {
        return Collectors.reducing(FALSE, truth, Truth::or);
    }
}
