package org.drillsheaf.store.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** The rows behind {@link Clients}. */
final class ClientRows {
    static final RowMapper<ClientSummary> SUMMARY = (row, context) -> new ClientSummary(
            row.getObject("client_key", UUID.class),
            row.getString("client_id"),
            row.getString("full_name"),
            row.getString("coach"),
            row.getString("born"),
            Optional.ofNullable(row.getObject("last_visit", LocalDate.class)));

    static final RowMapper<Part> PART = (row, context) -> new Part(
            new PartKey(row.getString("part")),
            row.getLong("part_version"),
            Optional.ofNullable(row.getString("body")).map(Content::parse),
            row.getString("saved_by"),
            instant(row, "saved_at"));

    private ClientRows() {}

    static Instant instant(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    static Optional<ClientRecord> load(Handle handle, UUID key) {
        Optional<String> id = handle.createQuery("SELECT client_id FROM client WHERE client_key = :key")
                .bind("key", key)
                .mapTo(String.class)
                .findOne();
        return id.map(name -> {
            Map<PartKey, Part> parts = new TreeMap<>();
            handle.createQuery("SELECT * FROM client_part WHERE client_key = :key AND body IS NOT NULL")
                    .bind("key", key)
                    .map(PART)
                    .forEach(part -> parts.put(part.key(), part));
            return new ClientRecord(key, name, parts);
        });
    }

    static Optional<Part> part(Handle handle, UUID client, PartKey part) {
        return handle.createQuery("SELECT * FROM client_part WHERE client_key = :client AND part = :part")
                .bind("client", client)
                .bind("part", part.text())
                .map(PART)
                .findOne();
    }

    static Optional<Part> version(Handle handle, UUID client, PartKey part, long version) {
        return handle.createQuery("SELECT * FROM client_part_version WHERE client_key = :client AND part = :part"
                        + " AND part_version = :version")
                .bind("client", client)
                .bind("part", part.text())
                .bind("version", version)
                .map(PART)
                .findOne();
    }

    /** Whether this very save is in the record already. */
    static boolean isThere(Handle handle, PartSave save) {
        return version(handle, save.client(), save.part(), save.base() + 1)
                .filter(part -> part.content().equals(save.content())
                        && part.savedBy().equals(save.who())
                        && part.savedAt().equals(save.at()))
                .isPresent();
    }

    static void insertClient(Handle handle, UUID key, String id) {
        handle.createUpdate(
                        "INSERT INTO client (client_key, client_id, full_name, coach, born) VALUES (:key, :id, '', '',"
                                + " '')")
                .bind("key", key)
                .bind("id", id)
                .execute();
    }

    static boolean insertPart(Handle handle, UUID client, Part part) {
        insertPart(handle, "client_part", client, part);
        insertPart(handle, "client_part_version", client, part);
        return true;
    }

    /** Into the table of the newest versions or that of all; they have the same columns. */
    private static void insertPart(Handle handle, String table, UUID client, Part part) {
        handle.createUpdate("INSERT INTO " + table + " (client_key, part, part_version, body, saved_by, saved_at)"
                        + " VALUES (:client, :part, :version, :body, :by, :at)")
                .bind("client", client)
                .bind("part", part.key().text())
                .bind("version", part.version())
                .bind("body", part.content().map(Content::text).orElse(null))
                .bind("by", part.savedBy())
                .bind("at", part.savedAt().atOffset(ZoneOffset.UTC))
                .execute();
    }

    /** False when the row no longer has the version before this one. */
    static boolean updatePart(Handle handle, UUID client, Part part) {
        int rows = handle.createUpdate(
                        """
                        UPDATE client_part SET part_version = :version, body = :body, saved_by = :by, saved_at = :at
                        WHERE client_key = :client AND part = :part AND part_version = :before""")
                .bind("version", part.version())
                .bind("body", part.content().map(Content::text).orElse(null))
                .bind("by", part.savedBy())
                .bind("at", part.savedAt().atOffset(ZoneOffset.UTC))
                .bind("client", client)
                .bind("part", part.key().text())
                .bind("before", part.version() - 1)
                .execute();
        if (rows == 1) {
            insertPart(handle, "client_part_version", client, part);
        }
        return rows == 1;
    }

    /** Draws the columns of the list from the parts. */
    static void refreshSummary(Handle handle, UUID client) {
        JsonNode block = handle.createQuery(
                        "SELECT body FROM client_part WHERE client_key = :client AND part = 'client'")
                .bind("client", client)
                .mapTo(String.class)
                .findOne()
                .map(body -> Content.parse(body).json())
                .orElseGet(() -> Content.emptyMap().json());
        Optional<LocalDate> last = handle.createQuery(
                        "SELECT MAX(part) FROM client_part WHERE client_key = :client AND part LIKE 'visit:%'"
                                + " AND body IS NOT NULL")
                .bind("client", client)
                .mapTo(String.class)
                .findOne()
                .flatMap(part -> new PartKey(part).date());
        handle.createUpdate(
                        """
                        UPDATE client
                        SET client_id = CASE WHEN :id = '' THEN client_id ELSE :id END,
                            full_name = :name, coach = :coach, born = :born, last_visit = :last
                        WHERE client_key = :client""")
                .bind("id", block.path("id").asText(""))
                .bind("name", block.path("name").asText(""))
                .bind("coach", block.path("coach").asText(""))
                .bind("born", block.path("born").asText(""))
                .bind("last", last.orElse(null))
                .bind("client", client)
                .execute();
    }

    /** Names of fields for the audit: without the ids of conditions, which would say what somebody has. */
    static List<String> names(PartKey part, List<String> paths) {
        return part.equals(PartKey.CONDITIONS)
                ? paths.stream()
                        .map(p -> p.replaceFirst("^/[^/]+", "/*"))
                        .distinct()
                        .toList()
                : paths;
    }
}
