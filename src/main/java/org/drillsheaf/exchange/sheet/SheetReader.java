package org.drillsheaf.exchange.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Ids;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.IncomingDrill;

/**
 * Makes drills of the rows of a sheet. Only cells that somebody changed since the export count; a row that is not there says
 * nothing about its drill.
 */
public final class SheetReader {
    private final SheetTable table;
    private final Layers now;
    private final Map<Integer, SheetColumn> columns = new LinkedHashMap<>();
    private final List<IncomingDrill> drills = new ArrayList<>();
    private final List<Problem> rejected = new ArrayList<>();
    private final Map<String, Integer> rows = new HashMap<>();

    private SheetReader(SheetTable table, Layers now) {
        this.table = table;
        this.now = now;
    }

    /**
     * @param now the catalogue as it is now, from which the sheet takes what no cell holds
     * @return empty when the whole sheet is refused; the reason then stands in {@code problems}
     */
    static Optional<Incoming> read(SheetTable table, Layers now, Problems problems) {
        return new SheetReader(table, now).incoming(problems);
    }

    private Optional<Incoming> incoming(Problems problems) {
        Problems own = new Problems();
        Map<String, Integer> places = heads(own);
        Integer stampPlace = places.get(Stamp.KEY);
        Integer idPlace = places.get(SheetColumns.ID);
        if (idPlace == null || stampPlace == null) {
            own.error(
                    table.file(),
                    1,
                    "The first row has no column “" + (idPlace == null ? SheetColumns.ID : Stamp.KEY) + "”",
                    "Leave the first row and the last column as they were exported");
        }
        problems.addAll(own.all());
        if (own.hasErrors() || idPlace == null || stampPlace == null) {
            return Optional.empty();
        }
        List<String> stamped = Stamp.columns(table.keys().get(stampPlace)).orElse(List.of());
        for (SheetTable.Line line : table.lines()) {
            String id = CellText.plain(line.cell(idPlace));
            boolean isTitles = line.number() == 2 && !id.matches("[a-z0-9-]*");
            boolean isEmpty = line.cells().values().stream().allMatch(String::isBlank);
            if (!isTitles && (!isEmpty || !line.bad().isEmpty())) {
                row(line, id, Stamp.read(line.cell(stampPlace), stamped));
            }
        }
        long silent = now.drills().keySet().stream()
                .filter(id -> !rows.containsKey(id))
                .count();
        List<Problem> notes = silent == 0
                ? List.of()
                : List.of(Problem.advice(
                        table.file(),
                        0,
                        silent + " drills of the catalogue have no row here and stay as they are",
                        "To withdraw a drill, write “withdrawn” in its column “status”"));
        return Optional.of(new Incoming(drills, rejected, notes));
    }

    private Map<String, Integer> heads(Problems own) {
        Map<String, Integer> places = new HashMap<>();
        for (int i = 0; i < table.keys().size(); i++) {
            String key = table.keys().get(i).strip();
            if (key.isEmpty()) {
                continue;
            }
            Optional<SheetColumn> column = SheetColumns.find(key);
            boolean isStamp = Stamp.columns(key).isPresent();
            if (column.isEmpty() && !isStamp) {
                List<String> known = SheetColumns.of(List.of("en", "es")).stream()
                        .map(SheetColumn::key)
                        .toList();
                own.error(
                        table.file(),
                        1,
                        "There is no column “" + (key.length() > 60 ? key.substring(0, 60) + "…" : key) + "”",
                        Ids.nearest(key, known)
                                .map(near -> "Write “" + near + "” if that was meant")
                                .orElse("Leave the first row as it was exported, or remove the column"));
                continue;
            }
            int place = i;
            column.ifPresent(c -> columns.put(place, c));
            if (places.put(isStamp ? Stamp.KEY : key, i) != null) {
                own.error(
                        table.file(),
                        1,
                        "The column “" + (isStamp ? Stamp.KEY : key) + "” is there twice",
                        "Keep one of the two");
            }
        }
        return places;
    }

    private void row(SheetTable.Line line, String id, Optional<Stamp> stamp) {
        if (!line.bad().isEmpty()) {
            line.bad()
                    .forEach((place, what) -> reject(
                            line,
                            "column “"
                                    + Optional.ofNullable(columns.get(place))
                                            .map(SheetColumn::key)
                                            .orElse("" + (place + 1))
                                    + "”: " + what,
                            "Write the value itself into the cell"));
            return;
        }
        Integer before = rows.putIfAbsent(id, line.number());
        if (before != null) {
            reject(line, "The drill “" + id + "” stands in row " + before + " already", "Keep one row for each drill");
        } else if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*") || id.length() > 60) {
            reject(
                    line,
                    "column “id”: “" + (id.length() > 60 ? id.substring(0, 60) + "…" : id) + "” is no id",
                    "Write small letters, digits and hyphens, for example sit-hum");
        } else if (stamp.isEmpty()) {
            reject(
                    line,
                    "The row has lost its stamp in the last column, so nobody can say what was changed in it",
                    now.drills().containsKey(id)
                            ? "Export again and edit that sheet"
                            : "A new drill needs a pose: copy the whole row of a similar drill, and change its id");
        } else if (!now.drills().containsKey(stamp.get().id())) {
            reject(
                    line,
                    "The row was made from the drill “" + stamp.get().id() + "”, which is not in the catalogue",
                    "Bring an archive instead: a sheet holds no poses");
        } else if (!id.equals(stamp.get().id()) && now.drills().containsKey(id)) {
            reject(
                    line,
                    "The row was made from the drill “" + stamp.get().id() + "” and is called like another one",
                    "Give it an id that is not used yet, or write “"
                            + stamp.get().id() + "”");
        } else {
            new RowEdit(table.file(), line, id, stamp.get(), columns)
                    .drill(now.drills().get(stamp.get().id()).node(), rejected)
                    .ifPresent(drills::add);
        }
    }

    private void reject(SheetTable.Line line, String what, String remedy) {
        rejected.add(Problem.error(table.file(), line.number(), what, remedy));
    }
}
