package org.drillsheaf.store.upkeep;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.record.House;
import org.drillsheaf.store.sql.Complaints;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Engine;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.jspecify.annotations.Nullable;

/**
 * Backups of a record's file, made while it is in use, each proved by opening it and reading all of it. A server's backups are
 * its keeper's: there the list is empty and making one is refused. Safe for several threads.
 */
public final class Backups implements AutoCloseable {
    private final Database database;
    private final House house;
    private final Clock clock;
    private final Optional<BackupFolder> folder;
    private @Nullable ScheduledExecutorService maker;
    private volatile Consumer<StoreFailure> failed = failure -> {};

    public Backups(Database database, House house, Clock clock) {
        this.database = database;
        this.house = house;
        this.clock = clock;
        this.folder = database.address() instanceof StoreAddress.File file
                ? Optional.of(new BackupFolder(file))
                : Optional.empty();
    }

    /** Newest first. */
    public List<Backup> list() {
        return folder.map(BackupFolder::list).orElse(List.of());
    }

    /** Where they lie; empty for a server. */
    public Optional<BackupFolder> folder() {
        return folder;
    }

    /** As set in the record, else the usual one. */
    public BackupPlan plan() {
        return Optional.ofNullable(house.settings().get(BackupPlan.SETTING))
                .flatMap(setting -> BackupPlan.parse(setting.text()))
                .orElse(BackupPlan.USUAL);
    }

    /** The last day on which a backup may still hold what was erased at that time, as long as backups go on being made. */
    public LocalDate heldUntil(Instant erased) {
        return erased.plus(plan().longest()).atOffset(ZoneOffset.UTC).toLocalDate();
    }

    /** Makes one now, and removes those that the plan keeps no longer. */
    public Backup make() {
        return make(Watcher.NONE);
    }

    /** The same, watched while it is proved; a watcher that throws stops it, and nothing is left behind. */
    public synchronized Backup make(Watcher watcher) {
        Backup backup = makeOnly(database, clock, watcher);
        List<Instant> expired = plan().expired(list().stream().map(Backup::made).toList(), clock.instant());
        for (Backup old : list()) {
            if (expired.contains(old.made()) && !old.made().equals(backup.made())) {
                try {
                    Files.deleteIfExists(old.address().file());
                } catch (IOException e) {
                    throw Complaints.of(e, old.address());
                }
            }
        }
        return backup;
    }

    /** Makes one and removes none; before anything that changes the whole file. */
    public static Backup makeOnly(Database database, Clock clock) {
        return makeOnly(database, clock, Watcher.NONE);
    }

    private static Backup makeOnly(Database database, Clock clock, Watcher watcher) {
        if (database.engine() != Engine.H2) {
            throw new StoreFailure(
                    StoreFailure.Kind.REFUSED,
                    database.address().shown(),
                    "Backups of a server are made by whoever runs it",
                    "Ask for its backups; “store copy” makes a file with everything in it");
        }
        Instant made = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        BackupFolder folder = new BackupFolder((StoreAddress.File) database.address());
        StoreAddress.File place = folder.place(made);
        StoreAddress.File part = folder.unfinished();
        try {
            Files.deleteIfExists(part.file()); // left behind by a backup that was broken off
            database.copyFile(part);
            prove(part, database, clock, watcher);
            Files.move(part.file(), place.file(), StandardCopyOption.ATOMIC_MOVE);
            return new Backup(place, made, Files.size(place.file()));
        } catch (IOException e) {
            throw Complaints.of(e, place);
        } finally {
            removeQuietly(part);
        }
    }

    private static void prove(StoreAddress.File copy, Database original, Clock clock, Watcher watcher) {
        try (Database opened = Database.open(copy, original.passphrase())) {
            Verification.of(opened, new Audit(opened, clock), watcher).orElseThrow(copy.shown());
        }
    }

    private static void removeQuietly(StoreAddress.File part) {
        try {
            Files.deleteIfExists(part.file());
        } catch (IOException e) {
            // What went wrong before is worth telling; the part has a name of its own and is replaced by the next one.
        }
    }

    /**
     * From now on makes one whenever the newest is as old as the plan says, until this is closed; the first in a few seconds
     * if due.
     *
     * @param failed is told, on a thread of its own, why one could not be made; the next attempt follows. Takes the place of
     *     the one given before
     */
    public synchronized void keepMaking(Consumer<StoreFailure> failed) {
        this.failed = failed;
        if (maker != null || folder.isEmpty()) {
            return;
        }
        ScheduledExecutorService timer = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread thread = new Thread(work, "record-backups");
            thread.setDaemon(true);
            return thread;
        });
        timer.scheduleWithFixedDelay(this::makeIfDue, 3, 60, TimeUnit.SECONDS);
        maker = timer;
    }

    private void makeIfDue() {
        try {
            Instant due = list().stream()
                    .findFirst()
                    .map(newest -> newest.made().plus(Duration.ofMinutes(plan().everyMinutes())))
                    .orElse(Instant.MIN);
            if (!clock.instant().isBefore(due)) {
                make();
            }
        } catch (StoreFailure e) {
            failed.accept(e);
        }
    }

    @Override
    public void close() {
        ScheduledExecutorService running;
        synchronized (this) {
            running = maker;
        }
        if (running != null) {
            running.shutdown();
            try {
                running.awaitTermination(1, TimeUnit.MINUTES); // one that is being made needs the open record
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
