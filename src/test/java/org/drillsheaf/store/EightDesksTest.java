package org.drillsheaf.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.time.Duration;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.record.SaveResult;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.upkeep.Watcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * Eight desks, each with connections of its own, edit the same few visits on one server. The record has the server end every
 * statement that waits a second for a lock, and tries again.
 */
final class EightDesksTest {
    private static final int DESKS = 8;
    private static final int EDITS = 2_000;
    private static final int CLIENTS = 8;
    private static final PartKey VISIT = PartKey.visit(LocalDate.of(2026, 3, 5));

    @TempDir
    Path folder;

    /** What one desk saved: client to the number of its edits that were taken. */
    private record Work(Map<UUID, Integer> edits, int clashes) {}

    @Test
    void noEditIsLostNobodyWaitsLongForALockAndAllHearOfEverything(TestReporter reporter) throws Exception {
        StoreAddress.Server address = (StoreAddress.Server) Engines.SERVER.address(folder);
        try (Passphrase passphrase = Engines.passphrase();
                Store first = Store.create(address, passphrase, Engines.CLOCK)) {
            List<UUID> clients = clients(first);
            Map<String, Long> heard = new ConcurrentHashMap<>();
            Map<String, Long> saved = new ConcurrentHashMap<>();
            first.changes()
                    .listen(entries -> entries.forEach(entry -> {
                        if (entry.deed() == AuditEntry.Deed.CHANGED) {
                            heard.putIfAbsent(key(UUID.fromString(entry.record()), entry.version()), System.nanoTime());
                        }
                    }));

            LockWatch watch = new LockWatch(address);
            List<Work> done = work(address, passphrase, clients, saved);
            Duration longest = watch.end();

            for (UUID client : clients) {
                Part visit =
                        first.clients().load(client).orElseThrow().part(VISIT).orElseThrow();
                long sum = done.stream()
                        .mapToLong(w -> w.edits().getOrDefault(client, 0))
                        .sum();
                assertThat(visit.version()).as("every edit is a version").isEqualTo(1 + sum);
                for (int desk = 0; desk < DESKS; desk++) {
                    assertThat(visit.content()
                                    .orElseThrow()
                                    .value("/observed/desk-" + desk)
                                    .orElse("0"))
                            .as("the last word of desk " + desk)
                            .isEqualTo(done.get(desk)
                                    .edits()
                                    .getOrDefault(client, 0)
                                    .toString());
                }
            }
            assertThat(saved).hasSize(EDITS);
            assertThat(first.verify(Watcher.NONE).faults()).isEmpty();
            for (int tries = 0; heard.size() < saved.size() && tries < 600; tries++) {
                TimeUnit.MILLISECONDS.sleep(100);
            }
            assertThat(heard.keySet()).as("heard").containsAll(saved.keySet());
            long slowest = saved.entrySet().stream()
                    .mapToLong(e -> java.util.Objects.requireNonNull(heard.get(e.getKey())) - e.getValue())
                    .max()
                    .orElseThrow();
            reporter.publishEntry(Map.of(
                    "edits", Integer.toString(EDITS),
                    "clashes",
                            Integer.toString(
                                    done.stream().mapToInt(Work::clashes).sum()),
                    "longest wait for a lock, milliseconds", Long.toString(longest.toMillis()),
                    "slowest change heard after milliseconds",
                            Long.toString(Duration.ofNanos(slowest).toMillis())));
        }
    }

    @Test
    void aSaveThatWaitsASecondForALockLetsGoAndIsTriedAgain() throws Exception {
        StoreAddress.Server address = (StoreAddress.Server) Engines.SERVER.address(folder);
        ExecutorService room = Executors.newSingleThreadExecutor();
        try (Passphrase passphrase = Engines.passphrase();
                Store store = Store.create(address, passphrase, Engines.CLOCK);
                Connection inTheWay = TestServer.connect(address)) {
            UUID client = clients(store).get(0);
            Part visit = store.clients().load(client).orElseThrow().part(VISIT).orElseThrow();
            inTheWay.setAutoCommit(false);
            inTheWay.createStatement().execute("SELECT * FROM ledger FOR UPDATE");
            Future<SaveResult> save = room.submit(() -> store.clients()
                    .save(
                            client,
                            VISIT,
                            visit.version(),
                            visit.content().orElseThrow().with("/observed/n", 1),
                            "Tamsin Rook"));
            LockWatch watch = new LockWatch(address);
            for (int tries = 0; watch.waits().size() < 2 && tries < 3_000; tries++) {
                TimeUnit.MILLISECONDS.sleep(10);
            }
            watch.end();
            assertThat(watch.waits()).as("let go, and waited anew").hasSizeGreaterThan(1);
            inTheWay.rollback();
            assertThat(save.get()).isEqualTo(new SaveResult.Saved(visit.version() + 1));
            assertThat(store.verify(Watcher.NONE).faults()).isEmpty();
        } finally {
            room.shutdownNow();
        }
    }

    private static List<UUID> clients(Store store) {
        List<UUID> clients = new ArrayList<>();
        for (int n = 1; n <= CLIENTS; n++) {
            String yaml = Engines.sample("odile-farrant").replace("id: odile-farrant", "id: odile-farrant-" + n);
            clients.add(store.clients().add(Engines.text(yaml), "Tamsin Rook"));
        }
        return clients;
    }

    private static List<Work> work(
            StoreAddress address, Passphrase passphrase, List<UUID> clients, Map<String, Long> saved) throws Exception {
        ExecutorService rooms = Executors.newFixedThreadPool(DESKS);
        try {
            List<Callable<Work>> desks = new ArrayList<>();
            for (int desk = 0; desk < DESKS; desk++) {
                int number = desk;
                desks.add(() -> {
                    try (Store store = Store.open(address, passphrase, Engines.CLOCK)) {
                        return desk(store, number, clients, saved);
                    }
                });
            }
            List<Work> done = new ArrayList<>();
            for (Future<Work> desk : rooms.invokeAll(desks)) {
                done.add(desk.get());
            }
            return done;
        } finally {
            rooms.shutdownNow();
        }
    }

    private static Work desk(Store store, int desk, List<UUID> clients, Map<String, Long> saved) {
        Random random = new Random(desk);
        Map<UUID, Integer> edits = new HashMap<>();
        int clashes = 0;
        for (int edit = 0; edit < EDITS / DESKS; edit++) {
            UUID client = clients.get(random.nextInt(clients.size()));
            int mine = edits.merge(client, 1, Integer::sum);
            SaveResult result;
            do {
                Part now =
                        store.clients().load(client).orElseThrow().part(VISIT).orElseThrow();
                result = store.clients()
                        .save(
                                client,
                                VISIT,
                                now.version(),
                                now.content().orElseThrow().with("/observed/desk-" + desk, mine),
                                "Desk " + desk);
                clashes += result instanceof SaveResult.Clashed ? 1 : 0;
            } while (!(result instanceof SaveResult.Saved));
            saved.put(key(client, ((SaveResult.Saved) result).version()), System.nanoTime());
        }
        return new Work(edits, clashes);
    }

    private static String key(UUID client, long version) {
        return client + " " + version;
    }
}
