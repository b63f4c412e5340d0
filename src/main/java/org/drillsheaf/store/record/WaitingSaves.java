package org.drillsheaf.store.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * Saves that wait while the server is away, and go to it in their order when it is back. From the first that waits, all that
 * follow wait behind it. Safe for several threads.
 */
final class WaitingSaves implements AutoCloseable {
    private static final int MOST_DESKS = 20;

    private final WaitingFile file;
    private final Server server;
    private final Predicate<PartSave> isOvertaken;
    private final Runnable probe;
    private final List<PartSave> queue;
    private final ScheduledExecutorService courier = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "record-waiting-saves");
        thread.setDaemon(true);
        return thread;
    });

    /** Saves for good, or says that it cannot. */
    @FunctionalInterface
    interface Server {
        SaveResult save(PartSave save);
    }

    /**
     * @param folder where the file lies that outlives this process; each desk of the machine has its own
     * @param server saves for good
     * @param isOvertaken whether another desk saved the part first
     * @param probe asks the server anything
     */
    WaitingSaves(Path folder, UUID storeKey, Server server, Predicate<PartSave> isOvertaken, Runnable probe)
            throws IOException {
        this.file = open(folder, storeKey);
        this.server = server;
        this.isOvertaken = isOvertaken;
        this.probe = probe;
        this.queue = new ArrayList<>(file.read());
        courier.scheduleWithFixedDelay(this::deliverIfBack, 0, 500, TimeUnit.MILLISECONDS);
    }

    private static WaitingFile open(Path folder, UUID storeKey) throws IOException {
        Files.createDirectories(folder);
        for (int desk = 1; desk <= MOST_DESKS; desk++) {
            Optional<WaitingFile> file = WaitingFile.open(folder.resolve("waiting-" + desk + ".txt"), storeKey);
            if (file.isPresent()) {
                return file.get();
            }
        }
        throw new IOException("more than " + MOST_DESKS + " desks on one machine");
    }

    synchronized int count() {
        return queue.size();
    }

    /** Saves at the server, or behind those that wait. */
    synchronized SaveResult save(PartSave save) {
        if (queue.isEmpty()) {
            try {
                return server.save(save);
            } catch (StoreFailure e) {
                if (e.kind() != StoreFailure.Kind.SERVER_AWAY) {
                    throw e;
                }
            }
        }
        try {
            file.add(save);
        } catch (IOException e) {
            throw new StoreFailure(
                    StoreFailure.Kind.SERVER_AWAY,
                    "the record",
                    "The server does not answer, and this machine's disk does not take the save either",
                    "Leave the window open; it is tried again");
        }
        queue.add(save);
        return new SaveResult.Saved(save.base() + 1, true);
    }

    /** Asks the server now, and sends what waits if it answers; may take as long as a server that is away is waited for. */
    void deliverIfBack() {
        if (count() == 0) {
            return;
        }
        try {
            probe.run(); // outside the lock: asking a server that is away takes its time
            deliver();
        } catch (StoreFailure | IOException e) {
            // Still away, or away again: what waits is in the file, and the next round tries again.
        }
    }

    private synchronized void deliver() throws IOException {
        Map<String, Long> lost = new HashMap<>();
        try {
            while (!queue.isEmpty()) {
                deliver(queue.get(0), lost);
                queue.remove(0);
            }
        } finally {
            queue.replaceAll(save -> save.from(lost.getOrDefault(name(save), save.base())));
            file.replace(queue);
        }
    }

    /** Of saves that build on each other, when another desk was first, only the last one is kept as the clash. */
    private void deliver(PartSave save, Map<String, Long> lost) {
        String part = name(save);
        PartSave mine = save.from(lost.getOrDefault(part, save.base()));
        boolean isLast = queue.stream().skip(1).noneMatch(save::isOfSamePart);
        if (!isLast && (lost.containsKey(part) || isOvertaken.test(mine))) {
            lost.put(part, mine.base());
            return;
        }
        server.save(mine);
    }

    private static String name(PartSave save) {
        return save.client() + " " + save.part();
    }

    @Override
    public void close() {
        courier.shutdownNow();
        try {
            courier.awaitTermination(15, TimeUnit.SECONDS);
            synchronized (this) {
                file.close();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            // Every save in it was forced to the disk when it was added.
        }
    }
}
