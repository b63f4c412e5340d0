package org.drillsheaf.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.UUID;
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
            String name = "record_" + UUID.randomUUID().toString().replace('-', '_');
            try (Connection connection = Server.RUNNING.getPostgresDatabase().getConnection()) {
                connection.createStatement().execute("CREATE DATABASE " + name);
            } catch (SQLException e) {
                throw new IllegalStateException("the test's server makes databases", e);
            }
            return new StoreAddress.Server(
                    "jdbc:postgresql://localhost:" + Server.RUNNING.getPort() + "/" + name, "postgres");
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

    private static final class Server {
        static final EmbeddedPostgres RUNNING = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
