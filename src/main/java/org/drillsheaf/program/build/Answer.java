package org.drillsheaf.program.build;

import java.util.List;

/**
 * The builder's answer to a task.
 *
 * @param drills ids by phase, each list sorted; empty unless something was found
 * @param value packed by the {@link Objective}
 * @param bound packed; nothing better than this is possible
 * @param offered drill and phase pairs that the task offers
 * @param considered those that are left without drills that nothing leads up to
 * @param looked partial choices looked at
 * @param ruledOut partial choices left because their bound was no better than what was found
 * @param stopped ended because that was asked for, so that it is not proved or ties are not settled
 * @param tiesSettled whether the drills are the first in the alphabet among all programs of this value; only asked for when
 *     ties are to be broken
 */
public record Answer(
        Kind kind,
        List<List<String>> drills,
        long value,
        long bound,
        int offered,
        int considered,
        long looked,
        long ruledOut,
        boolean stopped,
        boolean tiesSettled) {

    /** How it ended. */
    public enum Kind {
        /** Proved best. */
        BEST,
        /** Ended by the cap or stopped; {@code value} minus {@code bound} says how far from the best it may be. */
        BEST_FOUND,
        /** Proved: no program holds every rule. */
        NOTHING_FITS,
        /** Ended by the cap or stopped before any program was found. */
        NOT_DECIDED
    }

    public Answer {
        drills = drills.stream().map(List::copyOf).toList();
    }

    /** Proved without a search for the best. */
    public static Answer nothingFits() {
        return new Answer(Kind.NOTHING_FITS, List.of(), 0, 0, 0, 0, 0, 0, false, false);
    }

    public boolean found() {
        return kind == Kind.BEST || kind == Kind.BEST_FOUND;
    }
}
