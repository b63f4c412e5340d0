package org.drillsheaf.store.change;

import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import org.drillsheaf.store.sql.Database;
import org.drillsheaf.store.sql.Engine;

/**
 * A machine that has the record of a server open.
 *
 * @param from its address; empty for the server's own machine
 * @param since its first connection that is still open
 */
public record OpenDesk(String from, Instant since) {

    /** Oldest first; empty for a file, which one desk alone can have open. */
    public static List<OpenDesk> list(Database database) {
        if (database.engine() == Engine.H2) {
            return List.of();
        }
        return database.read(handle -> handle.createQuery("SELECT COALESCE(host(client_addr), '') AS place,"
                        + " MIN(backend_start) AS since FROM pg_stat_activity WHERE datname = current_database()"
                        + " AND backend_type = 'client backend' GROUP BY 1 ORDER BY 2")
                .map((row, context) -> new OpenDesk(row.getString("place"), since(row)))
                .list());
    }

    private static Instant since(java.sql.ResultSet row) throws SQLException {
        return row.getObject("since", OffsetDateTime.class).toInstant();
    }
}
