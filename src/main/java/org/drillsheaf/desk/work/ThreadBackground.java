package org.drillsheaf.desk.work;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.application.Platform;

/** The real one: a few threads, and the toolkit's own for what comes back. */
public final class ThreadBackground implements Background {
    private final ExecutorService workers;
    private final ScheduledExecutorService clock;

    /** @param threads how many works may run at once */
    public ThreadBackground(int threads) {
        this.workers = Executors.newFixedThreadPool(threads, named("desk-work-"));
        this.clock = Executors.newSingleThreadScheduledExecutor(named("desk-clock-"));
    }

    private static ThreadFactory named(String name) {
        AtomicInteger number = new AtomicInteger();
        return work -> {
            Thread thread = new Thread(work, name + number.incrementAndGet());
            thread.setDaemon(true);
            return thread;
        };
    }

    @Override
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        if (workers.isShutdown()) {
            return; // the window is closed; nobody waits for this any more
        }
        workers.execute(() -> {
            try {
                T result = work.call();
                Platform.runLater(() -> done.accept(result));
            } catch (Exception e) {
                Platform.runLater(() -> failed.accept(e));
            }
        });
    }

    @Override
    public void later(Duration wait, Runnable then) {
        if (clock.isShutdown()) {
            return;
        }
        clock.schedule(() -> Platform.runLater(then), wait.toMillis(), TimeUnit.MILLISECONDS);
    }

    @Override
    public void show(Runnable then) {
        Platform.runLater(then);
    }

    @Override
    public void close() {
        clock.shutdownNow();
        workers.shutdown();
        try {
            workers.awaitTermination(5, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
