package org.drillsheaf.program.build;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What is made as small as possible, one after the other. Which comes first is data. */
public enum Level {
    /** Weight times missing coverage, over goals and phases. */
    COVERAGE(14),
    /** Minutes under the target, over phases. */
    MINUTES(12),
    /** Drills that the program before had not planned for the phase, and those it had planned and that are gone. */
    CHANGES(9),
    /** Different positions in a session less one, over phases. */
    POSITIONS(9),
    /** Drills shared by neighbouring phases beyond the number asked for. */
    REPEATS(9),
    /** Different pieces of equipment in a session, over phases. */
    EQUIPMENT(9);

    private final int bits;

    Level(int bits) {
        this.bits = bits;
    }

    int bits() {
        return bits;
    }

    /** The word in data files, for example {@code coverage}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Level> of(String id) {
        return Arrays.stream(values()).filter(l -> l.id().equals(id)).findFirst();
    }
}
