package org.drillsheaf.desk.work;

import java.util.concurrent.Callable;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One thing at a time, and the newest wins: while one work runs only the last of those asked for meanwhile is kept. For
 * whatever is worked out again at every key. Belongs to the toolkit's thread.
 */
public final class Lane {
    private final Background background;
    private boolean running;
    private @Nullable Runnable next;

    public Lane(Background background) {
        this.background = background;
    }

    /** Runs the work now or when the running one is through; a newer one takes its place. */
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        if (running) {
            next = () -> start(work, done, failed);
        } else {
            start(work, done, failed);
        }
    }

    private <T> void start(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        running = true;
        background.run(
                work,
                result -> {
                    finish(() -> done.accept(result));
                },
                e -> finish(() -> failed.accept(e)));
    }

    private void finish(Runnable tell) {
        running = false;
        try {
            tell.run();
        } finally {
            Runnable waiting = next;
            next = null;
            if (waiting != null && !running) {
                waiting.run();
            }
        }
    }

    /** Whether work is running or waiting. */
    public boolean isBusy() {
        return running;
    }
}
