package org.drillsheaf.program.build;

import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Counts what a search did, and says when it has done enough. Not safe for several threads. */
final class Tally {
    private static final long BETWEEN_LOOKS = 8_192;

    private long looked;
    private long ruledOut;
    /** Drills weighed, each time one was weighed for a partial choice: the measure of work, the same on every machine. */
    private long steps;

    private long most;
    private final BooleanSupplier stopAsked;
    private long nextLook;
    private boolean stopped;
    /** What a part of it is counted in too. */
    private final @Nullable Tally whole;

    /** @param stopAsked looked at every few thousand steps */
    Tally(long most, BooleanSupplier stopAsked) {
        this.most = most;
        this.stopAsked = stopAsked;
        whole = null;
    }

    private Tally(long most, Tally whole) {
        this.most = most;
        stopAsked = () -> false;
        this.whole = whole;
    }

    /** Counts a part of this work, which may take so many steps and not more than are left of the whole. */
    Tally part(long steps) {
        return new Tally(steps, this);
    }

    /** A partial choice is looked at. */
    void look() {
        looked++;
        if (whole != null) {
            whole.look();
        }
    }

    /** A partial choice is left because its bound is no better than what was found. */
    void ruleOut() {
        ruledOut++;
        if (whole != null) {
            whole.ruleOut();
        }
    }

    /** Partial choices looked at. */
    long looked() {
        return looked;
    }

    /** Partial choices left because of their bound. */
    long ruledOut() {
        return ruledOut;
    }

    void weighed(int drills) {
        steps += drills;
        if (whole != null) {
            whole.weighed(drills);
        }
        if (steps >= nextLook) {
            nextLook = steps + BETWEEN_LOOKS;
            stopped |= stopAsked.getAsBoolean();
        }
    }

    /** From now on nothing that a search says is an answer. */
    boolean spent() {
        return stopped || steps > most || whole != null && whole.spent();
    }

    /** Ended because that was asked for, not because the steps were used up. */
    boolean stopped() {
        return stopped;
    }

    /** Allows so many steps from here on. */
    void allow(long more) {
        most = steps + more;
    }
}
