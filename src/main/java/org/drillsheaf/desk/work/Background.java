package org.drillsheaf.desk.work;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Runs work beside the toolkit's thread and hands its result back on that thread. */
public interface Background extends AutoCloseable {

    /**
     * Runs work as soon as there is room.
     *
     * @param done gets the result, on the toolkit's thread
     * @param failed gets what went wrong, on the toolkit's thread
     */
    <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed);

    /** Runs something short on the toolkit's thread after a while. */
    void later(Duration wait, Runnable then);

    /** Runs something short on the toolkit's thread; from any thread. */
    void show(Runnable then);

    @Override
    void close();
}
