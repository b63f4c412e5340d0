package org.drillsheaf.exchange.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.exchange.Origin;

/** Tells a problem of a drill with its row and column. Not safe for several threads. */
final class SheetOrigin implements Origin {
    private final String file;
    private final int row;
    private final String id;
    private final List<SheetColumn> columns;
    private final Map<String, Integer> numbers = new LinkedHashMap<>();
    private final List<String> pointers = new ArrayList<>();

    SheetOrigin(String file, int row, String id, List<SheetColumn> columns) {
        this.file = file;
        this.row = row;
        this.id = id;
        this.columns = List.copyOf(columns);
    }

    @Override
    public String name() {
        return file + "#" + row + "#" + id;
    }

    /** A cell has no lines, so every place gets a number of its own by which it is found again. */
    @Override
    public int line(String pointer) {
        return numbers.computeIfAbsent(pointer, p -> {
            pointers.add(p);
            return pointers.size();
        });
    }

    @Override
    public Problem told(Problem problem) {
        String pointer =
                problem.line() > 0 && problem.line() <= pointers.size() ? pointers.get(problem.line() - 1) : "";
        String place = column(pointer)
                .map(column -> "column “" + column.key() + "”")
                .orElse("“" + id + "”"
                        + (pointer.isEmpty() ? "" : ", " + pointer.substring(1).replace('/', '.')));
        return new Problem(problem.severity(), file, row, place + ": " + problem.what(), problem.remedy());
    }

    /** The column of the part; the one of the language where the place names one. */
    private Optional<SheetColumn> column(String pointer) {
        List<SheetColumn> ofPart = columns.stream()
                .filter(c -> pointer.equals(c.part().pointer())
                        || pointer.startsWith(c.part().pointer() + "/"))
                .toList();
        return ofPart.stream()
                .filter(c -> pointer.endsWith("/" + c.language()) || pointer.contains("/" + c.language() + "/"))
                .findFirst()
                .or(() -> ofPart.stream().findFirst());
    }
}
