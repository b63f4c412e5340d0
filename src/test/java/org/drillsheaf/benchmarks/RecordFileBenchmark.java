package org.drillsheaf.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.ClientSummary;
import org.drillsheaf.store.upkeep.Backup;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** Opening and backing up a file of 100 000 clients and 10 000 drills, beside the same in plain JDBC. */
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 4)
@Fork(value = 1, jvmArgsAppend = "-Xmx1g")
public class RecordFileBenchmark {

    /** A file that nobody has open. */
    @State(Scope.Benchmark)
    public static class Closed {
        private BigRecord big;

        @Setup
        public void copy() throws IOException, SQLException {
            big = BigRecord.file();
        }

        @TearDown
        public void remove() throws Exception {
            big.close();
        }
    }

    /** A file that is open, as the program has it and plainly. */
    @State(Scope.Benchmark)
    public static class Opened {
        private BigRecord big;
        private Store store;
        private Connection plain;

        @Setup
        public void open() throws IOException, SQLException {
            big = BigRecord.file();
            store = big.open();
            plain = big.plain();
        }

        @TearDown
        public void remove() throws Exception {
            plain.close();
            store.close();
            big.close();
        }
    }

    /** Opened, every name made ready for searching, the first clients found, closed. */
    @Benchmark
    public List<ClientSummary> open(Closed closed) {
        try (Store store = closed.big.open()) {
            return store.search().clients("odi", 20);
        }
    }

    /** Opened, every name read once, closed. */
    @Benchmark
    public int openPlainly(Closed closed) throws SQLException {
        try (Connection plain = closed.big.plain()) {
            int letters = 0;
            for (String question : List.of("SELECT full_name FROM client", "SELECT names FROM drill_current")) {
                try (ResultSet rows = plain.createStatement().executeQuery(question)) {
                    while (rows.next()) {
                        letters += rows.getString(1).length();
                    }
                }
            }
            return letters;
        }
    }

    /** Made, then opened and read to the last row. */
    @Benchmark
    public Backup backup(Opened opened) {
        return opened.store.backups().make();
    }

    /** Made only. */
    @Benchmark
    public long backupPlainly(Opened opened) throws IOException, SQLException {
        Path zip = Files.createTempDirectory("plain-backup").resolve("record.zip");
        opened.plain.createStatement().execute("BACKUP TO '" + zip + "'");
        long bytes = Files.size(zip);
        Files.delete(zip);
        Files.delete(zip.getParent());
        return bytes;
    }
}
