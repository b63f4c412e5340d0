package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The main job on every invented client, as a newcomer runs it: a file in, a reading, a program and a handout out. */
class SamplesTest {
    @TempDir
    private static Path out;

    private static final java.util.Map<String, CommandRun> RUNS = new java.util.TreeMap<>();

    @BeforeAll
    static void buildEverySample() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("samples/clients"))) {
            for (Path file : files.sorted().toList()) {
                String id = file.getFileName().toString().replace(".yaml", "");
                RUNS.put(id, CommandRun.of("build", file.toString(), "--out", out.toString()));
            }
        }
    }

    static List<String> withProgram() {
        return List.of(
                "odile-farrant",
                "bram-okonjo",
                "lise-varga",
                "edwin-tarrow",
                "nadia-sorrel",
                "joaquin-mirande",
                "sami-haddad",
                "vera-quill");
    }

    @Test
    void everySampleIsEitherBuiltOrRefusedForItsReason() {
        assertThat(RUNS.keySet())
                .containsAll(withProgram())
                .hasSize(withProgram().size() + 1);
        assertThat(RUNS).containsKey("petra-holm");
    }

    @ParameterizedTest
    @MethodSource("withProgram")
    void aProgramAndAHandoutAreWritten(String id) {
        CommandRun run = RUNS.get(id);

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        assertThat(run.out()).contains("Findings", "Reading:", "Goals by phase", "Program: begins with", "Proved best");
        assertThat(out.resolve(id + "-program.yaml")).exists();
        assertThat(out.resolve(id + "-handout.pdf")).exists();
    }

    @ParameterizedTest
    @MethodSource("withProgram")
    void thePhasesStandInTheirOrder(String id) {
        assertThat(RUNS.get(id).out())
                .containsSubsequence("\nSettle: ", "\nRestore: ", "\nReference: ", "\nIntegrate: ");
    }

    @Test
    void theSamplesAreReadAsTheyWereMeant() {
        assertThat(RUNS.get("odile-farrant").out()).contains("Reading: Extension-dominant, both sides");
        assertThat(RUNS.get("bram-okonjo").out()).contains("Reading: One side forward, left");
        assertThat(RUNS.get("lise-varga").out())
                .contains("Reading: Extension-dominant with lax give")
                .contains("does not fit together: ");
    }

    @Test
    void aRedFlagGetsAReferralNoteAndNoProgram() {
        CommandRun run = RUNS.get("petra-holm");

        assertThat(run.code()).isEqualTo(ExitCode.CANNOT);
        assertThat(run.out()).contains("Safety: stopped").contains("No program").doesNotContain("Settle:");
        assertThat(out.resolve("petra-holm-referral-note.pdf")).exists();
        assertThat(out.resolve("petra-holm-program.yaml")).doesNotExist();
        assertThat(out.resolve("petra-holm-handout.pdf")).doesNotExist();
    }

    @Test
    void nothingButTheNamedFilesIsLeftBehind() throws IOException {
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.map(f -> f.getFileName().toString()))
                    .allMatch(name -> name.endsWith("-program.yaml")
                            || name.endsWith("-handout.pdf")
                            || name.endsWith("-referral-note.pdf"));
        }
    }

    @Test
    void theSameFileGivesTheSameBytes(@TempDir Path again) throws IOException {
        CommandRun.of("build", "samples/clients/odile-farrant.yaml", "--out", again.toString());

        for (String name : List.of("odile-farrant-program.yaml", "odile-farrant-handout.pdf")) {
            assertThat(Files.mismatch(out.resolve(name), again.resolve(name)))
                    .as(name)
                    .isEqualTo(-1);
        }
    }
}
