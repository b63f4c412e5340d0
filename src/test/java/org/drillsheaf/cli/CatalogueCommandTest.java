package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The catalogue out as one file and back, as a user does it. */
class CatalogueCommandTest {
    private static final String TODAY = "2026-11-28";

    @TempDir
    private Path folder;

    private Path here;
    private Path there;

    @BeforeEach
    void twoClinics() throws IOException {
        here = Files.createDirectories(folder.resolve("here"));
        there = Files.createDirectories(folder.resolve("there"));
        Path drills = Files.createDirectories(here.resolve("exercise-library"));
        Files.writeString(
                drills.resolve("sit-hum.yaml"),
                "id: sit-hum\nwithdrawn: true\nbased-on: 1\nrevision: 1\nauthor: Tamsin Rook\n"
                        + "reviewed-on: 2026-11-20\nreason: We no longer give it.\n");
    }

    @Test
    void anArchiveIsShownFirstAndWrittenOnlyWhenAsked() throws IOException {
        Path file = folder.resolve("catalogue.zip");
        assertThat(export(file).out()).contains(drills() + " drills written into " + file);

        CommandRun preview = run(there, file);
        assertThat(preview.code()).as(preview.err()).isZero();
        assertThat(preview.out())
                .contains("Withdrawn (1)\n  sit-hum: Sitting, hum the breath out\n    status\n      old: in-use\n")
                .contains("0 added, 0 changed, 1 withdrawn, 0 undecided, 0 reasons to reject; " + (drills() - 1)
                        + " as they are.")
                .contains("Nothing was written; --apply writes it.");
        assertThat(there.resolve("exercise-library")).doesNotExist();

        CommandRun applied = run(there, file, "--apply", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(applied.out());
        assertThat(json.path("applied").asBoolean()).isTrue();
        assertThat(json.at("/withdrawn/0/fields/0/new").asText()).isEqualTo("withdrawn");
        assertThat(there.resolve("exercise-library/sit-hum.yaml"))
                .hasSameTextualContentAs(here.resolve("exercise-library/sit-hum.yaml"));
    }

    @Test
    void anExportNeverWritesOverAFileUnasked() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.zip"), "precious");

        CommandRun run = export(file);

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("mine.zip: The file is there already");
        assertThat(file).hasContent("precious");
    }

    @Test
    void aFileOfAnotherKindIsRefusedInOneLine() throws IOException {
        CommandRun unknown = run(here, Files.writeString(folder.resolve("drills.doc"), "x"));
        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("The name does not say what kind of file this is");

        CommandRun broken = run(here, Files.writeString(folder.resolve("broken.zip"), "not a zip"));
        assertThat(broken.code()).isEqualTo(2);
        assertThat(broken.err()).contains("broken.zip: This is not a zip file, or it is damaged.");
    }

    private CommandRun export(Path file) {
        return CommandRun.of(
                "catalogue",
                "export",
                file.toString(),
                "--without-pictures",
                "--house",
                here.toString(),
                "--today",
                TODAY);
    }

    private static CommandRun run(Path house, Path file, String... more) {
        String[] arguments = new String[7 + more.length];
        System.arraycopy(
                new String[] {"catalogue", "import", file.toString(), "--house", house.toString(), "--today", TODAY},
                0,
                arguments,
                0,
                7);
        System.arraycopy(more, 0, arguments, 7, more.length);
        return CommandRun.of(arguments);
    }

    private static long drills() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("exercise-library"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).count();
        }
    }
}
