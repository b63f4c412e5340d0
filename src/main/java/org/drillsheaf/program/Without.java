package org.drillsheaf.program;

import org.drillsheaf.saying.Saying;

/**
 * What a program would lose without one of its drills.
 *
 * @param difference the best program without it, against the one there is
 */
public record Without(Difference difference) {
    /** One clause for the coach. */
    public Saying words() {
        return difference.words(Saying.phrase("without.none"), Saying.phrase("without.not-decided"));
    }
}
