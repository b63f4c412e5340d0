package org.drillsheaf.program.build;

import org.jspecify.annotations.Nullable;

/**
 * A part of all programs: those that hold the forced drills and none of the forbidden ones. Never changed after it is put
 * into the tree, except that its bound is made exact.
 */
final class Node {
    final Choice[] forced;
    final Choice[] forbidden;
    /** For each junction the first place in its carry order that may still be picked. */
    final int[] carryFrom;
    /** Best choice of each phase alone; null where it is not worked out yet. */
    final @Nullable PhaseAnswer[] answers;
    /** What is known about the phases that are not worked out. */
    final long[] atLeast;

    final int depth;
    long bound;

    private Node(
            Choice[] forced,
            Choice[] forbidden,
            int[] carryFrom,
            @Nullable PhaseAnswer[] answers,
            long[] atLeast,
            int depth,
            long bound) {
        this.forced = forced;
        this.forbidden = forbidden;
        this.carryFrom = carryFrom;
        this.answers = answers;
        this.atLeast = atLeast;
        this.depth = depth;
        this.bound = bound;
    }

    static Node root(int phases) {
        Choice[] none = new Choice[phases];
        java.util.Arrays.fill(none, Choice.EMPTY);
        return new Node(none, none.clone(), new int[phases], new PhaseAnswer[phases], new long[phases], 0, 0);
    }

    Node child() {
        return new Node(
                forced.clone(),
                forbidden.clone(),
                carryFrom.clone(),
                answers.clone(),
                atLeast.clone(),
                depth + 1,
                bound);
    }

    boolean exact() {
        for (PhaseAnswer answer : answers) {
            if (answer == null) {
                return false;
            }
        }
        return true;
    }

    PhaseAnswer answer(int phase) {
        PhaseAnswer answer = answers[phase];
        if (answer == null) {
            throw new IllegalStateException("phase " + phase + " is not worked out");
        }
        return answer;
    }

    /** Returns false when the drill is forbidden there. */
    boolean force(int drill, int phase) {
        if (forbidden[phase].has(drill)) {
            return false;
        }
        forced[phase] = forced[phase].with(drill);
        PhaseAnswer answer = answers[phase];
        if (answer != null && !answer.drills().has(drill)) {
            atLeast[phase] = answer.value();
            answers[phase] = null;
        }
        return true;
    }

    /** Returns false when the drill is forced there. */
    boolean forbid(int drill, int phase) {
        if (forced[phase].has(drill)) {
            return false;
        }
        forbidden[phase] = forbidden[phase].with(drill);
        PhaseAnswer answer = answers[phase];
        if (answer != null && answer.drills().has(drill)) {
            atLeast[phase] = answer.value();
            answers[phase] = null;
        }
        return true;
    }

    /** Sum of what the phases cost at least. */
    long phasesAtLeast() {
        long sum = 0;
        for (int p = 0; p < answers.length; p++) {
            sum += phaseAtLeast(p);
        }
        return sum;
    }

    long phaseAtLeast(int phase) {
        PhaseAnswer answer = answers[phase];
        return answer != null ? answer.value() : atLeast[phase];
    }
}
