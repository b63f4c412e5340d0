package org.drillsheaf.screen;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Side;

/**
 * One value as it was taken.
 *
 * @param testId id of the test
 * @param side side, for a test that has sides
 * @param value value in the test's own unit, a whole multiple of its step; empty when only pain was noted
 * @param parts the values of a test that measures two things, by name of the part
 * @param bound whether the value is exact or the measurement was stopped on purpose
 * @param painful pain of 3 of 10 or more, or pain stopped it, or the client asked to stop
 * @param marks further yes-or-no marks of the test, for example {@code tucks}, {@code tingling}
 * @param date the day on which it was taken; only the laxity count may be older than its screen
 * @param line where it stands in the client's file
 */
public record Measurement(
        String testId,
        Optional<Side> side,
        Optional<Double> value,
        Map<String, Double> parts,
        Bound bound,
        boolean painful,
        Map<String, Boolean> marks,
        Optional<String> note,
        LocalDate date,
        int line) {

    /** How a value is meant. */
    public enum Bound {
        EXACT,
        OR_MORE,
        OR_LESS
    }

    public Measurement {
        parts = Map.copyOf(parts);
        marks = Map.copyOf(marks);
    }

    public Optional<Boolean> mark(String name) {
        return Optional.ofNullable(marks.get(name));
    }
}
