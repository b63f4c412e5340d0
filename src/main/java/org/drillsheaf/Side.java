package org.drillsheaf;

import java.util.Locale;

/** Left or right, always the client's own. */
public enum Side {
    LEFT,
    RIGHT;

    public Side opposite() {
        return this == LEFT ? RIGHT : LEFT;
    }

    /** The word in data files: {@code left} or {@code right}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
