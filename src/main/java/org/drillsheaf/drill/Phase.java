package org.drillsheaf.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The four phases of a program, in their order. What a phase weighs is data of the program package. */
public enum Phase {
    SETTLE,
    RESTORE,
    REFERENCE,
    INTEGRATE;

    /** The word in data files, for example {@code settle}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Phase> of(String id) {
        return Arrays.stream(values()).filter(p -> p.id().equals(id)).findFirst();
    }
}
