package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.screen.MovementTest;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A project folder as a clinic has it: the starter files, and its own beside them. */
class VocabularyReaderTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void linkTheStarterFiles() throws IOException {
        for (String name : new String[] {"shared", "exercise-library"}) {
            Files.createSymbolicLink(folder.resolve(name), Path.of(name).toAbsolutePath());
        }
        Files.createDirectory(folder.resolve("house"));
    }

    @Test
    void aClinicsOwnErrorIsUsedFirst() throws IOException {
        Files.writeString(
                folder.resolve("house/tests.yaml"),
                """
                tests:
                  - id: shoulder-flexion
                    own-error: {sem: 4, population: ten of our own people, source: {kind: house, text: Otterbrook}}
                """);
        Problems problems = new Problems();
        Vocabulary vocabulary = VocabularyReader.read(folder, problems).orElseThrow();

        MovementTest test = vocabulary.reading().battery().tests().get("shoulder-flexion");
        assertThat(test.errors()).hasSize(2);
        assertThat(test.errors().get(0).population()).isEqualTo("ten of our own people");
        assertThat(problems.all()).isEmpty();
    }

    @Test
    void aMistakeInTheClinicsFileIsToldWithItsLine() throws IOException {
        Files.writeString(folder.resolve("house/tests.yaml"), "tests:\n  - id: shoulder-flexion\n    minutes: soon\n");
        Problems problems = new Problems();

        assertThat(VocabularyReader.read(folder, problems)).isEmpty();
        assertThat(problems.all()).extracting(Problem::line).contains(3);
    }
}
