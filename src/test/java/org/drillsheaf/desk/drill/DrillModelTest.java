package org.drillsheaf.desk.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.catalogue.DrillShelf;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.SameThread;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrillModelTest {
    private static final Clock TODAY = Clock.fixed(Instant.parse("2026-11-28T10:00:00Z"), ZoneOffset.UTC);
    private static final Path HOME = Path.of("").toAbsolutePath();
    private static final DrillShelf SHELF = shelf(new Folders(HOME, HOME.resolve("no-clinic")));

    @TempDir
    Path clinic;

    private Folders folders;
    private DrillModel model;

    private static DrillShelf shelf(Folders folders) {
        Problems problems = new Problems();
        return DrillShelf.read(folders, TODAY, problems).orElseThrow(() -> new AssertionError(problems.all()));
    }

    @BeforeEach
    void open() {
        folders = new Folders(HOME, clinic);
        model = model(new DrillFolder(folders));
    }

    private DrillModel model(DrillFolder folder) {
        return new DrillModel(
                folder.open("wall-march", SHELF.library().layers(), new Problems())
                        .orElseThrow(),
                folder,
                SHELF.check(),
                SHELF.printer(),
                Optional.empty(),
                Words.in("en"),
                TODAY,
                new SameThread());
    }

    @Test
    void aStarterDrillHasNoFindingThatStopsItAndItsBlockIsPrinted() {
        assertThat(model.findings().get()).noneMatch(Finding::stops);
        assertThat(model.block().get()).hasValueSatisfying(block -> assertThat(block.getHeight())
                .as("no lines for questions below this drill, which is wider than high")
                .isLessThan(block.getWidth()));
        assertThat(model.whyNotKept()).contains("Nothing is changed.");
    }

    @Test
    void aFindingStandsBesideTheFieldAndTheStepItConcerns() {
        List<String> steps = model.lines("action", "en").lines().toList();
        model.setLines("action", "en", "Posterior pelvic tilt.\n" + String.join("\n", steps.subList(1, steps.size())));

        assertThat(model.findings("action")).anySatisfy(f -> {
            assertThat(f.item()).hasValue(1);
            assertThat(f.problem().what()).contains("verb");
        });
        model.draft().undo();
        assertThat(model.findings("action")).noneMatch(f -> f.problem().what().contains("verb"));
    }

    @Test
    void keepingWritesAHouseVersionWholeAndOnlyWithANewReason() throws Exception {
        model.setText("/name", "en", "March at the wall, slowly");
        assertThat(model.keep()).isFalse();
        assertThat(model.status().get()).isEqualTo("Write the reason for this change below first.");
        assertThat(files()).isEmpty();

        model.set("/reason", "A clearer name");
        model.reviewedToday();
        assertThat(model.keep()).as(model.status().get()).isTrue();

        assertThat(files()).containsExactly("wall-march.yaml");
        String written = Files.readString(clinic.resolve("exercise-library/wall-march.yaml"));
        assertThat(written)
                .contains("March at the wall, slowly")
                .contains("\nrevision: 1\nbased-on: ")
                .contains("reviewed-on: 2026-11-28");
        Problems problems = new Problems();
        var library = LibraryFiles.read(folders.files(), problems).orElseThrow();
        assertThat(problems.hasErrors()).as(problems.all().toString()).isFalse();
        assertThat(library.layers().drills().get("wall-march").standing()).isEqualTo(Standing.REPLACED);

        model.set("/level", "2");
        model.set("/reason", "Harder than thought");
        assertThat(model.keep()).isTrue();
        assertThat(Files.readString(clinic.resolve("exercise-library/wall-march.yaml")))
                .contains("\nrevision: 2\n");
    }

    @Test
    void whatAnotherDeskWroteIsNotOverwritten() throws Exception {
        model.set("/reason", "Mine");
        Path file = clinic.resolve("exercise-library/wall-march.yaml");
        Files.createDirectories(file.getParent());
        Files.writeString(file, "id: wall-march # theirs");

        assertThat(model.keep()).isFalse();

        assertThat(model.status().get()).startsWith("Somebody changed this drill since you opened it");
        assertThat(Files.readString(file)).isEqualTo("id: wall-march # theirs");
        assertThat(model.draft().changed().get()).isTrue();
    }

    @Test
    void aDrillThatIsNoDrillCannotBeKept() {
        model.set("/reason", "Trying");
        model.setIds("positions", List.of("on-the-moon"));

        assertThat(model.findings("positions")).anyMatch(Finding::stops);
        assertThat(model.keep()).isFalse();
        assertThat(files()).isEmpty();
    }

    @Test
    void versionsAreComparedFieldByField() {
        model.setGoal("full-exhale", 3);
        model.setText("/purpose", "es", "Otra cosa.");

        List<Difference> differences = Difference.between(
                model.editions().get(0).document().at(""), model.draft().now().at(""));

        assertThat(differences)
                .extracting(Difference::place)
                .contains("purpose, es")
                .anyMatch(p -> p.startsWith("goals"));
    }

    @Test
    void everyKeptVersionStandsInTheRecordToo() {
        try (Store store = Store.create(
                new StoreAddress.File(clinic.resolve("record")),
                Passphrase.of("three small boats".toCharArray()),
                TODAY)) {
            Words words = Words.in("en");
            DrillFolder folder = new DrillFolder(folders);
            model = new DrillModel(
                    folder.open("wall-march", SHELF.library().layers(), new Problems())
                            .orElseThrow(),
                    folder,
                    SHELF.check(),
                    SHELF.printer(),
                    Optional.of(new RevisionShelf(store.drills(), "Tamsin Rook", words)),
                    words,
                    TODAY,
                    new SameThread());

            model.set("/reason", "First");
            assertThat(model.keep()).isTrue();
            model.setText("/name", "en", "March at the wall");
            model.set("/reason", "Second");
            assertThat(model.keep()).isTrue();

            assertThat(model.status().get()).isEqualTo("Kept as version 2");
            assertThat(store.drills().revisions("wall-march"))
                    .extracting(r -> r.revision())
                    .containsExactlyInAnyOrder(1, 2);
            assertThat(model.editions())
                    .extracting(RevisionShelf.Edition::name)
                    .containsExactlyInAnyOrder(
                            "As kept, version 2", "Version 2, house, Tamsin Rook", "Version 1, house, Tamsin Rook");
        }
    }

    private List<String> files() {
        Path folder = clinic.resolve("exercise-library");
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(f -> f.getFileName().toString()).toList();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
