package org.drillsheaf.program;

import java.util.Optional;
import org.drillsheaf.saying.Saying;

/**
 * What the best program that another question allows is worse by than the one there is, as far as the search for it went.
 *
 * @param cost the other program minus the one there is; empty when none was found
 * @param decided whether the search came to its end; if not, a better program may be there, or one where none was found
 * @param fromBest whether the program there is, is proved best; if not, some of a gain may have been there to be had before
 */
public record Difference(Optional<Cost> cost, boolean decided, boolean fromBest) {

    /**
     * One clause for the coach.
     *
     * @param none said when it is proved that no program fits
     * @param unknown said when that is not known
     */
    Saying words(Saying none, Saying unknown) {
        if (cost.isEmpty()) {
            return decided ? none : unknown;
        }
        Cost found = cost.get();
        Saying words = decided ? found.words() : limit(found);
        return fromBest ? words : Saying.phrase("difference.not-from-best").with("words", words);
    }

    /** What was found can only be bettered: a gain can grow, a loss can shrink. */
    private static Saying limit(Cost found) {
        String limit = found.equals(Cost.NONE) ? "alike" : found.isGain() ? "at-least" : "at-most";
        return Saying.phrase("difference." + limit).with("words", found.decisive());
    }
}
