package org.drillsheaf.store.sql;

import java.util.Optional;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings the tables of an open database to this program's version. The steps are SQL files, the same for both engines. */
public final class Migrations {
    /** Version of the newest step in {@code src/main/resources/org/drillsheaf/store/migration}. */
    public static final int NEWEST = 2;

    private static final String NO_CHAIN = "0".repeat(64);

    private Migrations() {}

    /** Version that the database has; empty when it has no tables yet. */
    public static Optional<Integer> version(Database database) {
        return database.read(handle -> {
            boolean there = handle.createQuery("SELECT COUNT(*) FROM information_schema.tables WHERE table_name ="
                                    + " 'flyway_schema_history' AND table_schema = current_schema")
                            .mapTo(Integer.class)
                            .one()
                    > 0;
            return !there
                    ? Optional.empty()
                    : handle.createQuery(
                                    "SELECT MAX(CAST(version AS INTEGER)) FROM flyway_schema_history WHERE success")
                            .mapTo(Integer.class)
                            .findOne();
        });
    }

    /** Whether there is a step to take. Refuses a database that a newer program wrote. */
    public static boolean isNeeded(Database database) {
        int there = version(database).orElse(0);
        if (there > NEWEST) {
            throw new StoreFailure(
                    StoreFailure.Kind.NEWER,
                    database.address().shown(),
                    "The record was written by a newer version (tables " + there + ", this program knows " + NEWEST
                            + ")",
                    "Install that version or a newer one; nothing was changed");
        }
        return there < NEWEST;
    }

    /** Takes the steps that are missing; each one entirely or not at all. */
    public static void run(Database database) {
        runUpTo(database, NEWEST);
    }

    /** Takes the missing steps up to a version; tests make older records with it. */
    public static void runUpTo(Database database, int version) {
        try {
            Flyway.configure()
                    .dataSource(database.pool())
                    .target(Integer.toString(version))
                    .locations("classpath:org/drillsheaf/store/migration")
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw Complaints.of(e, database.address());
        }
        database.writeOnly(handle -> handle.createUpdate("INSERT INTO ledger (only_row, last_number, chain, store_key)"
                        + " SELECT 1, 0, :chain, :key WHERE NOT EXISTS (SELECT 1 FROM ledger)")
                .bind("chain", NO_CHAIN)
                .bind("key", UUID.randomUUID())
                .execute());
    }
}
