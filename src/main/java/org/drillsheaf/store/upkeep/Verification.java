package org.drillsheaf.store.upkeep;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.record.Clients;
import org.drillsheaf.store.record.Documents;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.Complaints;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.StoreFailure;

/**
 * What reading a whole record found.
 *
 * @param tables counts and checksums
 * @param faults what is not as it should be, a sentence each, naming nobody; empty when all is well
 */
public record Verification(List<TableSum> tables, List<String> faults) {

    public Verification {
        tables = List.copyOf(tables);
        faults = List.copyOf(faults);
    }

    public boolean isWhole() {
        return faults.isEmpty();
    }

    /**
     * Reads every row of every table, follows the audit from its first entry, holds every document against its hash, and
     * every newest part of a client against its twin among the old versions.
     */
    public static Verification of(Database database, Audit audit, Watcher watcher) {
        try {
            List<TableSum> sums = RecordCopy.sums(database, watcher);
            List<String> faults = new ArrayList<>();
            audit.firstBreak().ifPresent(n -> faults.add("The audit is broken at entry " + n));
            faults.addAll(documents(database));
            faults.addAll(parts(database));
            return new Verification(sums, faults);
        } catch (StoreFailure e) {
            throw Complaints.whileReadingAll(e, database.address());
        }
    }

    private static List<String> documents(Database database) {
        List<String> faults = new ArrayList<>();
        database.snapshot(handle -> {
            List<String> hashes = handle.createQuery("SELECT sha256 FROM content ORDER BY sha256")
                    .mapTo(String.class)
                    .list();
            for (String hash : hashes) {
                if (!Documents.isWhole(handle, hash)) {
                    faults.add("The stored bytes " + hash.substring(0, 12) + "… are not what was put there");
                }
            }
            return true;
        });
        return faults;
    }

    private static List<String> parts(Database database) {
        Set<String> faults = new HashSet<>();
        database.snapshot(handle -> {
            handle.createQuery(
                            """
                            SELECT p.client_key, p.part, p.body, v.body AS twin FROM client_part p
                            LEFT JOIN client_part_version v ON v.client_key = p.client_key AND v.part = p.part
                                                            AND v.part_version = p.part_version""")
                    .setFetchSize(200)
                    .map((row, context) -> {
                        String body = row.getString("body");
                        String twin = row.getString("twin");
                        return java.util.Objects.equals(body, twin) && (body == null || Clients.isReadable(body))
                                ? ""
                                : row.getObject("client_key", UUID.class) + ", part "
                                        + new PartKey(row.getString("part"));
                    })
                    .forEach(fault -> {
                        if (!fault.isEmpty()) {
                            faults.add("Client " + fault + ", is not what was saved");
                        }
                    });
            return true;
        });
        return faults.stream().sorted().toList();
    }

    /** Throws when there are faults; for a copy that nobody should rely on. */
    Verification orElseThrow(String place) {
        if (!isWhole()) {
            throw new StoreFailure(
                    StoreFailure.Kind.DAMAGED,
                    place,
                    "The record has " + faults.size() + (faults.size() == 1 ? " fault: " : " faults, the first: ")
                            + faults.get(0),
                    "Leave it as it is, and restore the newest backup");
        }
        return this;
    }
}
