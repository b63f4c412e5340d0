package org.drillsheaf.desk.work;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.function.Consumer;

/** Does everything at once where it is asked: for view models without a window. */
public final class SameThread implements Background {

    @Override
    public <T> void run(Callable<T> work, Consumer<T> done, Consumer<Exception> failed) {
        T result;
        try {
            result = work.call();
        } catch (Exception e) {
            failed.accept(e);
            return;
        }
        done.accept(result);
    }

    @Override
    public void later(Duration wait, Runnable then) {
        then.run();
    }

    @Override
    public void show(Runnable then) {
        then.run();
    }

    @Override
    public void close() {
        // nothing runs
    }
}
