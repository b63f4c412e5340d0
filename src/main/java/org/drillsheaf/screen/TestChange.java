package org.drillsheaf.screen;

import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;

/**
 * Two dates of one test and side.
 *
 * @param part which of two values, for a test that measures two
 * @param before the value, empty when there is none
 * @param now the value
 * @param smallestChange smallest real change, with unit
 * @param newPain pain now that was not there before; never progress
 * @param words one sentence
 */
public record TestChange(
        MovementTest test,
        Optional<Side> side,
        Optional<String> part,
        Kind kind,
        Saying before,
        Saying now,
        Saying difference,
        Saying smallestChange,
        boolean newPain,
        Saying words) {

    /** How two dates compare. */
    public enum Kind {
        BETTER,
        NO_REAL_CHANGE,
        WORSE,
        NOT_KNOWN;

        public Saying words() {
            return Saying.phrase("change." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    /** The word of the gates for BETTER. */
    public boolean gained() {
        return kind == Kind.BETTER;
    }
}
