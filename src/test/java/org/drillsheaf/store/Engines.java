package org.drillsheaf.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.FileKey;
import org.drillsheaf.store.sql.Migrations;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;

/** Both databases, for real: an encrypted file, and a PostgreSQL server that the tests start themselves. */
enum Engines {
    FILE {
        @Override
        StoreAddress address(Path folder) {
            return new StoreAddress.File(folder.resolve("record.mv.db"));
        }
    },
    SERVER {
        @Override
        StoreAddress address(Path folder) {
            return TestServer.emptyDatabase();
        }
    };

    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-05T10:42:00Z"), ZoneOffset.UTC);

    /** The address of an empty place for a record. */
    abstract StoreAddress address(Path folder);

    static Passphrase passphrase() {
        return Passphrase.of("six otters on a wet brook".toCharArray());
    }

    static String sample(String client) {
        try {
            return Files.readString(Path.of("samples/clients", client + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a sample's file says. */
    static ClientText client(String sample) {
        return text(sample(sample));
    }

    static ClientText text(String yaml) {
        return ClientText.parse("client.yaml", yaml, new Problems()).orElseThrow();
    }

    /** A statement past the record, as somebody with the password could do it. */
    static void behindOurBack(StoreAddress address, String sql) throws SQLException {
        try (Passphrase passphrase = passphrase();
                Connection connection = address instanceof StoreAddress.File file
                        ? FileKey.connect(file, passphrase)
                        : TestServer.connect((StoreAddress.Server) address)) {
            connection.createStatement().execute(sql);
        }
    }

    /** The tables of the record that the engine itself knows of. */
    static List<String> tables(StoreAddress address, Passphrase passphrase) {
        try (Database database = Database.open(address, passphrase)) {
            return database.read(handle -> handle.createQuery("SELECT table_name FROM information_schema.tables"
                            + " WHERE table_schema = current_schema AND table_name <> 'flyway_schema_history'")
                    .mapTo(String.class)
                    .list());
        }
    }

    /** Makes a file as an earlier version of the program left it. */
    static void recordOfVersion(int version, StoreAddress.File file, Passphrase passphrase) {
        try (Database database = Database.create(file, passphrase)) {
            Migrations.runUpTo(database, version);
        }
    }

    static Optional<Integer> version(StoreAddress.File file, Passphrase passphrase) {
        try (Database database = Database.openToRead(file, passphrase)) {
            return Migrations.version(database);
        }
    }
}
