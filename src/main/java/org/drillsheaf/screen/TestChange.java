package org.drillsheaf.screen;

import java.util.Optional;
import org.drillsheaf.Side;

/**
 * Two dates of one test and side.
 *
 * @param part which of two values, for a test that measures two
 * @param before value as shown, empty when there is none
 * @param now value as shown
 * @param smallestChange smallest real change as shown, with unit
 * @param newPain pain now that was not there before; never progress
 * @param words one sentence
 */
public record TestChange(
        MovementTest test,
        Optional<Side> side,
        Optional<String> part,
        Kind kind,
        String before,
        String now,
        String difference,
        String smallestChange,
        boolean newPain,
        String words) {

    /** How two dates compare. */
    public enum Kind {
        BETTER("better"),
        NO_REAL_CHANGE("no real change"),
        WORSE("worse"),
        NOT_KNOWN("not known");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The word of the gates for BETTER. */
    public boolean gained() {
        return kind == Kind.BETTER;
    }
}
