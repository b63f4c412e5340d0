package org.drillsheaf.exchange.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.exchange.DrillChange;
import org.drillsheaf.exchange.ImportPlan;
import org.drillsheaf.exchange.Incoming;
import org.drillsheaf.exchange.IncomingDrill;
import org.drillsheaf.exchange.SmallClinic;
import org.drillsheaf.exchange.merge.FieldChange;
import org.drillsheaf.exchange.merge.Take;
import org.drillsheaf.exchange.merge.TreeDifference;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A clinic edits the catalogue in a spreadsheet and sees only what it changed. */
class SheetRoundTripTest {
    @TempDir
    private Path folder;

    private SmallClinic clinic;
    private Sheets sheet;

    @BeforeEach
    void aClinicExportsItsCatalogue() throws IOException {
        clinic = SmallClinic.in(folder);
        clinic.replace("sit-straw", 4, "author: Otterbrook drill group", "author: Tamsin Rook");
        clinic.withdraw("counter-breath");
        sheet = Sheets.of(clinic);
    }

    @Test
    void theExportedXlsxComesBackWithoutAChange() throws IOException {
        Path file = folder.resolve("out.xlsx");
        try (OutputStream out = Files.newOutputStream(file)) {
            XlsxFile.write(clinic.layers(), out);
        }

        ImportPlan plan = clinic.plan(Sheets.read(clinic, file), Optional.empty());

        assertThat(plan.changes()).isEmpty();
        assertThat(plan.rejected()).isEmpty();
        assertThat(plan.notes()).isEmpty();
        assertThat(plan.same()).isEqualTo(7);
    }

    @ParameterizedTest
    @ValueSource(strings = {"csv", "xlsx"})
    void oneEditedCellIsTheOnlyChange(String kind) throws IOException {
        sheet.set("sit-hum", "name.en", "Sitting, hum softly out");
        Path file = folder.resolve("edited." + kind);
        if (kind.equals("csv")) {
            sheet.writeCsv(file, ',', StandardCharsets.UTF_8);
        } else {
            sheet.writeXlsx(file);
        }

        ImportPlan plan = clinic.plan(Sheets.read(clinic, file), Optional.empty());

        assertThat(plan.rejected()).isEmpty();
        assertThat(plan.same()).isEqualTo(6);
        assertThat(plan.changes()).hasSize(1);
        FieldChange field = plan.changes().get(0).fields().get(0);
        assertThat(plan.changes().get(0).fields()).hasSize(1);
        assertThat(field.field()).isEqualTo("name.en");
        assertThat(field.old().asText()).isEqualTo("Sitting, hum the breath out");
        assertThat(field.fresh().asText()).isEqualTo("Sitting, hum softly out");
        assertThat(clinic.apply(plan)).isEmpty();
        assertThat(clinic.plan(Sheets.of(clinic).back(folder), Optional.empty()).same())
                .isEqualTo(7);
        assertThat(clinic.layers()
                        .drills()
                        .get("sit-hum")
                        .node()
                        .json()
                        .at("/name/en")
                        .asText())
                .isEqualTo("Sitting, hum softly out");
    }

    @Test
    void everyKindOfCellGoesBackWhereItCameFrom() throws IOException {
        List<List<String>> cells = List.of(
                List.of("level", "2", "/level", "2"),
                List.of("phases", "settle\nrestore", "/phases", "[\"settle\",\"restore\"]"),
                List.of("goals", "full-exhale: 3", "/goals", "{\"full-exhale\":3}"),
                List.of("equipment", "chair\r\ncushion ", "/equipment", "[\"chair\",\"cushion\"]"),
                List.of("sets", "1 (1 to 3)", "/dose/sets", "{\"default\":1,\"range\":[1,3]}"),
                List.of("noun.en", "one: hum\nother: hums", "/dose/noun/en", "{\"one\":\"hum\",\"other\":\"hums\"}"),
                List.of("out-seconds", "5 to 9", "/breathing/out-seconds", "[5,9]"),
                List.of("in-seconds", "2.5", "/breathing/in-seconds", "2.5"),
                List.of("resist", "Yes", "/breathing/resist", "true"),
                List.of("cue.es", "", "/breathing/cue/es", ""),
                List.of("harder", "", "/harder", ""),
                List.of("faults.en", "You push. -> Hum softly.", "/faults/0/fix/en", "\"Hum softly.\""),
                List.of(
                        "conditions",
                        "panic: caution; Counting can bring up fear.",
                        "/conditions/0/action",
                        "\"caution\""),
                List.of("translation.es", "machine; 2026-11-02; Ana Ruiz", "/translations/es/reviewer", "\"Ana Ruiz\""),
                List.of("reviewed-on", "2026-11-20", "/reviewed-on", "\"2026-11-20\""));
        for (List<String> cell : cells) {
            sheet.set("sit-hum", cell.get(0), cell.get(1));
        }
        sheet.set("sit-hum", "faults.es", "Empuja. → Tararee con suavidad.");

        Incoming incoming = sheet.back(folder);
        IncomingDrill drill = drill(incoming, "sit-hum");

        assertThat(incoming.rejected()).isEmpty();
        for (List<String> cell : cells) {
            assertThat(drill.drill().at(cell.get(2)).toString()).as(cell.get(0)).isEqualTo(cell.get(3));
        }
        List<String> pointers = cells.stream().map(c -> c.get(2)).toList();
        assertThat(TreeDifference.between(drill.ancestors().get(0), drill.drill()))
                .allMatch(change -> pointers.stream().anyMatch(change.pointer()::startsWith)
                        || change.pointer().startsWith("/faults")
                        || change.pointer().startsWith("/conditions")
                        || change.pointer().startsWith("/translations/es"));
    }

    private static IncomingDrill drill(Incoming incoming, String id) {
        return incoming.drills().stream()
                .filter(d -> d.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void stepsKeepTheirMarksAndTheirOtherLanguages() throws IOException {
        String steps = sheet.cell("counter-hips-back", "action.en");
        assertThat(steps).contains(" [mark ");
        String first = steps.lines().findFirst().orElseThrow();
        sheet.set("counter-hips-back", "action.en", steps.replace(first, "Push your hips back. [mark hips]"));

        IncomingDrill drill = drill(sheet.back(folder), "counter-hips-back");

        assertThat(drill.drill().at("/action/0/en").asText()).isEqualTo("Push your hips back.");
        assertThat(drill.drill().at("/action/0/mark").asText()).isEqualTo("hips");
        assertThat(drill.drill().at("/action/0/es"))
                .isEqualTo(drill.ancestors().get(0).at("/action/0/es"));
        assertThat(drill.drill().at("/action/1"))
                .isEqualTo(drill.ancestors().get(0).at("/action/1"));
    }

    @Test
    void aStepMoreInOneLanguageAloneIsRejectedWithRowAndColumns() throws IOException {
        sheet.set("sit-hum", "set-up.en", sheet.cell("sit-hum", "set-up.en") + "\nRest your hands.");

        Incoming incoming = sheet.back(folder);

        assertThat(incoming.rejected()).hasSize(1);
        assertThat(incoming.rejected().get(0).line()).isEqualTo(sheet.row("sit-hum"));
        assertThat(incoming.rejected().get(0).what())
                .startsWith("column “set-up.en, set-up.es")
                .contains(" lines in “es” and ");
    }

    @Test
    void aCopiedRowWithANewIdIsANewDrillWithTheSamePose() throws IOException {
        sheet.copy("sit-hum", "our-hum")
                .set("our-hum", "name.en", "Our hum")
                .set("our-hum", "name.es", "Nuestro zumbido");

        ImportPlan plan = clinic.plan(sheet.back(folder), Optional.empty());

        assertThat(plan.rejected()).isEmpty();
        DrillChange added = plan.changes().get(0);
        assertThat(plan.changes()).hasSize(1);
        assertThat(added.kind()).isEqualTo(DrillChange.Kind.ADDED);
        assertThat(added.result().path("pose"))
                .isEqualTo(clinic.layers().drills().get("sit-hum").node().json().path("pose"));
        assertThat(clinic.apply(plan)).isEmpty();
        assertThat(clinic.catalogue()).containsKey("our-hum");
    }

    @Test
    void aWordInTheStatusWithdrawsAndAMissingRowDoesNothing() throws IOException {
        sheet.removeRow("sit-arms-sink").set("sit-hum", "status", "withdrawn");

        ImportPlan plan = clinic.plan(sheet.back(folder), Optional.empty());

        assertThat(plan.changes()).hasSize(1);
        assertThat(plan.changes(DrillChange.Kind.WITHDRAWN))
                .extracting(DrillChange::id)
                .containsExactly("sit-hum");
        assertThat(plan.notes().get(0).what()).startsWith("1 drills of the catalogue have no row here");
        assertThat(clinic.apply(plan)).isEmpty();
        assertThat(clinic.houseFiles().get("exercise-library/sit-hum.yaml"))
                .contains("withdrawn: true")
                .doesNotContain("pose");
    }

    @Test
    void whatBothSidesChangedIsToldAndNothingIsOverwritten() throws IOException {
        sheet.set("sit-straw", "name.en", "From the sheet").set("sit-straw", "family", "sit-out-sheet");
        clinic.replace("sit-straw", 5, "name:", "name: {en: From the house, es: De la casa}\nold-name:");
        String house = clinic.houseFiles().get("exercise-library/sit-straw.yaml");
        clinic.putHouse(
                "sit-straw",
                house.replaceAll("(?s)old-name:.*?(?=\nfamily)", "").replaceAll("\n\n", "\n"));

        ImportPlan open = clinic.plan(sheet.back(folder), Optional.empty());

        assertThat(open.undecided()).hasSize(1);
        assertThat(open.undecided().get(0).clashes())
                .containsExactly(new FieldChange(
                        "/name/en", TextNode.valueOf("From the house"), TextNode.valueOf("From the sheet")));
        assertThat(open.changes()).isEmpty();
        assertThat(name(clinic.plan(sheet.back(folder), Optional.of(Take.MINE))))
                .containsExactly("From the house", "De la casa", "sit-out-sheet");
        assertThat(name(clinic.plan(sheet.back(folder), Optional.of(Take.THEIRS))))
                .containsExactly("From the sheet", "De la casa", "sit-out-sheet");
    }

    private static List<String> name(ImportPlan plan) {
        JsonNode result = plan.changes().get(0).result();
        return List.of(
                result.at("/name/en").asText(),
                result.at("/name/es").asText(),
                result.path("family").asText());
    }

    @Test
    void semicolonsAndDaysOfAnotherCountryAreNoChange() throws IOException {
        for (String id : List.of("sit-hum", "sit-straw", "counter-hips-back")) {
            String[] day = sheet.cell(id, "reviewed-on").split("-");
            sheet.set(id, "reviewed-on", day[2] + "/" + day[1] + "/" + day[0]);
        }
        Path file = sheet.writeCsv(folder.resolve("other.csv"), ';', StandardCharsets.UTF_8);

        ImportPlan plan = clinic.plan(Sheets.read(clinic, file), Optional.empty());

        assertThat(plan.rejected()).isEmpty();
        assertThat(plan.changes()).isEmpty();
    }

    @Test
    void mistakesOfTheCheckAreToldWithRowAndColumn() throws IOException {
        sheet.set("sit-hum", "goals", "full-exhal: 3")
                .set("sit-straw", "level", "seven")
                .set("counter-hips-back", "easier", "")
                .set("counter-hips-back", "sets", "5 (1 to 3)");

        ImportPlan plan = clinic.plan(sheet.back(folder), Optional.empty());

        assertThat(plan.changes()).isEmpty();
        assertThat(plan.rejected())
                .extracting(p -> p.line() + ": " + p.what())
                .containsExactlyInAnyOrder(
                        sheet.row("sit-straw") + ": column “level”: “seven” is no number",
                        sheet.row("sit-hum") + ": column “goals”: There is no goal “full-exhal”",
                        sheet.row("counter-hips-back")
                                + ": column “sets”: The default of sets is 5, outside its range 1 to 3");
    }

    @Test
    void rowsThatCannotBeUnderstoodAreRejectedWithARemedy() throws IOException {
        sheet.clearStamp("sit-hum")
                .copy("sit-straw", "sit-straw")
                .copy("sit-straw", "Sit Straw!")
                .copy("sit-straw", "sit-hum");

        Incoming incoming = sheet.back(folder);

        assertThat(incoming.rejected())
                .extracting(Problem::what)
                .containsExactly(
                        "The row has lost its stamp in the last column, so nobody can say what was changed in it",
                        "The drill “sit-straw” stands in row " + sheet.row("sit-straw") + " already",
                        "column “id”: “Sit Straw!” is no id",
                        "The drill “sit-hum” stands in row " + sheet.row("sit-hum") + " already");
    }
}
