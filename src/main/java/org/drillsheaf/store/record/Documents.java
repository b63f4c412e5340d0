package org.drillsheaf.store.record;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.Audit.Note;
import org.drillsheaf.store.change.AuditEntry.Deed;
import org.drillsheaf.store.change.AuditEntry.Kind;
import org.drillsheaf.store.sql.Database;
import org.jdbi.v3.core.Handle;

/** What was handed out: frozen inputs, PDF and hashes. Kept unchanged. Safe for several threads. */
public final class Documents {
    private final Database database;
    private final Audit audit;
    private final Clock clock;

    public Documents(Database database, Audit audit, Clock clock) {
        this.database = database;
        this.audit = audit;
        this.clock = clock;
    }

    /** Keeps a document at the moment when it is given to the client. */
    public HandedOut handOut(HandedOut.Draft draft, String who) {
        UUID key = UUID.randomUUID();
        return database.write(handle -> {
            String pdf = Contents.keep(handle, draft.pdf());
            handle.createUpdate(
                            """
                            INSERT INTO document (document_key, client_key, program_key, kind, document_date, language, paper,
                                                  drawn_by, pdf_sha256, handed_out_by, handed_out_at)
                            VALUES (:key, :client, CAST(:program AS UUID), :kind, :date, :language, :paper,
                                    :drawn, :pdf, :by, :at)""")
                    .bind("key", key)
                    .bind("client", draft.client())
                    .bind("program", draft.program().orElse(null))
                    .bind("kind", draft.kind())
                    .bind("date", draft.date())
                    .bind("language", draft.language())
                    .bind("paper", draft.paper())
                    .bind("drawn", draft.drawnBy())
                    .bind("pdf", pdf)
                    .bind("by", who)
                    .bind("at", clock.instant().truncatedTo(ChronoUnit.MILLIS).atOffset(ZoneOffset.UTC))
                    .execute();
            draft.inputs().forEach((name, bytes) -> handle.createUpdate(
                            "INSERT INTO document_input (document_key, input_name, sha256) VALUES (:key, :name, :hash)")
                    .bind("key", key)
                    .bind("name", name)
                    .bind("hash", Contents.keep(handle, bytes))
                    .execute());
            audit.note(handle, List.of(note(who, Deed.HANDED_OUT, draft.client(), draft.kind())));
            return load(handle, key).orElseThrow();
        });
    }

    /** Notes that a document was printed once more. */
    public void printedAgain(UUID document, String who) {
        database.writeOnly(handle -> {
            HandedOut kept = load(handle, document).orElseThrow();
            audit.note(handle, List.of(note(who, Deed.PRINTED_AGAIN, kept.client(), kept.kind())));
        });
    }

    /** Documents of a client, newest first. */
    public List<HandedOut> list(UUID client) {
        return database.read(handle -> handle
                .createQuery("SELECT document_key FROM document WHERE client_key = :client"
                        + " ORDER BY handed_out_at DESC, document_key")
                .bind("client", client)
                .mapTo(UUID.class)
                .list()
                .stream()
                .map(key -> load(handle, key).orElseThrow())
                .toList());
    }

    public Optional<HandedOut> load(UUID document) {
        return database.read(handle -> load(handle, document));
    }

    /** The PDF as it was handed out, checked against its hash. */
    public byte[] pdf(HandedOut document) {
        return database.read(handle -> Contents.load(handle, document.pdfHash()));
    }

    /** What it was drawn from, checked against the hashes. */
    public Map<String, byte[]> inputs(HandedOut document) {
        return database.read(handle -> {
            Map<String, byte[]> inputs = new TreeMap<>();
            document.inputHashes().forEach((name, hash) -> inputs.put(name, Contents.load(handle, hash)));
            return inputs;
        });
    }

    /** SHA-256 of some bytes as this record writes it. */
    public static String hash(byte[] bytes) {
        return Contents.hash(bytes);
    }

    /** Whether the bytes of a PDF or an input are still what was kept; for checking the whole record. */
    public static boolean isWhole(Handle handle, String hash) {
        return Contents.isWhole(handle, hash);
    }

    private static Optional<HandedOut> load(Handle handle, UUID key) {
        Map<String, String> inputs = new TreeMap<>();
        handle.createQuery("SELECT input_name, sha256 FROM document_input WHERE document_key = :key")
                .bind("key", key)
                .map((row, context) -> Map.entry(row.getString("input_name"), row.getString("sha256")))
                .forEach(e -> inputs.put(e.getKey(), e.getValue()));
        return handle.createQuery("SELECT * FROM document WHERE document_key = :key")
                .bind("key", key)
                .map((row, context) -> new HandedOut(
                        key,
                        row.getObject("client_key", UUID.class),
                        Optional.ofNullable(row.getObject("program_key", UUID.class)),
                        row.getString("kind"),
                        row.getObject("document_date", LocalDate.class),
                        row.getString("language"),
                        row.getString("paper"),
                        row.getString("drawn_by"),
                        row.getString("pdf_sha256"),
                        inputs,
                        row.getString("handed_out_by"),
                        ClientRows.instant(row, "handed_out_at")))
                .findOne();
    }

    private static Note note(String who, Deed deed, UUID client, String kind) {
        return new Note(who, deed, Kind.DOCUMENT, client.toString(), kind, 0, List.of());
    }
}
