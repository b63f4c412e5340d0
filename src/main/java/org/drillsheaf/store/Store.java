package org.drillsheaf.store;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.change.Changes;
import org.drillsheaf.store.change.OpenDesk;
import org.drillsheaf.store.record.ClientArchive;
import org.drillsheaf.store.record.Clients;
import org.drillsheaf.store.record.Documents;
import org.drillsheaf.store.record.Drills;
import org.drillsheaf.store.record.Erasure;
import org.drillsheaf.store.record.Erasures;
import org.drillsheaf.store.record.House;
import org.drillsheaf.store.record.Programs;
import org.drillsheaf.store.search.Search;
import org.drillsheaf.store.sql.Complaints;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Engine;
import org.drillsheaf.store.sql.Migrations;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.BackupFolder;
import org.drillsheaf.store.upkeep.Backups;
import org.drillsheaf.store.upkeep.Mark;
import org.drillsheaf.store.upkeep.RecordCopy;
import org.drillsheaf.store.upkeep.TableSum;
import org.drillsheaf.store.upkeep.Verification;
import org.drillsheaf.store.upkeep.Watcher;

/**
 * An open record. Everything that can go wrong with it comes as {@link StoreFailure}, whose {@code problem()} is for a person.
 * Safe for several threads; close it when done.
 */
public final class Store implements AutoCloseable {
    private final Database database;
    private final boolean isLook;
    private final Audit audit;
    private final Changes changes;
    private final Clients clients;
    private final Drills drills;
    private final Programs programs;
    private final Documents documents;
    private final House house;
    private final Search search;
    private final Erasures erasures;
    private final ClientArchive archive;
    private final Backups backups;
    private final Optional<Mark> mark;

    private Store(Database database, Clock clock, boolean isLook) {
        this.isLook = isLook;
        this.database = database;
        this.audit = new Audit(database, clock);
        this.changes = new Changes(audit);
        this.clients = new Clients(database, audit, clock);
        this.drills = new Drills(database, audit, clock);
        this.programs = new Programs(database, audit, drills, clock);
        this.documents = new Documents(database, audit, clock);
        this.house = new House(database, audit);
        this.search = new Search(clients, drills, changes);
        this.erasures = new Erasures(database, audit, clock);
        this.archive = new ClientArchive(clients, programs, documents, audit);
        this.backups = new Backups(database, house, clock);
        this.mark = backups.folder().map(Mark::new);
    }

    /** Makes a new record: a file that is not there yet, or the tables in an empty database of a server. */
    public static Store create(StoreAddress address, Passphrase passphrase, Clock clock) {
        Database database = Database.create(address, passphrase);
        if (address instanceof StoreAddress.File file) {
            new Mark(new BackupFolder(file)).remove(); // of a record that lay here before
        }
        return ready(database, clock);
    }

    /** Opens a record; brings an older one up to date, after a backup. */
    public static Store open(StoreAddress address, Passphrase passphrase, Clock clock) {
        return ready(Database.open(address, passphrase), clock);
    }

    /** Opens a file to look into it, for example a backup while the record is in use; whatever would write is refused. */
    public static Store look(StoreAddress.File file, Passphrase passphrase, Clock clock) {
        Database database = Database.openToRead(file, passphrase);
        try {
            if (Migrations.isNeeded(database)) {
                throw new StoreFailure(
                        StoreFailure.Kind.OLDER,
                        file.shown(),
                        "This is from an older version, and cannot be looked into as it is",
                        "Restore it into a new place: there it is brought up to date");
            }
            return new Store(database, clock, true);
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    private static Store ready(Database database, Clock clock) {
        try {
            boolean isThere = Migrations.version(database).isPresent();
            if (Migrations.isNeeded(database)) {
                if (isThere && database.engine() == Engine.H2) {
                    Backups.makeOnly(database, clock);
                }
                Migrations.run(database);
            }
            Store store = new Store(database, clock, false);
            store.mark.ifPresent(mark -> mark.check(store.audit));
            return store;
        } catch (StoreFailure e) {
            database.close();
            throw Complaints.whileReadingAll(e, database.address());
        } catch (RuntimeException e) {
            database.close();
            throw e;
        }
    }

    public StoreAddress address() {
        return database.address();
    }

    public Clients clients() {
        return clients;
    }

    public Programs programs() {
        return programs;
    }

    public Documents documents() {
        return documents;
    }

    public Drills drills() {
        return drills;
    }

    public House house() {
        return house;
    }

    public Search search() {
        return search;
    }

    public Audit audit() {
        return audit;
    }

    /** Backups of the file; their making starts when asked for. */
    public Backups backups() {
        return backups;
    }

    /**
     * Erases a client for good: every value and document of every version. The audit keeps that it happened. A new backup is
     * made at once; older ones hold the client until the day that {@code backups().heldUntil} tells.
     */
    public Erasure erase(UUID client, String who) {
        Erasure erasure = erasures.erase(client, who);
        backups.folder().ifPresent(folder -> {
            folder.note(erasure);
            backups.make();
        });
        search.refresh(client);
        return erasure;
    }

    /** Who was erased, by keys that name nobody; the last one first. */
    public List<Erasure> erasures() {
        return erasures.list();
    }

    /** Everything about one client, to be read without this program. */
    public ClientArchive archive() {
        return archive;
    }

    /** How many rows each table holds. */
    public Map<String, Long> counts() {
        return RecordCopy.counts(database);
    }

    /** Reads all of it and tells what is not as it should be. Takes as long as reading the file does. */
    public Verification verify(Watcher watcher) {
        return Verification.of(database, audit, watcher);
    }

    /**
     * Copies everything into an empty record on the same or the other engine, while this one may be in use.
     *
     * @return what both hold, compared table by table
     */
    public List<TableSum> copyInto(Store empty, String who, Watcher watcher) {
        audit.noteOfStore(AuditEntry.Deed.COPIED, who);
        return RecordCopy.copy(database, empty.database, watcher);
    }

    /** Which machines have the record of a server open; empty for a file. */
    public List<OpenDesk> openDesks() {
        return OpenDesk.list(database);
    }

    /** What other desks commit, and this one. */
    public Changes changes() {
        return changes;
    }

    @Override
    public void close() {
        clients.close();
        backups.close();
        search.close();
        changes.close();
        if (!isLook) {
            mark.ifPresent(m -> m.set(audit));
        }
        database.close();
    }
}
