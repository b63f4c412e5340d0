package org.drillsheaf.store.upkeep;

import java.sql.Date;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.jspecify.annotations.Nullable;

/** Every table of the record, read row by row into values that both engines understand. */
final class Tables {
    /** A table stands behind those that it points to. */
    static final List<String> NAMES = List.of(
            "ledger",
            "audit",
            "client",
            "client_part",
            "client_part_version",
            "clash",
            "reading",
            "drill_revision",
            "drill_current",
            "program",
            "program_drill",
            "content",
            "content_chunk",
            "document",
            "document_input",
            "coach",
            "setting",
            "erasure");

    private static final int ROWS_AT_ONCE = 200;

    private Tables() {}

    /** Column to value. */
    record Row(Map<String, @Nullable Object> values) {}

    static Map<String, Long> counts(Handle handle) {
        Map<String, Long> counts = new LinkedHashMap<>();
        for (String table : NAMES) {
            counts.put(
                    table,
                    handle.createQuery("SELECT COUNT(*) FROM " + table)
                            .mapTo(Long.class)
                            .one());
        }
        return counts;
    }

    /** Hands over all rows of a table, a few in memory at a time; needs a transaction around it. */
    static void read(Handle handle, String table, Consumer<Row> rows) {
        handle.createQuery("SELECT * FROM " + table)
                .setFetchSize(ROWS_AT_ONCE)
                .map((result, context) -> row(result))
                .forEach(rows);
    }

    private static Row row(ResultSet result) throws SQLException {
        ResultSetMetaData columns = result.getMetaData();
        Map<String, @Nullable Object> values = new LinkedHashMap<>();
        for (int i = 1; i <= columns.getColumnCount(); i++) {
            values.put(columns.getColumnLabel(i), value(result.getObject(i)));
        }
        return new Row(values);
    }

    private static @Nullable Object value(@Nullable Object value) {
        if (value instanceof Timestamp time) {
            return time.toInstant().atOffset(ZoneOffset.UTC);
        }
        if (value instanceof OffsetDateTime time) {
            return time.withOffsetSameInstant(ZoneOffset.UTC);
        }
        return value instanceof Date date ? date.toLocalDate() : value;
    }

    /** Writes rows into a table. */
    static void write(Handle handle, String table, List<Row> rows) {
        if (rows.isEmpty()) {
            return;
        }
        List<String> columns = new ArrayList<>(rows.get(0).values().keySet());
        String sql = "INSERT INTO " + table + " (" + String.join(", ", columns) + ") VALUES ("
                + String.join(", ", java.util.Collections.nCopies(columns.size(), "?")) + ")";
        PreparedBatch insert = handle.prepareBatch(sql);
        for (Row row : rows) {
            for (int i = 0; i < columns.size(); i++) {
                insert.bind(i, row.values().get(columns.get(i)));
            }
            insert.add();
        }
        insert.execute();
    }
}
