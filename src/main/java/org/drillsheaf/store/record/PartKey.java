package org.drillsheaf.store.record;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Names a part of a client's record that is edited by itself.
 *
 * @param text {@code client}, {@code conditions} or {@code visit:2026-03-05}
 */
public record PartKey(String text) implements Comparable<PartKey> {
    private static final String VISIT = "visit:";

    /** The block about the person. */
    public static final PartKey CLIENT = new PartKey("client");
    /** What the client lives with. */
    public static final PartKey CONDITIONS = new PartKey("conditions");

    public PartKey {
        if (!text.equals("client") && !text.equals("conditions")) {
            if (!text.startsWith(VISIT)) {
                throw new IllegalArgumentException("no part of a client: " + text);
            }
            LocalDate.parse(text.substring(VISIT.length()));
        }
    }

    public static PartKey visit(LocalDate date) {
        return new PartKey(VISIT + date);
    }

    /** The day, when this is a visit. */
    public Optional<LocalDate> date() {
        return text.startsWith(VISIT) ? Optional.of(LocalDate.parse(text.substring(VISIT.length()))) : Optional.empty();
    }

    /** Client first, then conditions, then visits by date: alphabetical as it happens. */
    @Override
    public int compareTo(PartKey other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
