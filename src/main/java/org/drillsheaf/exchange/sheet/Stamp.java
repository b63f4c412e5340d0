package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the cells of a row held when they were exported, as short hashes: enough to know which cells somebody changed.
 *
 * @param id the drill that the row was made from
 * @param hashes key of the column to the hash of its cell
 */
record Stamp(String id, Map<String, String> hashes) {
    static final String KEY = "stamp";
    private static final int LENGTH = 8;

    Stamp {
        hashes = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(hashes));
    }

    /** First head row of the stamps: which columns they tell of, in their order. */
    static String head(List<SheetColumn> columns) {
        List<String> words = new ArrayList<>(List.of(KEY, "1"));
        columns.forEach(column -> words.add(column.key()));
        return String.join(" ", words);
    }

    /** The columns that a head names; empty when it is none. */
    static Optional<List<String>> columns(String head) {
        List<String> words = List.of(head.strip().split("\\s+"));
        return words.size() > 2 && words.get(0).equals(KEY) && words.get(1).equals("1")
                ? Optional.of(words.subList(2, words.size()))
                : Optional.empty();
    }

    static String write(String id, JsonNode drill, List<SheetColumn> columns) {
        StringBuilder stamp = new StringBuilder(id).append(' ');
        columns.forEach(column -> stamp.append(hash(CellText.normal(column.cell(drill)))));
        return stamp + " " + hash(stamp.toString());
    }

    /** Empty when the cell is not as it was written. */
    static Optional<Stamp> read(String cell, List<String> columns) {
        String[] words = cell.strip().split(" ");
        if (words.length != 3
                || words[1].length() != LENGTH * columns.size()
                || !hash(words[0] + " " + words[1]).equals(words[2])) {
            return Optional.empty();
        }
        Map<String, String> hashes = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            hashes.put(columns.get(i), words[1].substring(i * LENGTH, (i + 1) * LENGTH));
        }
        return Optional.of(new Stamp(words[0], hashes));
    }

    /** Whether a cell was changed; a cell of a column that was not there counts as changed when it holds anything. */
    boolean isChanged(String key, String text) {
        String hash = hashes.get(key);
        if (hash == null) {
            return !text.isEmpty();
        }
        if (hash(text).equals(hash)) {
            return false;
        }
        // Spreadsheets write days in the way of the country; whichever reading is meant, the same day is no change.
        return !key.equals(SheetColumns.REVIEWED_ON)
                || DayReadings.of(text).stream().noneMatch(day -> hash(day).equals(hash));
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, LENGTH / 2);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
