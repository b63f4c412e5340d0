package org.drillsheaf.exchange.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.SmallClinic;

/** A sheet in the hands of somebody with a spreadsheet. */
final class Sheets {
    private final SmallClinic clinic;
    private final List<List<String>> rows = new ArrayList<>();

    private Sheets(SmallClinic clinic) {
        this.clinic = clinic;
    }

    /** What a clinic exports. */
    static Sheets of(SmallClinic clinic) throws IOException {
        Sheets sheet = new Sheets(clinic);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CsvFile.write(clinic.layers(), out);
        String text = out.toString(StandardCharsets.UTF_8);
        assertThat(text).startsWith("\ufeffid,");
        try (CSVParser parser = CSVParser.parse(new StringReader(text.substring(1)), CSVFormat.RFC4180)) {
            parser.forEach(record -> sheet.rows.add(new ArrayList<>(record.toList())));
        }
        return sheet;
    }

    /** Row of a drill, counted from 1 as a spreadsheet does. */
    int row(String id) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).get(0).equals(id)) {
                return i + 1;
            }
        }
        throw new IllegalArgumentException(id);
    }

    int column(String key) {
        int column = rows.get(0).indexOf(key);
        if (column < 0) {
            throw new IllegalArgumentException(key);
        }
        return column;
    }

    String cell(String id, String key) {
        return rows.get(row(id) - 1).get(column(key));
    }

    Sheets set(String id, String key, String text) {
        rows.get(row(id) - 1).set(column(key), text);
        return this;
    }

    /** A second row with another id, as copying in a spreadsheet makes it. */
    Sheets copy(String id, String fresh) {
        List<String> copy = new ArrayList<>(rows.get(row(id) - 1));
        copy.set(0, fresh);
        rows.add(copy);
        return this;
    }

    Sheets removeRow(String id) {
        rows.remove(row(id) - 1);
        return this;
    }

    Sheets clearStamp(String id) {
        List<String> row = rows.get(row(id) - 1);
        row.set(row.size() - 1, "");
        return this;
    }

    Sheets rename(String key, String fresh) {
        rows.get(0).set(column(key), fresh);
        return this;
    }

    List<List<String>> rows() {
        return rows;
    }

    String csv(char delimiter) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(
                text, CSVFormat.RFC4180.builder().setDelimiter(delimiter).get())) {
            printer.printRecords(rows);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return text.toString();
    }

    Path writeCsv(Path file, char delimiter, Charset charset) throws IOException {
        return Files.write(file, csv(delimiter).getBytes(charset));
    }

    Path writeXlsx(Path file) throws IOException {
        try (OutputStream out = Files.newOutputStream(file);
                Workbook workbook = new Workbook(out, "Any", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("drills");
            for (int row = 0; row < rows.size(); row++) {
                for (int column = 0; column < rows.get(row).size(); column++) {
                    sheet.value(row, column, rows.get(row).get(column));
                }
            }
        }
        return file;
    }

    /** Brings the sheet back as CSV. */
    Incoming back(Path folder) throws IOException {
        return read(clinic, writeCsv(folder.resolve("drills.csv"), ',', StandardCharsets.UTF_8));
    }

    static Incoming read(SmallClinic clinic, Path file) throws IOException {
        Problems problems = new Problems();
        Optional<Incoming> incoming = read(clinic, file, problems);
        assertThat(problems.all()).isEmpty();
        return incoming.orElseThrow();
    }

    /** The one reason why a whole file is refused. */
    static Problem refusal(SmallClinic clinic, Path file) throws IOException {
        Problems problems = new Problems();
        assertThat(read(clinic, file, problems)).isEmpty();
        assertThat(problems.all()).hasSize(1);
        return problems.all().get(0);
    }

    private static Optional<Incoming> read(SmallClinic clinic, Path file, Problems problems) throws IOException {
        return file.toString().endsWith(".xlsx")
                ? XlsxFile.read(file, clinic.layers(), problems)
                : CsvFile.read(file, clinic.layers(), problems);
    }
}
