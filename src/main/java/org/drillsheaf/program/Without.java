package org.drillsheaf.program;

/**
 * What a program would lose without one of its drills.
 *
 * @param difference the best program without it, against the one there is
 */
public record Without(Difference difference) {
    /** One clause for the coach. */
    public String words() {
        return difference.words(
                "no program fits", "the search ended before it was known whether a program fits without it");
    }
}
