package org.drillsheaf.drill;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The pictures of a drill, on paper A, B and C. */
public enum Keyframe {
    START,
    MOVE,
    END;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Keyframe> of(String id) {
        return Arrays.stream(values()).filter(k -> k.id().equals(id)).findFirst();
    }
}
