package org.drillsheaf.desk.work;

/** How far a long work has come, and whether it is still wanted. Safe for several threads. */
public final class Going {
    private volatile Place place = new Place(0, 0);
    private volatile boolean stopped;

    /** @param all 0 while nobody knows how much there is */
    public record Place(long done, long all) {}

    /** Ends a work that is no longer wanted, wherever it stands; nothing half done may be left behind. */
    public static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;

        Stopped() {
            super("stopped", null, false, false);
        }
    }

    /**
     * Called by the work after each piece.
     *
     * @throws Stopped when the work is no longer wanted
     */
    public void at(long done, long all) {
        place = new Place(done, all);
        if (stopped) {
            throw new Stopped();
        }
    }

    public Place place() {
        return place;
    }

    public void stop() {
        stopped = true;
    }

    public boolean isStopped() {
        return stopped;
    }
}
