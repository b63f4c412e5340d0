package org.drillsheaf.store.upkeep;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.StoreFailure;
import org.jdbi.v3.core.Handle;

/** Copies a whole record into an empty one, on whatever engines, and proves that both hold the same. */
public final class RecordCopy {
    private static final int ROWS_AT_ONCE = 200;

    private RecordCopy() {}

    /**
     * Copies. The source is read as it is at one moment, while others go on writing; the target gets all of it or nothing.
     *
     * @param to has its tables and nothing in them
     * @return what both hold, table by table
     */
    public static List<TableSum> copy(Database from, Database to, Watcher watcher) {
        refuseUnlessEmpty(to);
        List<TableSum> sent = from.snapshot(source -> {
            Counter counter = new Counter(
                    2
                            * Tables.counts(source).values().stream()
                                    .mapToLong(Long::longValue)
                                    .sum(),
                    watcher);
            List<TableSum> sums = new ArrayList<>();
            to.writeOnly(target -> {
                sums.clear(); // a second attempt begins anew
                target.execute("DELETE FROM ledger");
                for (String table : Tables.NAMES) {
                    sums.add(copy(source, target, table, counter));
                }
            });
            return sums;
        });
        long rows = sent.stream().mapToLong(TableSum::rows).sum();
        List<TableSum> arrived = sums(to, (done, all) -> watcher.at(rows + done, rows + all));
        if (!sent.equals(arrived)) {
            throw new StoreFailure(
                    StoreFailure.Kind.UNEXPECTED,
                    to.address().shown(),
                    "What arrived is not what was sent",
                    "Do not use the copy; remove it and copy again");
        }
        return arrived;
    }

    /** How many rows each table holds. */
    public static Map<String, Long> counts(Database database) {
        return database.read(Tables::counts);
    }

    private static void refuseUnlessEmpty(Database to) {
        Map<String, Long> counts = counts(to);
        boolean empty = counts.entrySet().stream()
                .allMatch(e -> e.getKey().equals("ledger") ? e.getValue() <= 1 : e.getValue() == 0);
        if (!empty) {
            throw new StoreFailure(
                    StoreFailure.Kind.ALREADY_THERE,
                    to.address().shown(),
                    "There is already something in this record",
                    "Name an empty database or a new file");
        }
    }

    private static TableSum copy(Handle source, Handle target, String table, Counter counter) {
        TableSum.Adder adder = new TableSum.Adder(table);
        List<Tables.Row> waiting = new ArrayList<>();
        Tables.read(source, table, row -> {
            adder.add(row);
            waiting.add(row);
            if (waiting.size() == ROWS_AT_ONCE) {
                Tables.write(target, table, waiting);
                waiting.clear();
            }
            counter.step();
        });
        Tables.write(target, table, waiting);
        return adder.sum();
    }

    /** Counts and checksums of every table, as they are at one moment. */
    static List<TableSum> sums(Database database, Watcher watcher) {
        return database.snapshot(handle -> {
            Counter counter = new Counter(
                    Tables.counts(handle).values().stream()
                            .mapToLong(Long::longValue)
                            .sum(),
                    watcher);
            List<TableSum> sums = new ArrayList<>();
            for (String table : Tables.NAMES) {
                TableSum.Adder adder = new TableSum.Adder(table);
                Tables.read(handle, table, row -> {
                    adder.add(row);
                    counter.step();
                });
                sums.add(adder.sum());
            }
            return sums;
        });
    }

    /** Tells the watcher every hundredth row. */
    private static final class Counter {
        private final long all;
        private final Watcher watcher;
        private long done;

        Counter(long all, Watcher watcher) {
            this.all = all;
            this.watcher = watcher;
        }

        void step() {
            if (++done % 100 == 0 || done == all) {
                watcher.at(done, all);
            }
        }
    }
}
