package org.drillsheaf.store.change;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.store.sql.Database;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The audit: written inside the transactions of others, read by anybody. Safe for several threads. */
public final class Audit {
    private static final String SEPARATOR = "\u001f";

    private static final RowMapper<AuditEntry> ENTRY = (row, context) -> new AuditEntry(
            row.getLong("entry_number"),
            row.getObject("entry_time", java.time.OffsetDateTime.class).toInstant(),
            row.getString("who"),
            AuditEntry.Deed.valueOf(row.getString("deed")),
            AuditEntry.Kind.valueOf(row.getString("kind")),
            row.getString("record_key"),
            row.getString("part"),
            row.getLong("part_version"),
            row.getString("fields").isEmpty()
                    ? List.of()
                    : List.of(row.getString("fields").split("\n")),
            row.getString("chain"));

    private final Database database;
    private final Clock clock;

    public Audit(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * What a transaction is going to put into the audit.
     *
     * @see AuditEntry
     */
    public record Note(
            String who,
            AuditEntry.Deed deed,
            AuditEntry.Kind kind,
            String record,
            String part,
            long version,
            List<String> fields) {}

    /**
     * Writes the entry of a transaction. Must be the last thing before its commit: from here on every other writer waits, and
     * a writer that waits for nothing afterwards cannot be part of a deadlock.
     */
    public void note(Handle handle, List<Note> notes) {
        if (notes.isEmpty()) {
            return;
        }
        // One question for both, and all entries in one go: each journey to the server is a wait for all other writers.
        Ledger ledger = handle.createUpdate("UPDATE ledger SET last_number = last_number + :count")
                .bind("count", notes.size())
                .executeAndReturnGeneratedKeys("last_number", "chain")
                .map((row, context) -> new Ledger(row.getLong("last_number"), row.getString("chain")))
                .one();
        long number = ledger.number() - notes.size();
        String chain = ledger.chain();
        Instant now = clock.instant().truncatedTo(ChronoUnit.MILLIS);
        PreparedBatch entries = handle.prepareBatch(
                """
                INSERT INTO audit (entry_number, entry_time, who, deed, kind, record_key, part, part_version, fields, chain)
                VALUES (:number, :time, :who, :deed, :kind, :record, :part, :version, :fields, :chain)""");
        for (Note note : notes) {
            number++;
            chain = chain(chain, number, now, note);
            add(entries, number, now, note, chain);
        }
        entries.execute();
        handle.createUpdate("UPDATE ledger SET chain = :chain")
                .bind("chain", chain)
                .execute();
    }

    /** Writes an entry about the record as a whole, in a transaction of its own. */
    public void noteOfStore(AuditEntry.Deed deed, String who) {
        noteAlone(new Note(who, deed, AuditEntry.Kind.STORE, "record", "", 0, List.of()));
    }

    /** Writes an entry about a whole client, in a transaction of its own. */
    public void noteOfClient(AuditEntry.Deed deed, UUID client, String who) {
        noteAlone(new Note(who, deed, AuditEntry.Kind.CLIENT, client.toString(), "", 0, List.of()));
    }

    private void noteAlone(Note note) {
        database.writeOnly(handle -> note(handle, List.of(note)));
    }

    private record Ledger(long number, String chain) {}

    private static void add(PreparedBatch entries, long number, Instant time, Note note, String chain) {
        entries.bind("number", number)
                .bind("time", time.atOffset(ZoneOffset.UTC))
                .bind("who", note.who())
                .bind("deed", note.deed().name())
                .bind("kind", note.kind().name())
                .bind("record", note.record())
                .bind("part", note.part())
                .bind("version", note.version())
                .bind("fields", String.join("\n", note.fields()))
                .bind("chain", chain)
                .add();
    }

    private static String chain(String before, long number, Instant time, Note note) {
        String text = String.join(
                SEPARATOR,
                before,
                Long.toString(number),
                Long.toString(time.toEpochMilli()),
                note.who(),
                note.deed().name(),
                note.kind().name(),
                note.record(),
                note.part(),
                Long.toString(note.version()),
                String.join("\n", note.fields()));
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Entries with a higher number, oldest first. */
    public List<AuditEntry> after(long number, int most) {
        return database.read(handle -> handle.createQuery(
                        "SELECT * FROM audit WHERE entry_number > :number ORDER BY entry_number LIMIT :most")
                .bind("number", number)
                .bind("most", most)
                .map(ENTRY)
                .list());
    }

    /** Everything that was done to one record, oldest first. */
    public List<AuditEntry> of(String record) {
        return database.read(
                handle -> handle.createQuery("SELECT * FROM audit WHERE record_key = :record ORDER BY entry_number")
                        .bind("record", record)
                        .map(ENTRY)
                        .list());
    }

    /** Number of the newest entry; 0 in a new record. */
    public long newest() {
        return database.read(handle -> handle.createQuery("SELECT last_number FROM ledger")
                .mapTo(Long.class)
                .one());
    }

    /** The first entry that does not follow from the one before; empty when the audit is whole. */
    public Optional<Long> firstBreak() {
        return database.read(handle -> {
            String chain = "0".repeat(64);
            long number = 0;
            try (var entries = handle.createQuery("SELECT * FROM audit ORDER BY entry_number")
                    .setFetchSize(1_000)
                    .map(ENTRY)
                    .iterator()) {
                while (entries.hasNext()) {
                    AuditEntry e = entries.next();
                    number++;
                    Note note = new Note(e.who(), e.deed(), e.kind(), e.record(), e.part(), e.version(), e.fields());
                    chain = chain(chain, number, e.time(), note);
                    if (e.number() != number || !e.chain().equals(chain)) {
                        return Optional.of(number);
                    }
                }
            }
            long last = handle.createQuery("SELECT last_number FROM ledger")
                    .mapTo(Long.class)
                    .one();
            return last == number ? Optional.empty() : Optional.of(number + 1);
        });
    }
}
