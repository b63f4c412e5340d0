package org.drillsheaf.benchmarks;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.UUID;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.sql.FileKey;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;

/**
 * A record of 100 000 invented clients and 10 000 drills of three editions each, on either engine. It is filled once, past the
 * store, because that takes seconds and not an hour, is kept under {@code target}, and each benchmark works on a copy.
 */
final class BigRecord implements Closeable {
    static final int CLIENTS = 100_000;
    static final int DRILLS = 10_000;
    static final String ODILE = "odile-farrant";

    private static final Path KEPT = Path.of("target", "benchmark-record");
    private static final String FILLED = "filled";
    private static final String COPY = "copy";

    private static final List<String> FIRST = List.of(
            "Odile", "Edwin", "Lise", "Vera", "Petra", "Bram", "Joaquín", "Nadia", "Zoë", "Renée", "Jörg", "Łucja",
            "Siân", "Tomás", "Ágnes", "Øystein", "Mårten", "Çelik", "Marta", "Ines");
    private static final List<String> LAST = List.of(
            "Farrant",
            "Tarrow",
            "Varga",
            "Quill",
            "Holm",
            "Okonjo",
            "Mirande",
            "Sorrel",
            "Brook",
            "Müller",
            "Nuñez",
            "Åkesson",
            "Dvořák",
            "Ibáñez",
            "Rook",
            "Vale",
            "Calloway",
            "Othersby",
            "Wren",
            "Øvrebø");
    private static final List<String> DRILL_WORDS = List.of(
            "wall",
            "lean",
            "breath",
            "heel",
            "slide",
            "reach",
            "lying",
            "side",
            "seated",
            "roll",
            "pared",
            "apoyo",
            "talón",
            "respiración",
            "lado",
            "sentado");

    private final StoreAddress address;
    private final Passphrase passphrase = passphrase();
    private final Closeable rest;

    private BigRecord(StoreAddress address, Closeable rest) {
        this.address = address;
        this.rest = rest;
    }

    private static Passphrase passphrase() {
        return Passphrase.of("six otters on a wet brook".toCharArray());
    }

    /** A fresh copy; closing it removes the copy. */
    static BigRecord file() throws IOException, SQLException {
        StoreAddress.File filled = new StoreAddress.File(KEPT.resolve(FILLED));
        if (!Files.exists(filled.file())) {
            StoreAddress.File half =
                    new StoreAddress.File(Files.createDirectories(KEPT).resolve("half"));
            Files.deleteIfExists(half.file());
            fill(half);
            Files.move(half.file(), filled.file());
        }
        Path folder = Files.createTempDirectory("record-benchmark");
        StoreAddress.File copy = new StoreAddress.File(folder.resolve(COPY));
        Files.copy(filled.file(), copy.file());
        return new BigRecord(copy, () -> remove(folder));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** A fresh copy on a server of its own, which waits for the disk at each commit as a clinic's does. */
    static BigRecord server() throws IOException, SQLException {
        EmbeddedPostgres server = EmbeddedPostgres.builder()
                .setDataDirectory(Files.createDirectories(KEPT.resolve("server")))
                .setCleanDataDirectory(false)
                .setServerConfig("fsync", "on")
                .setServerConfig("synchronous_commit", "on")
                .start();
        String root = "jdbc:postgresql://localhost:" + server.getPort() + "/";
        try (Connection connection = DriverManager.getConnection(root + "postgres", "postgres", "")) {
            String isThere = "SELECT 1 FROM pg_database WHERE datname = '" + FILLED + "'";
            if (!connection.createStatement().executeQuery(isThere).next()) {
                connection.createStatement().execute("DROP DATABASE IF EXISTS half");
                connection.createStatement().execute("CREATE DATABASE half");
                fill(new StoreAddress.Server(root + "half", "postgres"));
                connection.createStatement().execute("ALTER DATABASE half RENAME TO " + FILLED);
            }
            connection.createStatement().execute("DROP DATABASE IF EXISTS " + COPY);
            connection.createStatement().execute("CREATE DATABASE " + COPY + " TEMPLATE " + FILLED);
        }
        return new BigRecord(new StoreAddress.Server(root + COPY, "postgres"), server);
    }

    StoreAddress address() {
        return address;
    }

    /** Opens it as the program does. */
    Store open() {
        return Store.open(address, passphrase, Clock.systemUTC());
    }

    /** A plain connection, beside the open record or alone. */
    Connection plain() throws SQLException {
        return plain(address, passphrase);
    }

    private static Connection plain(StoreAddress address, Passphrase passphrase) throws SQLException {
        return address instanceof StoreAddress.File file
                ? FileKey.connect(file, passphrase)
                : DriverManager.getConnection(((StoreAddress.Server) address).url(), "postgres", "");
    }

    @Override
    public void close() throws IOException {
        passphrase.close();
        rest.close();
    }

    private static void fill(StoreAddress address) throws IOException, SQLException {
        try (Passphrase passphrase = passphrase();
                Store made = Store.create(address, passphrase, Clock.systemUTC())) {
            String yaml = Files.readString(Path.of("samples/clients/" + ODILE + ".yaml"));
            made.clients()
                    .add(ClientText.parse("odile.yaml", yaml, new Problems()).orElseThrow(), "Tamsin Rook");
            try (Connection connection = plain(address, passphrase)) {
                connection.setAutoCommit(false);
                Random random = new Random(1);
                clients(connection, random);
                drills(connection, random);
                connection.commit();
                connection.setAutoCommit(true);
                connection.createStatement().execute("ANALYZE");
                if (address instanceof StoreAddress.File) {
                    connection.createStatement().execute("SHUTDOWN COMPACT");
                }
            }
        }
    }

    private static void clients(Connection connection, Random random) throws SQLException {
        String columns = "(client_key, part, part_version, body, saved_by, saved_at)"
                + " VALUES (?, 'client', 1, ?, 'Tamsin Rook', TIMESTAMP WITH TIME ZONE '2026-03-05 10:00:00+00')";
        try (PreparedStatement client = connection.prepareStatement(
                        "INSERT INTO client (client_key, client_id, full_name, coach, born) VALUES (?, ?, ?, ?, ?)");
                PreparedStatement now = connection.prepareStatement("INSERT INTO client_part " + columns);
                PreparedStatement version = connection.prepareStatement("INSERT INTO client_part_version " + columns)) {
            for (int n = 0; n < CLIENTS; n++) {
                UUID key = new UUID(random.nextLong(), random.nextLong());
                String name = pick(FIRST, random) + " " + pick(LAST, random) + "-" + pick(LAST, random);
                String born = Integer.toString(1930 + random.nextInt(85));
                client.setObject(1, key);
                client.setString(2, "client-" + n);
                client.setString(3, name);
                client.setString(4, pick(FIRST, random) + " Rook");
                client.setString(5, born);
                client.addBatch();
                for (PreparedStatement part : List.of(now, version)) {
                    part.setObject(1, key);
                    part.setString(2, "{\"id\":\"client-" + n + "\",\"name\":\"" + name + "\",\"born\":" + born + "}");
                    part.addBatch();
                }
                if (n % 1_000 == 999) {
                    client.executeBatch();
                    now.executeBatch();
                    version.executeBatch();
                }
            }
        }
    }

    /** Three editions of each. */
    private static void drills(Connection connection, Random random) throws SQLException {
        try (PreparedStatement edition = connection.prepareStatement(
                        "INSERT INTO drill_revision (drill, sha256, revision, origin, body, saved_by, saved_at) VALUES"
                                + " (?, ?, ?, 'HOUSE', '{}', 'Tamsin Rook', TIMESTAMP WITH TIME ZONE '2026-03-05"
                                + " 10:00:00+00')");
                PreparedStatement current = connection.prepareStatement(
                        "INSERT INTO drill_current (drill, sha256, part_version, names) VALUES (?, ?, 3, ?)")) {
            for (int n = 0; n < DRILLS; n++) {
                String id = "drill-" + n;
                for (int revision = 1; revision <= 3; revision++) {
                    edition.setString(1, id);
                    edition.setString(2, hash(n, revision));
                    edition.setInt(3, revision);
                    edition.addBatch();
                }
                current.setString(1, id);
                current.setString(2, hash(n, 3));
                current.setString(
                        3,
                        pick(DRILL_WORDS, random) + " " + pick(DRILL_WORDS, random) + " " + n + "\n"
                                + pick(DRILL_WORDS, random) + " " + pick(DRILL_WORDS, random));
                current.addBatch();
            }
            edition.executeBatch();
            current.executeBatch();
        }
    }

    private static String hash(int drill, int revision) {
        return String.format(Locale.ROOT, "%060d%04d", drill, revision);
    }

    private static String pick(List<String> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }
}
