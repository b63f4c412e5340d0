package org.drillsheaf.store.change;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * Tells listeners what was committed, at this desk or another, within half a second: asks the audit for entries that are new.
 * Listeners are called on a thread of its own, in the order of the commits. Safe for several threads.
 */
public final class Changes implements AutoCloseable {
    /** How long after one question the next one is asked. A commit is told at the first question after it. */
    public static final Duration ASKED_EVERY = Duration.ofMillis(400);

    private static final int MOST_AT_ONCE = 1_000;

    private final Audit audit;
    private final List<Consumer<List<AuditEntry>>> listeners = new CopyOnWriteArrayList<>();
    private final ScheduledExecutorService asker = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "record-changes");
        thread.setDaemon(true);
        return thread;
    });
    private long seen;
    private boolean asking;

    public Changes(Audit audit) {
        this.audit = audit;
    }

    /**
     * Calls the listener with every change from now on.
     *
     * @return closes the listening
     */
    public synchronized Listening listen(Consumer<List<AuditEntry>> listener) {
        listeners.add(listener);
        if (!asking) {
            asking = true;
            seen = audit.newest();
            long every = ASKED_EVERY.toMillis();
            asker.scheduleWithFixedDelay(this::ask, every, every, TimeUnit.MILLISECONDS);
        }
        return () -> listeners.remove(listener);
    }

    /** Ends one listener's listening. */
    public interface Listening extends AutoCloseable {
        @Override
        void close();
    }

    private void ask() {
        try {
            List<AuditEntry> entries = audit.after(seen, MOST_AT_ONCE);
            if (!entries.isEmpty()) {
                seen = entries.get(entries.size() - 1).number();
                listeners.forEach(listener -> listener.accept(entries));
            }
        } catch (StoreFailure e) {
            // A server that is away comes back; whoever saves meanwhile is told. The next round asks again.
        }
    }

    @Override
    public void close() {
        asker.shutdownNow();
    }
}
