package org.drillsheaf.exchange.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.drillsheaf.Problem;
import org.drillsheaf.exchange.ImportPlan;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.SmallClinic;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheets that were made to do harm, or came through a program that spoiled them. */
class HostileSheetTest {
    private static final String STRINGS = "xl/sharedStrings.xml";
    private static final String SHEET = "xl/worksheets/sheet1.xml";

    @TempDir
    private Path folder;

    private SmallClinic clinic;
    private Sheets sheet;
    private Path xlsx;
    private Path csv;

    @BeforeEach
    void aSheet() throws IOException {
        clinic = SmallClinic.in(folder);
        sheet = Sheets.of(clinic);
        xlsx = sheet.writeXlsx(folder.resolve("in.xlsx"));
        csv = folder.resolve("in.csv");
    }

    @Test
    void entitiesAreRefusedBeforeAnybodyExpandsThem() throws IOException {
        editPart(
                STRINGS,
                text -> "<?xml version=\"1.0\" encoding=\"UTF-8\"?><!DOCTYPE a [<!ENTITY b \"bbbb\"><!ENTITY c"
                        + " \"&b;&b;\"><!ENTITY d SYSTEM \"file:///etc/passwd\">]>"
                        + text.replaceFirst("^<\\?xml[^>]*>", "").replaceFirst("<t>", "<t>&c;&d;"));

        assertThat(Sheets.refusal(clinic, xlsx).message())
                .startsWith(xlsx + "!" + STRINGS + ": The part declares a document type, which no spreadsheet writes.");
    }

    @Test
    void aPartInAnotherEncodingCannotHideThem() throws IOException {
        part(STRINGS, readPart(STRINGS).getBytes(StandardCharsets.UTF_16));
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("The part is not written in UTF-8");

        sheet.writeXlsx(xlsx);
        editPart(STRINGS, text -> text.replaceFirst("^<\\?xml[^>]*>", "<?xml version=\"1.0\" encoding=\"UTF-7\"?>"));
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("The part is not written in UTF-8");
    }

    @Test
    void nothingIsFetchedFromOutside() throws IOException {
        editPart(
                "xl/_rels/workbook.xml.rels",
                text -> text.replace(
                        "</Relationships>",
                        "<Relationship Id=\"rId99\""
                                + " Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/externalLink\""
                                + " Target=\"file:///c:/x.xlsx\" TargetMode=\"External\"/></Relationships>"));

        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("The file fetches something from outside");
    }

    @ParameterizedTest
    @ValueSource(strings = {"xl/vbaProject.bin", "xl/externalLinks/externalLink1.xml", "xl/embeddings/more.xlsx"})
    void macrosAndWhatIsPackedInsideAreRefused(String part) throws IOException {
        part(part, new byte[] {1, 2, 3});

        assertThat(Sheets.refusal(clinic, xlsx).what())
                .isEqualTo("The file holds macros, controls or links to other files");
    }

    @ParameterizedTest
    @ValueSource(strings = {"ZZZZZZ1", "XFE1", "A99999999", "1A"})
    void aCellBeyondTheSheetDoesNotEatTheMemory(String cell) throws IOException {
        editPart(SHEET, text -> text.replaceFirst("r=\"B3\"", "r=\"" + cell + "\""));

        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("A cell lies beyond the edge of the sheet");
    }

    @Test
    void aFormulaIsNeverWorkedOut() throws IOException {
        int row = sheet.row("sit-hum");
        editPart(
                SHEET,
                text -> text.replaceFirst(
                        "<c r=\"C" + row + "\"[^>]*>.*?</c>",
                        "<c r=\"C" + row + "\"><f>HYPERLINK(\"http://x.invalid\",\"a\")</f><v>7</v></c>"));

        Incoming incoming = Sheets.read(clinic, xlsx);

        assertThat(incoming.drills()).hasSize(6);
        assertThat(incoming.rejected())
                .extracting(Problem::message)
                .containsExactly(xlsx + ":" + row
                        + ": column “name.en”: The cell holds a formula, and formulas are never worked out here."
                        + " Write the value itself into the cell.");
    }

    @Test
    void aTextThatLooksLikeAFormulaStaysAText() throws IOException {
        sheet.set("sit-hum", "reason", "=1+1");
        ImportPlan plan = clinic.plan(sheet.back(folder), Optional.empty());

        assertThat(clinic.apply(plan)).isEmpty();
        assertThat(clinic.layers().drills().get("sit-hum").node().text("reason"))
                .contains("=1+1");
        assertThat(Sheets.of(clinic).cell("sit-hum", "reason")).isEqualTo("'=1+1");
    }

    @Test
    void aHundredThousandRowsAreRefusedInBothKinds() throws IOException {
        Files.writeString(csv, sheet.csv(',') + "x,y\r\n".repeat(100_000));
        assertThat(Sheets.refusal(clinic, csv).what()).isEqualTo("The sheet has more than 20000 rows");

        try (OutputStream out = Files.newOutputStream(xlsx);
                Workbook workbook = new Workbook(out, "Any", "1.0")) {
            Worksheet rows = workbook.newWorksheet("drills");
            for (int row = 0; row < 100_000; row++) {
                rows.value(row, 0, row);
            }
        }
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("The sheet has more than 20000 rows");
    }

    @Test
    void tooManyColumnsAreRefused() throws IOException {
        Files.writeString(csv, sheet.csv(',') + ",".repeat(600) + "\r\n");

        assertThat(Sheets.refusal(clinic, csv).what()).isEqualTo("The row has more than 500 columns");
    }

    @Test
    void aBombIsRefused() throws IOException {
        part("xl/worksheets/sheet2.xml", (" ".repeat(5_000_000)).getBytes(StandardCharsets.UTF_8));

        assertThat(Sheets.refusal(clinic, xlsx).what())
                .isEqualTo("The entry becomes more than 100 times larger when it is unpacked");
    }

    @Test
    void anotherKindOfFileIsTold() throws IOException {
        Files.write(xlsx, new byte[] {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, 0, 0, 0, 0});
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("This is not a zip file, or it is damaged");

        editXlsx(zip -> Files.delete(zip.getPath("[Content_Types].xml")));
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("This zip file is no XLSX file");

        editXlsx(zip -> Files.writeString(zip.getPath(SHEET), "<worksheet><sheetData><row>"));
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("The part is damaged");

        editXlsx(zip -> Files.delete(zip.getPath("xl/workbook.xml")));
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("The file cannot be read as XLSX");

        editXlsx(zip -> Files.delete(zip.getPath(STRINGS)));
        assertThat(Sheets.refusal(clinic, xlsx).what()).isEqualTo("The first row has no column “id”");
    }

    @Test
    void lettersAreNeverGuessed() throws IOException {
        sheet.writeCsv(csv, ';', StandardCharsets.ISO_8859_1);
        assertThat(Sheets.refusal(clinic, csv).message())
                .isEqualTo(csv + ": The file is not UTF-8; letters such as ñ would be lost."
                        + " Save it as “CSV UTF-8”, or bring an XLSX file.");

        sheet.writeCsv(csv, ',', StandardCharsets.UTF_16LE);
        assertThat(Sheets.refusal(clinic, csv).message()).contains("Save it as “CSV UTF-8”");
    }

    @Test
    void utf16ThatSaysSoIsRead() throws IOException {
        sheet.writeCsv(csv, '\t', StandardCharsets.UTF_16); // with its mark in front

        assertThat(clinic.plan(Sheets.read(clinic, csv), Optional.empty()).same())
                .isEqualTo(7);
    }

    @Test
    void aTextThatLostItsLettersIsRejectedWithRowAndColumn() throws IOException {
        sheet.set("sit-hum", "name.es", "Sentado, zumbar al so\ufffdar");

        assertThat(sheet.back(folder).rejected())
                .extracting(p -> p.line() + " " + p.what())
                .containsExactly(sheet.row("sit-hum")
                        + " column “name.es”: The text has lost letters on its way through another program");
    }

    @Test
    void aQuotationMarkThatNeverEndsIsTold() throws IOException {
        Files.writeString(csv, sheet.csv(',') + "\"sit-hum,no end");

        assertThat(Sheets.refusal(clinic, csv).what()).isEqualTo("The file is no CSV from here on");
        assertThat(Sheets.refusal(clinic, csv).line()).isEqualTo(sheet.rows().size() + 1);
    }

    @Test
    void headsThatWereChangedAreTold() throws IOException {
        sheet.rename("family", "famly").writeCsv(csv, ',', StandardCharsets.UTF_8);
        assertThat(Sheets.refusal(clinic, csv).message())
                .isEqualTo(csv + ":1: There is no column “famly”. Write “family” if that was meant.");

        sheet.rename("famly", "level").writeCsv(csv, ',', StandardCharsets.UTF_8);
        assertThat(Sheets.refusal(clinic, csv).what()).isEqualTo("The column “level” is there twice");

        Files.writeString(csv, "id,name.en\r\nsit-hum,x\r\n");
        assertThat(Sheets.refusal(clinic, csv).what()).isEqualTo("The first row has no column “stamp”");
    }

    @Test
    void aColumnThatIsNotThereChangesNothing() throws IOException {
        sheet.rename("conditions", "").rename("set-up.es", "").writeCsv(csv, ',', StandardCharsets.UTF_8);

        assertThat(clinic.plan(Sheets.read(clinic, csv), Optional.empty()).same())
                .isEqualTo(7);
    }

    /** Changes a text of an XLSX file. */
    private interface Edit {
        String of(String text);
    }

    /** Changes an XLSX file as a zip. */
    private interface ZipEdit {
        void on(FileSystem zip) throws IOException;
    }

    private void editXlsx(ZipEdit edit) throws IOException {
        sheet.writeXlsx(xlsx);
        try (FileSystem zip = FileSystems.newFileSystem(xlsx)) {
            edit.on(zip);
        }
    }

    private void editPart(String name, Edit edit) throws IOException {
        String before = readPart(name);
        String after = edit.of(before);
        assertThat(after).isNotEqualTo(before);
        part(name, after.getBytes(StandardCharsets.UTF_8));
    }

    private String readPart(String name) throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(xlsx)) {
            return Files.readString(zip.getPath(name));
        }
    }

    private void part(String name, byte[] bytes) throws IOException {
        try (FileSystem zip = FileSystems.newFileSystem(xlsx)) {
            Path part = zip.getPath("/", name);
            Files.createDirectories(part.getParent());
            Files.write(part, bytes);
        }
    }
}
