package org.drillsheaf.exchange.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.Layers;
import org.drillsheaf.exchange.Incoming;

/** The sheet as CSV: UTF-8 with a mark in front, so that spreadsheets see it; commas, semicolons or tabs on the way in. */
public final class CsvFile {
    /** Bytes; ten thousand drills take about a third of it. */
    private static final long LARGEST = 200_000_000;

    private static final char BYTE_ORDER_MARK = '\ufeff';

    private CsvFile() {}

    /** Writes the sheet and leaves the stream open. */
    public static void write(Layers layers, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        writer.write(BYTE_ORDER_MARK);
        CSVPrinter printer = new CSVPrinter(
                writer, CSVFormat.RFC4180.builder().setRecordSeparator("\r\n").get());
        new SheetRows(layers).write((row, cells) -> printer.printRecord(cells));
        printer.flush();
    }

    /** @return empty when the whole file is refused; the reason then stands in {@code problems} */
    public static Optional<Incoming> read(Path path, Layers now, Problems problems) throws IOException {
        String file = String.valueOf(path);
        if (Files.size(path) > LARGEST) {
            problems.error(
                    file,
                    0,
                    "The file is larger than " + LARGEST / 1_000_000 + " MB",
                    "Bring the sheet that was exported");
            return Optional.empty();
        }
        return text(file, Files.readAllBytes(path), problems)
                .flatMap(text -> table(file, text, problems))
                .flatMap(table -> SheetReader.read(table, now, problems));
    }

    private static Optional<String> text(String file, byte[] bytes, Problems problems) {
        try {
            Charset charset = charset(bytes);
            String text = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            if (text.indexOf('\0') >= 0) {
                problems.error(
                        file,
                        0,
                        "The file holds zero signs, so it is no text",
                        "Save it as “CSV UTF-8” and bring that");
                return Optional.empty();
            }
            return Optional.of(text.isEmpty() || text.charAt(0) != BYTE_ORDER_MARK ? text : text.substring(1));
        } catch (CharacterCodingException e) {
            problems.error(
                    file,
                    0,
                    "The file is not UTF-8; letters such as ñ would be lost",
                    "Save it as “CSV UTF-8”, or bring an XLSX file");
            return Optional.empty();
        }
    }

    /** UTF-16 only when the file says so itself; nothing is guessed from the letters. */
    private static Charset charset(byte[] bytes) {
        boolean isLittle = bytes.length > 1 && bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe;
        boolean isBig = bytes.length > 1 && bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff;
        if (isLittle) {
            return StandardCharsets.UTF_16LE;
        }
        return isBig ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
    }

    private static Optional<SheetTable> table(String file, String text, Problems problems) {
        CSVFormat format =
                CSVFormat.RFC4180.builder().setDelimiter(delimiter(text)).get();
        List<String> keys = new ArrayList<>();
        List<SheetTable.Line> lines = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                int number = (int) record.getRecordNumber();
                if (number > SheetTable.MOST_ROWS + 2) {
                    problems.error(file, number, SheetTable.TOO_MANY_ROWS, SheetTable.TOO_MANY_ROWS_REMEDY);
                    return Optional.empty();
                }
                if (record.size() > SheetTable.MOST_COLUMNS) {
                    problems.error(
                            file,
                            number,
                            "The row has more than " + SheetTable.MOST_COLUMNS + " columns",
                            "Bring the sheet that was exported");
                    return Optional.empty();
                }
                if (number == 1) {
                    record.forEach(keys::add);
                } else {
                    lines.add(line(number, record));
                }
            }
        } catch (IOException | UncheckedIOException e) {
            problems.error(
                    file,
                    lines.size() + 2,
                    "The file is no CSV from here on",
                    "Check the quotation marks in this row: each text that has one needs two");
            return Optional.empty();
        }
        return Optional.of(new SheetTable(file, keys, lines));
    }

    private static SheetTable.Line line(int number, CSVRecord record) {
        Map<Integer, String> cells = new HashMap<>();
        Map<Integer, String> bad = new HashMap<>();
        for (int i = 0; i < record.size(); i++) {
            String cell = record.get(i);
            BadText.in(cell).ifPresentOrElse(badPut(bad, i), cellPut(cells, i, cell));
        }
        return new SheetTable.Line(number, cells, bad);
    }

    private static java.util.function.Consumer<String> badPut(Map<Integer, String> bad, int column) {
        return what -> bad.put(column, what);
    }

    private static Runnable cellPut(Map<Integer, String> cells, int column, String cell) {
        return () -> {
            if (!cell.isEmpty()) {
                cells.put(column, cell);
            }
        };
    }

    /** Countries that write decimal commas separate with semicolons; the first row has none of the three in its words. */
    private static char delimiter(String text) {
        int end = text.indexOf('\n');
        String head = end < 0 ? text : text.substring(0, end);
        if (head.indexOf('\t') >= 0) {
            return '\t';
        }
        return head.indexOf(';') >= 0 ? ';' : ',';
    }
}
