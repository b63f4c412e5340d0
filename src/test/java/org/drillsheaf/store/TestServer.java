package org.drillsheaf.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.UUID;
import org.drillsheaf.store.sql.StoreAddress;

/** A real PostgreSQL server, started when a test first asks for it and shared by all tests of the process. */
public final class TestServer {
    private static final String USER = "postgres"; // the server trusts whoever comes from this machine

    private TestServer() {}

    private static final class Running {
        static final EmbeddedPostgres SERVER = start();

        private static EmbeddedPostgres start() {
            try {
                return EmbeddedPostgres.builder()
                        .setPGStartupWait(Duration.ofMinutes(2)) // a busy machine takes its time
                        .start();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** The address of a new database with nothing in it. */
    public static StoreAddress.Server emptyDatabase() {
        String name = "record_" + UUID.randomUUID().toString().replace('-', '_');
        try (Connection connection = connect(address("postgres"))) {
            connection.createStatement().execute("CREATE DATABASE " + name);
        } catch (SQLException e) {
            throw new IllegalStateException("the test's server makes databases", e);
        }
        return address(name);
    }

    private static StoreAddress.Server address(String database) {
        return new StoreAddress.Server(
                "jdbc:postgresql://localhost:" + Running.SERVER.getPort() + "/" + database, USER);
    }

    /** A connection past the record, as anybody with the server's password could have it. */
    public static Connection connect(StoreAddress.Server address) throws SQLException {
        return DriverManager.getConnection(address.url(), address.user(), "");
    }
}
