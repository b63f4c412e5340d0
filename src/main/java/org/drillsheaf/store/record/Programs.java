package org.drillsheaf.store.record;

import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.program.DrillHash;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.Program;
import org.drillsheaf.program.ProgramYaml;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.Audit.Note;
import org.drillsheaf.store.change.AuditEntry.Deed;
import org.drillsheaf.store.change.AuditEntry.Kind;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.StoreFailure;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Programs with every version, and readings as they were given. Safe for several threads. */
public final class Programs {
    private static final RowMapper<KeptProgram> PROGRAM = (row, context) -> new KeptProgram(
            row.getObject("program_key", UUID.class),
            row.getObject("client_key", UUID.class),
            row.getObject("visit_date", LocalDate.class),
            row.getInt("program_version"),
            row.getString("body"),
            row.getString("saved_by"),
            ClientRows.instant(row, "saved_at"),
            Optional.ofNullable(row.getString("signed_by")),
            Optional.ofNullable(row.getObject("signed_at", OffsetDateTime.class))
                    .map(OffsetDateTime::toInstant));

    private final Database database;
    private final Audit audit;
    private final Drills drills;
    private final Clock clock;

    public Programs(Database database, Audit audit, Drills drills, Clock clock) {
        this.database = database;
        this.audit = audit;
        this.drills = drills;
        this.clock = clock;
    }

    /**
     * Keeps a program as the next version for its visit and pins the editions of its drills.
     *
     * @param catalogue it was built from
     */
    public KeptProgram save(UUID client, Program program, Catalogue catalogue, String who) {
        UUID key = UUID.randomUUID();
        String yaml = ProgramYaml.write(program);
        return database.write(handle -> {
            int version = 1
                    + handle.createQuery("SELECT COALESCE(MAX(program_version), 0) FROM program"
                                    + " WHERE client_key = :client AND visit_date = :visit")
                            .bind("client", client)
                            .bind("visit", program.date())
                            .mapTo(Integer.class)
                            .one();
            handle.createUpdate(
                            """
                            INSERT INTO program (program_key, client_key, visit_date, program_version, body, saved_by, saved_at)
                            VALUES (:key, :client, :visit, :version, :body, :by, :at)""")
                    .bind("key", key)
                    .bind("client", client)
                    .bind("visit", program.date())
                    .bind("version", version)
                    .bind("body", yaml)
                    .bind("by", who)
                    .bind("at", now())
                    .execute();
            List<Note> notes = new ArrayList<>();
            pin(handle, key, program, catalogue, who, notes);
            notes.add(note(who, Deed.ADDED, client, program.date(), version));
            audit.note(handle, notes);
            return load(handle, key).orElseThrow();
        });
    }

    private void pin(Handle handle, UUID key, Program program, Catalogue catalogue, String who, List<Note> notes) {
        Set<String> pinned = new TreeSet<>();
        for (Entry entry :
                program.phases().stream().flatMap(p -> p.entries().stream()).toList()) {
            if (!pinned.add(entry.drill())) {
                continue;
            }
            Drill drill = catalogue
                    .drill(entry.drill())
                    .filter(d -> DrillHash.of(d).equals(entry.hash()))
                    .orElseThrow(() -> new StoreFailure(
                            StoreFailure.Kind.REFUSED,
                            entry.drill(),
                            "The program was built from another edition of this drill than the catalogue has",
                            "Build the program again"));
            drills.pin(handle, drill, who, notes);
            handle.createUpdate("INSERT INTO program_drill (program_key, drill, sha256) VALUES (:key, :drill, :hash)")
                    .bind("key", key)
                    .bind("drill", entry.drill())
                    .bind("hash", entry.hash())
                    .execute();
        }
    }

    /** All versions for all visits, newest visit first, its newest version first. */
    public List<KeptProgram> list(UUID client) {
        return database.read(handle -> handle.createQuery("SELECT * FROM program WHERE client_key = :client"
                        + " ORDER BY visit_date DESC, program_version DESC")
                .bind("client", client)
                .map(PROGRAM)
                .list());
    }

    /** The newest version for a visit. */
    public Optional<KeptProgram> newest(UUID client, LocalDate visit) {
        return list(client).stream().filter(p -> p.visit().equals(visit)).findFirst();
    }

    public Optional<KeptProgram> load(UUID program) {
        return database.read(handle -> load(handle, program));
    }

    private static Optional<KeptProgram> load(Handle handle, UUID key) {
        return handle.createQuery("SELECT * FROM program WHERE program_key = :key")
                .bind("key", key)
                .map(PROGRAM)
                .findOne();
    }

    /** The editions of the drills that a program was built from. */
    public List<DrillRevision> pinned(UUID program) {
        List<String[]> pins = database.read(handle -> handle.createQuery(
                        "SELECT drill, sha256 FROM program_drill WHERE program_key = :key ORDER BY drill")
                .bind("key", program)
                .map((row, context) -> new String[] {row.getString("drill"), row.getString("sha256")})
                .list());
        return pins.stream()
                .map(pin -> drills.revision(pin[0], pin[1]).orElseThrow())
                .toList();
    }

    /** Notes which coach checked the program. A signed program stays signed. */
    public KeptProgram sign(UUID program, String coach) {
        return database.write(handle -> {
            int rows = handle.createUpdate("UPDATE program SET signed_by = :by, signed_at = :at"
                            + " WHERE program_key = :key AND signed_by IS NULL")
                    .bind("by", coach)
                    .bind("at", now())
                    .bind("key", program)
                    .execute();
            KeptProgram kept = load(handle, program).orElseThrow();
            if (rows == 1) {
                audit.note(handle, List.of(note(coach, Deed.SIGNED, kept.client(), kept.visit(), kept.version())));
            }
            return kept;
        });
    }

    /** Keeps a reading as it was given to the coach, when it differs from the last one kept for the visit. */
    public void keepReading(UUID client, LocalDate visit, String text, String who) {
        database.writeOnly(handle -> {
            List<String> before = readings(handle, client, visit);
            if (!before.isEmpty() && before.get(before.size() - 1).equals(text)) {
                return;
            }
            int version = before.size() + 1;
            handle.createUpdate(
                            """
                            INSERT INTO reading (client_key, visit_date, reading_version, body, saved_by, saved_at)
                            VALUES (:client, :visit, :version, :body, :by, :at)""")
                    .bind("client", client)
                    .bind("visit", visit)
                    .bind("version", version)
                    .bind("body", text)
                    .bind("by", who)
                    .bind("at", now())
                    .execute();
            audit.note(
                    handle,
                    List.of(new Note(
                            who,
                            Deed.ADDED,
                            Kind.READING,
                            client.toString(),
                            PartKey.visit(visit).text(),
                            version,
                            List.of())));
        });
    }

    /** The readings kept for a visit, oldest first. */
    public List<String> readings(UUID client, LocalDate visit) {
        return database.read(handle -> readings(handle, client, visit));
    }

    private static List<String> readings(Handle handle, UUID client, LocalDate visit) {
        return handle.createQuery("SELECT body FROM reading WHERE client_key = :client AND visit_date = :visit"
                        + " ORDER BY reading_version")
                .bind("client", client)
                .bind("visit", visit)
                .mapTo(String.class)
                .list();
    }

    private static Note note(String who, Deed deed, UUID client, LocalDate visit, int version) {
        return new Note(
                who, deed, Kind.PROGRAM, client.toString(), PartKey.visit(visit).text(), version, List.of());
    }

    private OffsetDateTime now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS).atOffset(ZoneOffset.UTC);
    }
}
