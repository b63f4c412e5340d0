package org.drillsheaf.store.record;

import java.time.Clock;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.library.HouseLayer;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.program.DrillHash;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.Audit.Note;
import org.drillsheaf.store.change.AuditEntry.Deed;
import org.drillsheaf.store.change.AuditEntry.Kind;
import org.drillsheaf.store.record.DrillRevision.Origin;
import org.drillsheaf.store.sql.Database;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** The house catalogue with every edition of every drill that there ever was. Safe for several threads. */
public final class Drills {
    private static final RowMapper<DrillRevision> REVISION = (row, context) -> new DrillRevision(
            row.getString("drill"),
            row.getString("sha256"),
            row.getInt("revision"),
            Origin.valueOf(row.getString("origin")),
            Content.parse(row.getString("body")).yaml(),
            row.getString("saved_by"),
            ClientRows.instant(row, "saved_at"));

    private static final RowMapper<Line> LINE = (row, context) -> new Line(
            row.getString("drill"), row.getString("sha256"), row.getLong("part_version"), row.getString("names"));

    private final Database database;
    private final Audit audit;
    private final Clock clock;

    public Drills(Database database, Audit audit, Clock clock) {
        this.database = database;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * A drill's line in the list.
     *
     * @param names every name in every language, on a line each
     * @param version of the line; saving names it
     */
    public record Line(String drill, String sha256, long version, String names) {}

    /** The drills of the catalogue as it stands, by id. */
    public List<Line> list() {
        return database.read(handle -> handle.createQuery("SELECT * FROM drill_current ORDER BY drill")
                .map(LINE)
                .list());
    }

    public Optional<Line> line(String drill) {
        return database.read(handle -> handle.createQuery("SELECT * FROM drill_current WHERE drill = :drill")
                .bind("drill", drill)
                .map(LINE)
                .findOne());
    }

    /** The files of the catalogue as it stands, by file name, for {@code CatalogueReader}. */
    public Map<String, String> files() {
        return database.read(handle -> {
            Map<String, String> files = new LinkedHashMap<>();
            handle.createQuery("SELECT r.* FROM drill_current c JOIN drill_revision r"
                            + " ON r.drill = c.drill AND r.sha256 = c.sha256 ORDER BY c.drill")
                    .map(REVISION)
                    .forEach(r -> files.put(r.drill() + ".yaml", r.yaml()));
            return files;
        });
    }

    /** Every edition of a drill, oldest first. */
    public List<DrillRevision> revisions(String drill) {
        return database.read(handle -> handle.createQuery(
                        "SELECT * FROM drill_revision WHERE drill = :drill ORDER BY saved_at, revision, sha256")
                .bind("drill", drill)
                .map(REVISION)
                .list());
    }

    public Optional<DrillRevision> revision(String drill, String sha256) {
        return database.read(
                handle -> handle.createQuery("SELECT * FROM drill_revision WHERE drill = :drill AND sha256 = :hash")
                        .bind("drill", drill)
                        .bind("hash", sha256)
                        .map(REVISION)
                        .findOne());
    }

    /**
     * Keeps a new edition and makes it the one in the catalogue.
     *
     * @param baseVersion version of the line that was loaded; 0 for a new drill
     * @return empty when another desk saved the drill first; both editions are then kept, theirs stands
     */
    public Optional<Line> save(Drill drill, Origin origin, long baseVersion, String who) {
        return database.write(handle -> {
            boolean added = keep(handle, drill, origin, who);
            String hash = DrillHash.of(drill);
            boolean stands = baseVersion == 0
                    ? handle.createUpdate("INSERT INTO drill_current (drill, sha256, part_version, names)"
                                            + " VALUES (:drill, :hash, 1, :names) ON CONFLICT DO NOTHING")
                                    .bind("drill", drill.id())
                                    .bind("hash", hash)
                                    .bind("names", names(drill))
                                    .execute()
                            == 1
                    : handle.createUpdate("UPDATE drill_current SET sha256 = :hash, part_version = part_version + 1,"
                                            + " names = :names WHERE drill = :drill AND part_version = :base")
                                    .bind("hash", hash)
                                    .bind("names", names(drill))
                                    .bind("drill", drill.id())
                                    .bind("base", baseVersion)
                                    .execute()
                            == 1;
            if (added || stands) {
                audit.note(handle, List.of(note(drill, stands ? Deed.CHANGED : Deed.CLASHED, baseVersion + 1, who)));
            }
            return stands ? Optional.of(new Line(drill.id(), hash, baseVersion + 1, names(drill))) : Optional.empty();
        });
    }

    /**
     * Takes in a whole catalogue as it stands. A drill that is there with the same content is left alone, and so is one whose edition
     * was kept before: another desk has gone on from it.
     *
     * @return how many drills were new or had a new edition
     */
    public int takeIn(Library library, String who) {
        Map<String, Line> there = new LinkedHashMap<>();
        list().forEach(line -> there.put(line.drill(), line));
        int taken = 0;
        for (Drill drill : library.catalogue().drills()) {
            Line line = there.get(drill.id());
            String hash = DrillHash.of(drill);
            boolean isKnown = line != null
                    && (line.sha256().equals(hash) || revision(drill.id(), hash).isPresent());
            if (!isKnown
                    && save(drill, origin(library, drill), line == null ? 0 : line.version(), who)
                            .isPresent()) {
                taken++;
            }
        }
        return taken;
    }

    private static Origin origin(Library library, Drill drill) {
        HouseLayer.Laid laid = library.layers().drills().get(drill.id());
        boolean isOurs = laid == null
                || laid.standing() == HouseLayer.Standing.REPLACED
                || laid.standing() == HouseLayer.Standing.ADDED;
        return isOurs ? Origin.HOUSE : Origin.STARTER;
    }

    /** Keeps an edition that a program was built from, whether or not the catalogue still has it. */
    void pin(Handle handle, Drill drill, String who, List<Note> notes) {
        if (keep(handle, drill, Origin.STARTER, who)) {
            notes.add(note(drill, Deed.ADDED, 0, who));
        }
    }

    private boolean keep(Handle handle, Drill drill, Origin origin, String who) {
        return handle.createUpdate(
                                """
                                INSERT INTO drill_revision (drill, sha256, revision, origin, body, saved_by, saved_at)
                                VALUES (:drill, :hash, :revision, :origin, :body, :by, :at) ON CONFLICT DO NOTHING""")
                        .bind("drill", drill.id())
                        .bind("hash", DrillHash.of(drill))
                        .bind("revision", drill.edition().revision())
                        .bind("origin", origin.name())
                        .bind("body", Content.of(drill.written().json()).text())
                        .bind("by", who)
                        .bind(
                                "at",
                                clock.instant().truncatedTo(ChronoUnit.MILLIS).atOffset(ZoneOffset.UTC))
                        .execute()
                == 1;
    }

    private static Note note(Drill drill, Deed deed, long version, String who) {
        return new Note(who, deed, Kind.DRILL, drill.id(), "", version, List.of());
    }

    private static String names(Drill drill) {
        List<String> names = new ArrayList<>(drill.name().byLanguage().values());
        names.add(drill.id());
        return String.join("\n", names);
    }
}
