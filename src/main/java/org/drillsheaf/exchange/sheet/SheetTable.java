package org.drillsheaf.exchange.sheet;

import java.util.List;
import java.util.Map;

/**
 * A sheet as it was read, before anybody asks what it means.
 *
 * @param file name of the file for messages
 * @param keys first head row
 */
record SheetTable(String file, List<String> keys, List<Line> lines) {
    /** More drills than any house will have; own setting. */
    static final int MOST_ROWS = 20_000;
    /** Columns for every part in thirty languages; own setting. */
    static final int MOST_COLUMNS = 500;

    static final String TOO_MANY_ROWS = "The sheet has more than " + MOST_ROWS + " rows";
    static final String TOO_MANY_ROWS_REMEDY = "Bring the sheet that was exported; remove empty rows that look filled";

    SheetTable {
        keys = List.copyOf(keys);
        lines = List.copyOf(lines);
    }

    /**
     * One row below the first.
     *
     * @param number of the row as a spreadsheet counts, from 1
     * @param cells place of the column to its text, cells that hold nothing left out
     * @param bad place of the column to what its cell holds instead of a text
     */
    record Line(int number, Map<Integer, String> cells, Map<Integer, String> bad) {
        Line {
            cells = Map.copyOf(cells);
            bad = Map.copyOf(bad);
        }

        String cell(int column) {
            return cells.getOrDefault(column, "");
        }
    }
}
