package org.drillsheaf.store;

import java.time.Clock;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.Changes;
import org.drillsheaf.store.record.Clients;
import org.drillsheaf.store.record.Documents;
import org.drillsheaf.store.record.Drills;
import org.drillsheaf.store.record.House;
import org.drillsheaf.store.record.Programs;
import org.drillsheaf.store.search.Search;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Migrations;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * An open record. Everything that can go wrong with it comes as {@link StoreFailure}, whose {@code problem()} is for a person.
 * Safe for several threads; close it when done.
 */
public final class Store implements AutoCloseable {
    private final Database database;
    private final Audit audit;
    private final Changes changes;
    private final Clients clients;
    private final Drills drills;
    private final Programs programs;
    private final Documents documents;
    private final House house;
    private final Search search;

    private Store(Database database, Clock clock) {
        this.database = database;
        this.audit = new Audit(database, clock);
        this.changes = new Changes(audit);
        this.clients = new Clients(database, audit, clock);
        this.drills = new Drills(database, audit, clock);
        this.programs = new Programs(database, audit, drills, clock);
        this.documents = new Documents(database, audit, clock);
        this.house = new House(database, audit);
        this.search = new Search(clients, drills, changes);
    }

    /** Makes a new record: a file that is not there yet, or the tables in an empty database of a server. */
    public static Store create(StoreAddress address, Passphrase passphrase, Clock clock) {
        return ready(Database.create(address, passphrase), clock);
    }

    /** Opens a record. */
    public static Store open(StoreAddress address, Passphrase passphrase, Clock clock) {
        return ready(Database.open(address, passphrase), clock);
    }

    private static Store ready(Database database, Clock clock) {
        try {
            if (Migrations.isNeeded(database)) {
                Migrations.run(database);
            }
            return new Store(database, clock);
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

    /** What other desks commit, and this one. */
    public Changes changes() {
        return changes;
    }

    @Override
    public void close() {
        search.close();
        changes.close();
        database.close();
    }
}
