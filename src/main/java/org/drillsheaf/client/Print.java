package org.drillsheaf.client;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Size of the print on the client's documents. */
public enum Print {
    STANDARD,
    LARGE;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Print> of(String id) {
        return Arrays.stream(values()).filter(p -> p.id().equals(id)).findFirst();
    }
}
