package org.drillsheaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.drill.library.ProjectFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The clinic's folder holds all of an import or nothing of it. */
class HouseFolderTest {
    @TempDir
    private Path folder;

    private SmallClinic clinic;

    @BeforeEach
    void aClinicWithAFolderOfItsOwn() throws IOException {
        clinic = SmallClinic.in(folder);
        clinic.withdraw("sit-hum");
        Files.writeString(clinic.drills().resolve("notes.txt"), "ours");
    }

    @Test
    void whatIsNotOfTheImportStays() throws IOException {
        assertThat(new HouseFolder(clinic.drills()).apply(List.of(change("our-one", Optional.of("id: our-one\n")))))
                .isEmpty();

        assertThat(clinic.houseFiles())
                .containsOnlyKeys(
                        "exercise-library/notes.txt", "exercise-library/our-one.yaml", "exercise-library/sit-hum.yaml")
                .containsEntry("exercise-library/notes.txt", "ours");
    }

    @Test
    void aFileThatCannotBeWrittenLeavesTheFolderAsItWas() throws IOException {
        Map<String, String> before = clinic.houseFiles();

        var problems = new HouseFolder(clinic.drills())
                .apply(List.of(
                        change("sit-hum", Optional.empty()),
                        change("no-such-folder/our-one", Optional.of("id: our-one\n"))));

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).what())
                .startsWith("The clinic's folder cannot be written (")
                .endsWith("so it was left as it was");
        assertThat(clinic.houseFiles()).isEqualTo(before);
        try (var left = Files.list(clinic.house())) {
            assertThat(left.map(p -> p.getFileName().toString())).containsExactly("exercise-library");
        }
    }

    @Test
    void aClinicsFolderThatCannotBeMadeIsTold() throws IOException {
        Path file = Files.writeString(folder.resolve("a-file"), "x");

        var problems = new HouseFolder(file.resolve("exercise-library"))
                .apply(List.of(change("our-one", Optional.of("id: our-one\n"))));

        assertThat(problems).hasSize(1);
        assertThat(file).hasContent("x");
    }

    @Test
    void anImportThatWasCutOffBetweenTwoStepsIsTold() throws IOException {
        Path before = clinic.drills().resolveSibling(ProjectFiles.nameBefore(clinic.drills()));
        Files.move(clinic.drills(), before);
        Problems problems = new Problems();

        LibraryFiles.layers(new ProjectFiles(Path.of(""), clinic.starter(), Optional.of(clinic.house())), problems);

        assertThat(problems.all()).singleElement().satisfies(p -> assertThat(p.message())
                .contains("An import was cut off between two steps")
                .contains("Rename that folder to “exercise-library”"));
    }

    private static DrillChange change(String id, Optional<String> file) {
        return new DrillChange(id, DrillChange.Kind.CHANGED, id, List.of(), List.of(), MissingNode.getInstance(), file);
    }
}
