package org.drillsheaf.store.record;

import java.time.Clock;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.Audit.Note;
import org.drillsheaf.store.change.AuditEntry.Deed;
import org.drillsheaf.store.change.AuditEntry.Kind;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.StoreFailure;
import org.jdbi.v3.core.Handle;

/**
 * Erasing a client: every value and document, of every version. The audit keeps who did what when to this key, without values.
 * Safe for several threads.
 */
public final class Erasures {
    /** In the order in which rows may go. */
    private static final List<String> DELETIONS = List.of(
            "DELETE FROM document_input WHERE document_key IN (SELECT document_key FROM document WHERE client_key ="
                    + " :client)",
            "DELETE FROM document WHERE client_key = :client",
            "DELETE FROM program_drill WHERE program_key IN (SELECT program_key FROM program WHERE client_key ="
                    + " :client)",
            "DELETE FROM program WHERE client_key = :client",
            "DELETE FROM reading WHERE client_key = :client",
            "DELETE FROM clash WHERE client_key = :client",
            "DELETE FROM client_part_version WHERE client_key = :client",
            "DELETE FROM client_part WHERE client_key = :client",
            "DELETE FROM client WHERE client_key = :client");

    private final Database database;
    private final Audit audit;
    private final Clock clock;

    public Erasures(Database database, Audit audit, Clock clock) {
        this.database = database;
        this.audit = audit;
        this.clock = clock;
    }

    /** Every client that was erased, the last one first. */
    public List<Erasure> list() {
        return database.read(handle -> handle.createQuery("SELECT * FROM erasure ORDER BY erased_at DESC, client_key")
                .map((row, context) -> new Erasure(
                        row.getObject("client_key", UUID.class),
                        row.getString("erased_by"),
                        ClientRows.instant(row, "erased_at")))
                .list());
    }

    /** Erases a client for good. */
    public Erasure erase(UUID client, String who) {
        Erasure erasure = new Erasure(client, who, clock.instant().truncatedTo(ChronoUnit.MILLIS));
        database.writeOnly(handle -> {
            if (!isThere(handle, client)) {
                throw new StoreFailure(
                        StoreFailure.Kind.REFUSED,
                        client.toString(),
                        "There is no such client in the record",
                        "Look at the audit; the client may have been erased before");
            }
            erase(handle, erasure);
        });
        database.clearUpErased();
        return erasure;
    }

    /**
     * Erases again those that are back, as after a restore.
     *
     * @return how many were back
     */
    public int repeat(List<Erasure> erasures) {
        int back = database.write(handle -> {
            int count = 0;
            for (Erasure erasure : erasures) {
                if (isThere(handle, erasure.client())) {
                    count++;
                }
                erase(handle, erasure);
            }
            return count;
        });
        if (back > 0) {
            database.clearUpErased();
        }
        return back;
    }

    private static boolean isThere(Handle handle, UUID client) {
        return handle.createQuery("SELECT COUNT(*) FROM client WHERE client_key = :client")
                        .bind("client", client)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    private void erase(Handle handle, Erasure erasure) {
        List<String> hashes = handle.createQuery(
                        """
                        SELECT pdf_sha256 FROM document WHERE client_key = :client
                        UNION SELECT i.sha256 FROM document_input i
                        JOIN document d ON d.document_key = i.document_key WHERE d.client_key = :client""")
                .bind("client", erasure.client())
                .mapTo(String.class)
                .list();
        for (String deletion : DELETIONS) {
            handle.createUpdate(deletion).bind("client", erasure.client()).execute();
        }
        Contents.removeUnused(handle, hashes);
        int isNew = handle.createUpdate("INSERT INTO erasure (client_key, erased_by, erased_at)"
                        + " VALUES (:client, :by, :at) ON CONFLICT DO NOTHING")
                .bind("client", erasure.client())
                .bind("by", erasure.by())
                .bind("at", erasure.at().atOffset(ZoneOffset.UTC))
                .execute();
        if (isNew == 1) {
            audit.note(
                    handle,
                    List.of(new Note(
                            erasure.by(),
                            Deed.ERASED,
                            Kind.CLIENT,
                            erasure.client().toString(),
                            "",
                            0,
                            List.of())));
        }
    }
}
