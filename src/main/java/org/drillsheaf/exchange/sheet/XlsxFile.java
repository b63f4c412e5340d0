package org.drillsheaf.exchange.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.exchange.Incoming;

/** The sheet as XLSX. Nothing in it is ever evaluated: a formula is refused, and the reader sees a file only after {@link XlsxVetting}. */
public final class XlsxFile {
    static final String DRILLS = "drills";
    /** Day 0 of the numbers that spreadsheets write for days. */
    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);

    private static final double WIDE = 45;
    private static final double NARROW = 16;
    private static final List<String> HOW_TO = List.of(
            "Each row is one drill. Only cells that you change count; “drillsheaf catalogue import” shows what would"
                    + " change first.",
            "Several words or sentences in one cell stand on lines of their own.",
            "Every language of a list has the same number of lines; – stands for a line without text.",
            "A new drill: copy the whole row of a similar one with its last, hidden column, and change the id. It"
                    + " keeps that drill's pose.",
            "A drill is withdrawn with the word withdrawn in the column status. A row that is not there changes"
                    + " nothing.",
            "Poses, changed versions and tags do not stand here; they are edited in the drill's own file.",
            "Write values, no formulas. An apostrophe before = + - @ is no part of the text.");

    private XlsxFile() {}

    /** Writes the sheet and leaves the stream open. */
    public static void write(Layers layers, OutputStream out) throws IOException {
        SheetRows rows = new SheetRows(layers);
        Workbook workbook = new Workbook(out, "Drillsheaf", "1.0");
        Worksheet sheet = workbook.newWorksheet(DRILLS);
        rows.write((row, cells) -> {
            for (int column = 0; column < cells.size(); column++) {
                String cell = cells.get(column);
                if (row > 1 && cell.matches("\\d{1,6}")) {
                    sheet.value(row, column, Integer.valueOf(cell));
                } else if (!cell.isEmpty()) {
                    sheet.value(row, column, cell);
                }
            }
        });
        dress(sheet, rows);
        sheet.finish();
        Worksheet help = workbook.newWorksheet("how to");
        help.width(0, 120);
        for (int i = 0; i < HOW_TO.size(); i++) {
            help.value(i, 0, HOW_TO.get(i));
            help.style(i, 0).wrapText(true).verticalAlignment("top").set();
        }
        help.finish();
        workbook.finish();
    }

    private static void dress(Worksheet sheet, SheetRows rows) {
        int last = rows.columns().size();
        int end = rows.drills() + 1;
        for (int i = 0; i < last; i++) {
            SheetColumn column = rows.columns().get(i);
            boolean isWide = !column.language().isEmpty() || column.name().equals("conditions");
            sheet.width(i, isWide ? WIDE : NARROW);
        }
        sheet.range(0, 0, 0, last - 1).style().fontColor("808080").set();
        sheet.range(1, 0, 1, last - 1)
                .style()
                .bold()
                .wrapText(true)
                .fillColor("E8E8E8")
                .set();
        if (end > 1) {
            sheet.range(2, 0, end, last - 1)
                    .style()
                    .wrapText(true)
                    .verticalAlignment("top")
                    .set();
        }
        sheet.hideColumn(last);
        sheet.freezePane(1, 2);
    }

    /** @return empty when the whole file is refused; the reason then stands in {@code problems} */
    public static Optional<Incoming> read(Path path, Layers now, Problems problems) {
        if (!XlsxVetting.isFair(path, problems)) {
            return Optional.empty();
        }
        return table(path, problems).flatMap(table -> SheetReader.read(table, now, problems));
    }

    private static Optional<SheetTable> table(Path path, Problems problems) {
        String file = String.valueOf(path);
        try (ReadableWorkbook workbook = new ReadableWorkbook(path.toFile())) {
            Optional<Sheet> sheet =
                    workbook.findSheet(DRILLS).or(() -> workbook.getSheets().findFirst());
            if (sheet.isEmpty()) {
                problems.error(file, 0, "There is no sheet in the file", "Bring the file that was exported");
                return Optional.empty();
            }
            try (Stream<Row> rows = sheet.get().openStream()) {
                return Optional.of(table(file, rows.iterator(), workbook.isDate1904()));
            }
        } catch (IOException | RuntimeException e) {
            // The reader throws all kinds of exceptions at a damaged part; none of them tells a user anything.
            problems.error(
                    file,
                    0,
                    "The file cannot be read as XLSX",
                    "Save it again as XLSX in your spreadsheet, or as CSV UTF-8");
            return Optional.empty();
        }
    }

    private static SheetTable table(String file, Iterator<Row> rows, boolean isDate1904) {
        List<String> keys = new ArrayList<>();
        List<SheetTable.Line> lines = new ArrayList<>();
        while (rows.hasNext()) {
            Row row = rows.next();
            Map<Integer, String> cells = new HashMap<>();
            Map<Integer, String> bad = new HashMap<>();
            for (Cell cell : row) {
                if (cell != null && cell.getColumnIndex() < SheetTable.MOST_COLUMNS) {
                    boolean isDay = cell.getColumnIndex() < keys.size()
                            && keys.get(cell.getColumnIndex()).equals(SheetColumns.REVIEWED_ON);
                    put(cell, isDay && !isDate1904, cells, bad);
                }
            }
            if (row.getRowNum() == 1) {
                int most = cells.keySet().stream()
                        .mapToInt(Integer::intValue)
                        .max()
                        .orElse(-1);
                for (int i = 0; i <= most; i++) {
                    keys.add(cells.getOrDefault(i, ""));
                }
            } else {
                lines.add(new SheetTable.Line(row.getRowNum(), cells, bad));
            }
        }
        return new SheetTable(file, keys, lines);
    }

    private static void put(Cell cell, boolean isDay, Map<Integer, String> cells, Map<Integer, String> bad) {
        int column = cell.getColumnIndex();
        if (cell.getType() == CellType.FORMULA || cell.getFormula() != null) {
            bad.put(column, "The cell holds a formula, and formulas are never worked out here");
            return;
        }
        if (cell.getType() == CellType.ERROR) {
            bad.put(column, "The cell holds an error value");
            return;
        }
        String raw = cell.getType() == CellType.STRING ? cell.getText() : String.valueOf(cell.getRawValue());
        String text = cell.getType() == CellType.EMPTY ? "" : raw;
        if (cell.getType() == CellType.NUMBER && text.endsWith(".0")) {
            text = text.substring(0, text.length() - 2);
        }
        if (cell.getType() == CellType.BOOLEAN) {
            text = cell.asBoolean() ? "yes" : "no";
        }
        if (isDay && cell.getType() == CellType.NUMBER && text.matches("\\d{5}")) {
            text = DAY_ZERO.plusDays(Long.parseLong(text)).toString();
        }
        Optional<String> wrong = BadText.in(text);
        if (wrong.isPresent()) {
            bad.put(column, wrong.get());
        } else if (!text.isEmpty()) {
            cells.put(column, text);
        }
    }
}
