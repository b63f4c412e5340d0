package org.drillsheaf.figure.pose;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The keyframes of a drill, in their order. */
public enum PoseFrame {
    START,
    MOVE,
    END;

    /** The word in drill files. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The letter on client pages: A, B, C. */
    public String letter() {
        return switch (this) {
            case START -> "A";
            case MOVE -> "B";
            case END -> "C";
        };
    }

    public static Optional<PoseFrame> of(String id) {
        return Arrays.stream(values()).filter(f -> f.id().equals(id)).findFirst();
    }
}
