package org.drillsheaf.store.record;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drillsheaf.store.change.Audit;
import org.drillsheaf.store.change.Audit.Note;
import org.drillsheaf.store.change.AuditEntry.Deed;
import org.drillsheaf.store.change.AuditEntry.Kind;
import org.drillsheaf.store.sql.Database;
import org.jdbi.v3.core.statement.Update;

/** The clinic's coaches and settings. Safe for several threads. */
public final class House {
    private final Database database;
    private final Audit audit;

    public House(Database database, Audit audit) {
        this.database = database;
        this.audit = audit;
    }

    /** All coaches by name, former ones too. */
    public List<Coach> coaches() {
        return database.read(handle -> handle.createQuery("SELECT * FROM coach ORDER BY coach_name")
                .map((row, context) -> new Coach(
                        row.getString("coach_name"),
                        row.getBoolean("is_lead"),
                        row.getBoolean("is_active"),
                        row.getLong("part_version")))
                .list());
    }

    /**
     * Adds a coach (version 0) or changes one.
     *
     * @return as kept; empty when another desk changed the coach first
     */
    public Optional<Coach> save(Coach coach, String who) {
        boolean saved = put(
                coach.version() == 0
                        ? "INSERT INTO coach (coach_name, is_lead, is_active, part_version)"
                                + " VALUES (:name, :lead, :active, 1) ON CONFLICT DO NOTHING"
                        : "UPDATE coach SET is_lead = :lead, is_active = :active, part_version = part_version + 1"
                                + " WHERE coach_name = :name AND part_version = :version",
                Map.of("name", coach.name(), "lead", coach.lead(), "active", coach.active()),
                coach.version(),
                Kind.COACH,
                coach.name(),
                who);
        return saved
                ? Optional.of(new Coach(coach.name(), coach.lead(), coach.active(), coach.version() + 1))
                : Optional.empty();
    }

    /**
     * One setting of the clinic.
     *
     * @param text whatever the reader of the setting understands, often YAML
     * @param version saving names it; 0 when new
     */
    public record Setting(String name, String text, long version) {}

    public Map<String, Setting> settings() {
        return database.read(handle -> {
            Map<String, Setting> settings = new TreeMap<>();
            handle.createQuery("SELECT * FROM setting")
                    .map((row, context) -> new Setting(
                            row.getString("setting_name"), row.getString("body"), row.getLong("part_version")))
                    .forEach(s -> settings.put(s.name(), s));
            return settings;
        });
    }

    /** @return as kept; empty when another desk changed the setting first */
    public Optional<Setting> save(Setting setting, String who) {
        boolean saved = put(
                setting.version() == 0
                        ? "INSERT INTO setting (setting_name, body, part_version) VALUES (:name, :body, 1)"
                                + " ON CONFLICT DO NOTHING"
                        : "UPDATE setting SET body = :body, part_version = part_version + 1"
                                + " WHERE setting_name = :name AND part_version = :version",
                Map.of("name", setting.name(), "body", setting.text()),
                setting.version(),
                Kind.SETTING,
                setting.name(),
                who);
        return saved
                ? Optional.of(new Setting(setting.name(), setting.text(), setting.version() + 1))
                : Optional.empty();
    }

    /** Whether the row was written: it was new (version 0), or still had this version. */
    private boolean put(String sql, Map<String, Object> values, long version, Kind kind, String name, String who) {
        return database.write(handle -> {
            Update update = handle.createUpdate(sql).bindMap(values);
            boolean written = (version == 0 ? update : update.bind("version", version)).execute() == 1;
            if (written) {
                Deed deed = version == 0 ? Deed.ADDED : Deed.CHANGED;
                audit.note(handle, List.of(new Note(who, deed, kind, name, "", version + 1, List.of())));
            }
            return written;
        });
    }
}
