package org.drillsheaf.program.build;

/** Counts what a search did, and says when it has done enough. Not safe for several threads. */
final class Tally {
    long looked;
    long ruledOut;
    /** Drills weighed, each time one was weighed for a partial choice: the measure of work, the same on every machine. */
    private long steps;

    private long most;

    Tally(long most) {
        this.most = most;
    }

    void weighed(int drills) {
        steps += drills;
    }

    /** From now on nothing that a search says is an answer. */
    boolean spent() {
        return steps > most;
    }

    /** Allows so many steps from here on. */
    void allow(long more) {
        most = steps + more;
    }
}
