package org.drillsheaf.drill.safety;

/** Strong Kleene logic with three values. Source: Kleene 1952, Introduction to Metamathematics, §64. */
public enum Truth {
    NO,
    UNKNOWN,
    YES;

    public static Truth of(boolean value) {
        return value ? YES : NO;
    }

    public Truth and(Truth other) {
        return values()[Math.min(ordinal(), other.ordinal())];
    }

    public Truth or(Truth other) {
        return values()[Math.max(ordinal(), other.ordinal())];
    }

    public Truth not() {
        return values()[2 - ordinal()];
    }

    /** A rule takes hold unless it surely does not: unknown is never safe. */
    public boolean mayBe() {
        return this != NO;
    }
}
