package org.drillsheaf.client;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Answer to a safety question. Not sure counts as yes wherever something is decided. */
public enum Answer {
    YES,
    NO,
    NOT_SURE;

    /** The word in data files: {@code yes}, {@code no} or {@code not-sure}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Answer> of(String id) {
        return Arrays.stream(values()).filter(a -> a.id().equals(id)).findFirst();
    }
}
