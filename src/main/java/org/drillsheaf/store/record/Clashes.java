package org.drillsheaf.store.record;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.drillsheaf.store.sql.StoreFailure;
import org.jdbi.v3.core.Handle;

/** The rows of clashes, inside the transactions of others. */
final class Clashes {
    private Clashes() {}

    /** Keeps what came second beside what stands in the record. */
    static PartClash keep(Handle handle, UUID client, Part mine, long baseVersion) {
        Part theirs = standing(handle, client, mine.key());
        UUID key = UUID.randomUUID();
        insert(handle, key, client, mine, baseVersion);
        return new PartClash(
                key,
                client,
                mine.key(),
                base(handle, client, mine.key(), baseVersion),
                theirs,
                mine.content(),
                mine.savedBy(),
                mine.savedAt());
    }

    /** Those of a client, oldest first. */
    static List<PartClash> open(Handle handle, UUID client) {
        return handle.createQuery("SELECT * FROM clash WHERE client_key = :client ORDER BY saved_at, clash_key")
                .bind("client", client)
                .map((row, context) -> {
                    PartKey key = new PartKey(row.getString("part"));
                    String body = row.getString("body");
                    return new PartClash(
                            row.getObject("clash_key", UUID.class),
                            client,
                            key,
                            base(handle, client, key, row.getLong("base_version")),
                            standing(handle, client, key),
                            body == null ? Optional.empty() : Optional.of(Content.parse(body)),
                            row.getString("saved_by"),
                            ClientRows.instant(row, "saved_at"));
                })
                .list();
    }

    static void remove(Handle handle, PartClash clash) {
        handle.createUpdate("DELETE FROM clash WHERE clash_key = :key")
                .bind("key", clash.key())
                .execute();
    }

    private static void insert(Handle handle, UUID key, UUID client, Part mine, long baseVersion) {
        handle.createUpdate(
                        """
                        INSERT INTO clash (clash_key, client_key, part, base_version, body, saved_by, saved_at)
                        VALUES (:key, :client, :part, :base, :body, :by, :at)""")
                .bind("key", key)
                .bind("client", client)
                .bind("part", mine.key().text())
                .bind("base", baseVersion)
                .bind("body", mine.content().map(Content::text).orElse(null))
                .bind("by", mine.savedBy())
                .bind("at", mine.savedAt().atOffset(ZoneOffset.UTC))
                .execute();
    }

    private static Optional<Content> base(Handle handle, UUID client, PartKey part, long version) {
        return ClientRows.version(handle, client, part, version).flatMap(Part::content);
    }

    private static Part standing(Handle handle, UUID client, PartKey part) {
        return ClientRows.part(handle, client, part)
                .orElseThrow(() -> new StoreFailure(
                        StoreFailure.Kind.REFUSED,
                        client.toString(),
                        "This client is no longer in the record",
                        "Look at the audit: the client was erased at another desk"));
    }
}
