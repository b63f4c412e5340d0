package org.drillsheaf.program;

import java.util.Optional;

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
    String words(String none, String unknown) {
        if (cost.isEmpty()) {
            return decided ? none : unknown;
        }
        Cost found = cost.get();
        String words =
                decided ? found.words() : limit(found) + found.decisive() + "; the search ended before the proof";
        return words + (fromBest ? "" : "; compared with a program that is not proved best itself");
    }

    /** What was found can only be bettered: a gain can grow, a loss can shrink. */
    private static String limit(Cost found) {
        return found.equals(Cost.NONE) ? "" : found.isGain() ? "at least " : "at most ";
    }
}
