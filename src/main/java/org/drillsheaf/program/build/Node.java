package org.drillsheaf.program.build;

import org.jspecify.annotations.Nullable;

/**
 * A part of all programs: those that hold the forced drills and none of the forbidden ones. Never changed after it is put
 * into the tree, except that its bound is made exact.
 */
final class Node {
    /** Positions that each phase may use, one bit each. */
    final long[] positions;

    final Choice[] forced;
    final Choice[] forbidden;
    /** For each junction the first place in its carry order that may still be picked. */
    final int[] carryFrom;

    final int depth;
    long bound;
    /** The {@link Chain}'s best; null where it is not worked out yet. */
    private Chain.@Nullable Found found;

    private Node(
            long[] positions,
            Choice[] forced,
            Choice[] forbidden,
            int[] carryFrom,
            Chain.@Nullable Found found,
            int depth,
            long bound) {
        this.positions = positions;
        this.forced = forced;
        this.forbidden = forbidden;
        this.carryFrom = carryFrom;
        this.found = found;
        this.depth = depth;
        this.bound = bound;
    }

    static Node root(int phases) {
        Choice[] none = new Choice[phases];
        java.util.Arrays.fill(none, Choice.EMPTY);
        long[] positions = new long[phases];
        java.util.Arrays.fill(positions, PhaseMemo.ANY);
        return new Node(positions, none, none.clone(), new int[phases], null, 0, 0);
    }

    Node child() {
        return new Node(positions, forced.clone(), forbidden.clone(), carryFrom.clone(), found, depth + 1, bound);
    }

    /** The part in which each phase uses no other positions than these. */
    Node within(long[] fewer, long least) {
        return new Node(
                fewer.clone(),
                forced.clone(),
                forbidden.clone(),
                carryFrom.clone(),
                null,
                depth,
                Math.max(bound, least));
    }

    boolean exact() {
        return found != null;
    }

    Chain.Found found() {
        return java.util.Objects.requireNonNull(found, "not worked out");
    }

    /** The choices of its phases. */
    Choice[] choices() {
        return java.util.Objects.requireNonNull(found().chosen(), "nothing found");
    }

    /** @param repeats packed cost of what the forced drills repeat */
    void workedOut(Chain.Found best, long repeats) {
        found = best;
        atLeast(repeats);
    }

    /** Raises the bound to what is known now. */
    void atLeast(long repeats) {
        if (found != null) {
            bound = Math.max(bound, found.value() + repeats);
        }
    }

    /** Returns false when the drill is forbidden there. */
    boolean force(int drill, int phase) {
        if (forbidden[phase].has(drill)) {
            return false;
        }
        forced[phase] = forced[phase].with(drill);
        if (found != null && !choices()[phase].has(drill)) {
            found = null;
        }
        return true;
    }

    /** Returns false when the drill is forced there. */
    boolean forbid(int drill, int phase) {
        if (forced[phase].has(drill)) {
            return false;
        }
        forbidden[phase] = forbidden[phase].with(drill);
        if (found != null && choices()[phase].has(drill)) {
            found = null;
        }
        return true;
    }
}
