package org.drillsheaf.exchange.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.exchange.DrillChange;
import org.drillsheaf.exchange.ImportPlan;
import org.drillsheaf.exchange.SmallClinic;
import org.drillsheaf.exchange.merge.FieldChange;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes out as an archive comes back the same, here and at another clinic. */
class ArchiveRoundTripTest {
    private static final String EDITED = "Sit tall on a firm chair";

    @TempDir
    private Path folder;

    private SmallClinic here;
    private Path file;

    @BeforeEach
    void aClinicWithDrillsOfItsOwn() throws IOException {
        here = SmallClinic.in(folder.resolve("here"));
        here.replace("sit-straw", 4, "author: Otterbrook drill group", "author: Tamsin Rook");
        here.add("our-hum", "sit-hum");
        here.withdraw("counter-breath");
        file = Archives.export(here, folder.resolve("catalogue.zip"));
    }

    @Test
    void anotherClinicGetsTheIdenticalCatalogue() throws IOException {
        SmallClinic there = SmallClinic.in(folder.resolve("there"));

        ImportPlan plan = there.plan(Archives.read(file), Optional.empty());

        assertThat(plan.rejected()).isEmpty();
        assertThat(plan.undecided()).isEmpty();
        assertThat(plan.changes(DrillChange.Kind.ADDED))
                .extracting(DrillChange::id)
                .containsExactly("our-hum");
        assertThat(plan.changes(DrillChange.Kind.CHANGED))
                .extracting(DrillChange::id)
                .containsExactly("sit-straw");
        assertThat(plan.changes(DrillChange.Kind.WITHDRAWN))
                .extracting(DrillChange::id)
                .containsExactly("counter-breath");
        assertThat(plan.same()).isEqualTo(5);
        assertThat(there.apply(plan)).isEmpty();
        assertThat(there.catalogue()).isEqualTo(here.catalogue());
        assertThat(there.houseFiles()).isEqualTo(here.houseFiles());
    }

    @Test
    void bringingItBackUneditedChangesNothing() {
        ImportPlan plan = here.plan(Archives.read(file), Optional.empty());

        assertThat(plan.changes()).isEmpty();
        assertThat(plan.same()).isEqualTo(8);
    }

    @Test
    void anEditOfOneTextIsTheOnlyChangeAndCountsTheRevision() throws IOException {
        String old = here.layers()
                .drills()
                .get("sit-hum")
                .node()
                .nearest("/set-up/0/en")
                .text()
                .orElseThrow();
        Archives.edit(file, "drills/sit-hum.yaml", old, EDITED + ".");

        ImportPlan plan = here.plan(Archives.read(file), Optional.empty());

        assertThat(plan.rejected()).isEmpty();
        assertThat(plan.changes()).hasSize(1);
        DrillChange change = plan.changes().get(0);
        assertThat(change.fields()).extracting(FieldChange::field).containsExactly("set-up.1.en");
        assertThat(change.fields().get(0).old().asText()).isEqualTo(old);
        assertThat(here.apply(plan)).isEmpty();
        assertThat(here.houseFiles().get("exercise-library/sit-hum.yaml"))
                .contains("en: " + EDITED)
                .contains("revision: 1\nbased-on: 1\n");
        assertThat(here.layers().drills().get("sit-hum").node().text("revision"))
                .as("the clinic's first version")
                .contains("1");
    }

    @Test
    void aChangedVersionOfTheClinicsCountsOn() throws IOException {
        Archives.edit(file, "drills/sit-straw.yaml", "author: Tamsin Rook", "author: Ivo Marsh");

        ImportPlan unchangedContent = here.plan(Archives.read(file), Optional.empty());
        assertThat(unchangedContent.changes().get(0).result().path("revision").asInt())
                .as("who wrote it is not what the drill says")
                .isEqualTo(4);

        Archives.edit(file, "drills/sit-straw.yaml", "status: in-use", "status: draft");
        ImportPlan plan = here.plan(Archives.read(file), Optional.empty());
        assertThat(plan.changes().get(0).result().path("revision").asInt()).isEqualTo(5);
    }

    @Test
    void goingBackToTheStarterRemovesTheClinicsFile() throws IOException {
        SmallClinic untouched = SmallClinic.in(folder.resolve("untouched"));
        Map<String, String> entries = Archives.unpack(file);
        entries.put("drills/sit-straw.yaml", untouched.starterText("sit-straw"));
        Archives.pack(entries, file);

        ImportPlan plan = here.plan(Archives.read(file), Optional.empty());

        assertThat(plan.changes()).extracting(DrillChange::id).containsExactly("sit-straw");
        assertThat(here.apply(plan)).isEmpty();
        assertThat(here.houseFiles()).doesNotContainKey("exercise-library/sit-straw.yaml");
        assertThat(here.catalogue().get("sit-straw"))
                .isEqualTo(untouched.catalogue().get("sit-straw"));
    }

    @Test
    void theSameCatalogueOnTheSameDayGivesTheSameBytes() throws IOException {
        Path again = Archives.export(here, folder.resolve("again.zip"));

        assertThat(Files.mismatch(file, again)).isEqualTo(-1);
    }

    @Test
    void everyKeyframeComesAsAPicture() throws IOException {
        SmallClinic there = SmallClinic.in(folder.resolve("there"));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CatalogueArchive.write(
                there.layers(),
                SmallClinic.TODAY,
                Optional.of(new ArchivePictures(new FigureDrawer())),
                out,
                done -> {});
        Path pictured = Files.write(folder.resolve("pictured.zip"), out.toByteArray());

        assertThat(Archives.unpack(pictured).get("pictures/sit-hum-start.svg"))
                .startsWith("<svg")
                .contains("<path");
        assertThat(there.plan(Archives.read(pictured), Optional.empty()).same()).isEqualTo(7);
    }
}
