package org.drillsheaf.program;

import org.drillsheaf.saying.Saying;

/**
 * How good the answer is and how that is known.
 *
 * @param value what the program leaves undone, level by level
 * @param bound nothing better than this is possible; equal to {@code value} when the answer is proved best
 * @param considered drill and phase pairs that were offered to the builder
 * @param subsets partial choices that were looked at
 * @param ruledOut partial choices that were left because their bound was no better
 * @param stopped the search ended because the coach stopped it
 * @param tiesSettled whether among equally good programs the first by the alphabet of its drills was found too; if not, this
 *     one is as good, and the same input still gives the same program
 */
public record Proof(
        Cost value, Cost bound, int considered, int subsets, int ruledOut, boolean stopped, boolean tiesSettled) {

    public boolean best() {
        return value.equals(bound);
    }

    /** How much better a program could be at most, for example {@code 3 points of weighted coverage}. */
    public Saying gap() {
        return bound.gapTo(value);
    }

    /** For the coach: what stays open, how that is known, what was ruled out. */
    public Saying words() {
        Saying.Phrase told = best()
                ? Saying.phrase(tiesSettled ? "proof.best" : "proof.best-ties-open")
                : Saying.phrase(stopped ? "proof.stopped" : "proof.not-proved").with("gap", gap());
        return told.with("open", value.open())
                .with("considered", considered)
                .with("subsets", subsets)
                .with("ruledOut", ruledOut);
    }
}
