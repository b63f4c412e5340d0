package org.drillsheaf.cli;

import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;

/**
 * A line on the error stream that says what is going on, once it has lasted longer than a second. Writes whole lines, so
 * that it is readable in a log and by a screen reader.
 */
final class Progress implements AutoCloseable {
    private static final long PATIENCE_MILLISECONDS = 1_000;

    private final PrintWriter err;
    private final Timer timer = new Timer("progress", true);
    private String stage = "";
    private String shown = "";

    Progress(PrintWriter err) {
        this.err = err;
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        show();
                    }
                },
                PATIENCE_MILLISECONDS,
                PATIENCE_MILLISECONDS);
    }

    /** Says what is being done now, for example “Drawing the pictures”. */
    synchronized void stage(String text) {
        stage = text;
    }

    /** Says how far that has come, in tenths, so that a long work writes a few lines only. */
    void part(String text, int done, int all) {
        stage(text + ": " + 10 * (10 * done / Math.max(1, all)) + " %");
    }

    private synchronized void show() {
        if (!stage.equals(shown)) {
            err.println(stage + " …");
            err.flush();
            shown = stage;
        }
    }

    @Override
    public void close() {
        timer.cancel();
    }
}
