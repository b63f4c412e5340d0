package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.YamlNode;
import org.drillsheaf.exchange.IncomingDrill;

/**
 * What somebody changed in one row since it was exported.
 *
 * @param id as it stands in the row; another one than the stamp's makes a new drill
 * @param columns place of the column to what it holds
 */
record RowEdit(String file, SheetTable.Line line, String id, Stamp stamp, Map<Integer, SheetColumn> columns) {

    /**
     * The drill with the changed cells, and as it was before them. A cell that was changed here too since the export counts as
     * unknown before, so that it clashes.
     *
     * @param mine the drill as it is now
     * @param rejected takes the mistakes of the row
     * @return empty when a cell cannot be read
     */
    Optional<IncomingDrill> drill(YamlNode mine, List<Problem> rejected) {
        boolean isCopy = !id.equals(stamp.id());
        JsonNode now = mine.json();
        ObjectNode theirs = now.deepCopy();
        ObjectNode base = now.deepCopy();
        boolean isReadable = true;
        for (List<Integer> places : byPart()) {
            Map<String, String> edited = new LinkedHashMap<>();
            Map<String, String> before = new LinkedHashMap<>();
            boolean isEdited = false;
            boolean isUnknown = false;
            for (int place : places) {
                SheetColumn column = column(place);
                String cell = CellText.plain(line.cell(place));
                String here = CellText.normal(column.cell(now));
                boolean theyChanged = stamp.isChanged(column.key(), cell) && !cell.equals(here);
                boolean bothChanged = theyChanged && stamp.isChanged(column.key(), here);
                isEdited |= theyChanged;
                isUnknown |= bothChanged;
                edited.put(column.language(), theyChanged ? cell : here);
                before.put(column.language(), bothChanged ? "" : here);
            }
            if (isEdited) {
                Part part = column(places.get(0)).part();
                isReadable &= put(part, theirs, edited, places, rejected);
                if (isUnknown && !isCopy) {
                    forget(part, base, before);
                }
            }
        }
        if (isCopy) {
            theirs.put("id", id).put("revision", 1);
        }
        List<SheetColumn> all = List.copyOf(columns.values());
        return isReadable
                ? Optional.of(new IncomingDrill(
                        id,
                        isCopy ? List.of() : List.of(base),
                        theirs,
                        Optional.empty(),
                        new SheetOrigin(file, line.number(), id, all)))
                : Optional.empty();
    }

    private SheetColumn column(int place) {
        SheetColumn column = columns.get(place);
        if (column == null) {
            throw new IllegalArgumentException("no column at " + place);
        }
        return column;
    }

    /** The places of the columns that show one part together; the id is no part that a cell changes. */
    private Iterable<List<Integer>> byPart() {
        Map<String, List<Integer>> byPart = new LinkedHashMap<>();
        columns.forEach((place, column) -> {
            if (!column.name().equals(SheetColumns.ID)) {
                byPart.computeIfAbsent(column.name(), name -> new ArrayList<>()).add(place);
            }
        });
        return byPart.values();
    }

    private boolean put(
            Part part, ObjectNode drill, Map<String, String> cells, List<Integer> places, List<Problem> rejected) {
        try {
            part.put(drill, cells);
            return true;
        } catch (CellMistake e) {
            List<String> keys =
                    places.stream().map(place -> column(place).key()).toList();
            String shown = keys.size() == 1 ? keys.get(0) : String.join(", ", keys);
            rejected.add(Problem.error(file, line.number(), "column “" + shown + "”: " + e.what(), e.remedy()));
            return false;
        }
    }

    private static void forget(Part part, ObjectNode base, Map<String, String> before) {
        try {
            part.put(base, before);
        } catch (CellMistake e) {
            Part.set(base, part.pointer(), base.path("nothing"));
        }
    }
}
