package org.drillsheaf.figure.body;

/** Which adult is drawn, so that clients see themselves. Bones are the same; flesh differs. Own choices, by eye. */
public enum BodyBuild {
    AVERAGE,
    LARGER,
    OLDER;

    /** The word in data files, for example {@code larger}. */
    public String id() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    double glutes() {
        return switch (this) {
            case AVERAGE -> 1;
            case LARGER -> 1.18;
            case OLDER -> .94;
        };
    }
}
