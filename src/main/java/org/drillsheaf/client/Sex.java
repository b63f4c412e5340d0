package org.drillsheaf.client;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Sex as far as a published norm asks for it; a client may leave it out. */
public enum Sex {
    FEMALE,
    MALE;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Sex> of(String id) {
        return Arrays.stream(values()).filter(s -> s.id().equals(id)).findFirst();
    }
}
