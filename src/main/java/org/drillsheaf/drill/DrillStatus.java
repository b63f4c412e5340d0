package org.drillsheaf.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Where a drill stands in its life. Only {@code IN_USE} is offered to a client. */
public enum DrillStatus {
    DRAFT,
    IN_REVIEW,
    IN_USE,
    WITHDRAWN;

    /** The word in data files, for example {@code in-use}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<DrillStatus> of(String id) {
        return Arrays.stream(values()).filter(s -> s.id().equals(id)).findFirst();
    }
}
