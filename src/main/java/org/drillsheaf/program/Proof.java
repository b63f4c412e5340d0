package org.drillsheaf.program;

/**
 * How good the answer is and how that is known.
 *
 * @param value what the program leaves undone, level by level
 * @param bound nothing better than this is possible; equal to {@code value} when the answer is proved best
 * @param considered drill and phase pairs that were offered to the builder
 * @param subsets partial choices that were looked at
 * @param ruledOut partial choices that were left because their bound was no better
 */
public record Proof(Cost value, Cost bound, int considered, int subsets, int ruledOut) {

    public boolean best() {
        return value.equals(bound);
    }

    /** One sentence for the coach. */
    public String words() {
        return best()
                ? "Proved best: " + subsets + " partial choices looked at, " + ruledOut
                        + " ruled out by their bound, none better."
                : "Best found: at most " + value.minus(bound).words() + " away from the best possible.";
    }
}
