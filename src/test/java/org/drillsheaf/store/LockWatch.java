package org.drillsheaf.store;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.HashSet;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.store.sql.StoreAddress;

/** Looks every few milliseconds who waits for a lock of the server, and since when. */
final class LockWatch {
    private static final String QUESTION =
            "SELECT pid || ' ' || waitstart, EXTRACT(EPOCH FROM clock_timestamp() - waitstart) * 1000 FROM pg_locks"
                    + " WHERE NOT granted AND waitstart IS NOT NULL"
                    + " AND pid IN (SELECT pid FROM pg_stat_activity WHERE datname = current_database())";

    private final ExecutorService watcher = Executors.newSingleThreadExecutor();
    private final Connection connection;
    private final Set<String> seen = new HashSet<>();
    private final Future<Duration> longest;
    private volatile boolean isOver;

    LockWatch(StoreAddress.Server address) throws SQLException {
        connection = TestServer.connect(address);
        longest = watcher.submit((Callable<Duration>) this::watch);
    }

    private Duration watch() throws SQLException, InterruptedException {
        double milliseconds = 0;
        try (connection) {
            while (!isOver) {
                try (ResultSet waits = connection.createStatement().executeQuery(QUESTION)) {
                    while (waits.next()) {
                        note(waits.getString(1));
                        milliseconds = Math.max(milliseconds, waits.getDouble(2));
                    }
                }
                TimeUnit.MILLISECONDS.sleep(10);
            }
        }
        return Duration.ofMillis(Math.round(milliseconds));
    }

    private synchronized void note(String wait) {
        seen.add(wait);
    }

    /** Each wait that was seen so far: by whom, since when. */
    synchronized Set<String> waits() {
        return Set.copyOf(seen);
    }

    /** Ends it, and tells the longest wait that was seen. */
    Duration end() throws ExecutionException, InterruptedException {
        isOver = true;
        watcher.shutdown();
        return longest.get();
    }
}
