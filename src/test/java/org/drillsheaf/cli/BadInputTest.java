package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever a user gets wrong: exit code 2, one message with file, line and remedy, nothing left half-written. */
class BadInputTest {
    private static final Path SAMPLE = Path.of("samples/clients/odile-farrant.yaml");

    @TempDir
    private Path folder;

    static Stream<Arguments> spoiledFiles() {
        return Stream.of(
                Arguments.of("broken YAML", "  languages: [en]", "  languages: [en", "valid YAML"),
                Arguments.of("unknown equipment", "[wall, chair,", "[wall, sofa,", "sofa"),
                Arguments.of(
                        "unknown goal",
                        "wish: restore-hip-extension",
                        "wish: restore-everything",
                        "restore-everything"),
                Arguments.of("unknown key", "  stature-cm: 168", "  stature-cm: 168\n  shoe-size: 40", "shoe-size"),
                Arguments.of("wrong unit", "thigh-drop: {unit: deg", "thigh-drop: {unit: cm", "cm"),
                Arguments.of("an angle no joint can reach", "left: -8, right: -10", "left: -8, right: -900", "900"),
                Arguments.of("a side on a test without sides", "{unit: s, value: 3}", "{unit: s, left: 3}", "side"),
                Arguments.of("an unknown test", "      breath-out:", "      breath-in:", "breath-in"),
                Arguments.of("a birth year in the future", "born: 1979", "born: 2179", "2179"),
                Arguments.of(
                        "a five megabyte text", "called: Odile", "called: " + "x".repeat(5_000_000), "characters long"),
                Arguments.of("two visits on one date", "", "\n  - date: 2026-03-05\n", "2026-03-05"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("spoiledFiles")
    void oneMessageWithFileLineAndRemedy(String name, String from, String to, String told) throws IOException {
        String good = Files.readString(SAMPLE);
        String bad = from.isEmpty() ? good.stripTrailing() + to : good.replace(from, to);
        assertThat(bad).as("the sample holds what is to be spoiled").isNotEqualTo(good);
        Path file = Files.writeString(folder.resolve("client.yaml"), bad);
        Path out = folder.resolve("out");

        CommandRun run = CommandRun.of("build", file.toString(), "--out", out.toString());

        assertThat(run.code()).isEqualTo(2);
        List<String> messages =
                run.err().lines().filter(l -> l.contains("client.yaml")).toList();
        assertThat(messages).as(run.err()).hasSize(1);
        assertThat(messages.get(0))
                .matches(".*client\\.yaml:\\d+: .+\\. .+\\.")
                .contains(told)
                .hasSizeLessThan(400);
        assertThat(run.err()).doesNotContain("Exception").doesNotContain("\tat ");
        assertThat(run.out()).isEmpty();
        assertThat(out).doesNotExist();
    }

    @Test
    void aMissingFileIsNamed() {
        CommandRun run = CommandRun.of("build", "samples/clients/nobody.yaml", "--out", folder.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("nobody.yaml: There is no such file. Check the name and the folder.");
    }

    @Test
    void aFileInPlaceOfTheOutputFolderIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");

        CommandRun run = CommandRun.of("build", SAMPLE.toString(), "--out", file.toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("This is a file, not a folder. Choose another folder with --out.");
        assertThat(file).hasContent("mine");
    }

    @Test
    void anOutputFolderThatCannotBeWrittenIsRefused() {
        // /proc refuses new folders even to the administrator, so that the test means something when run as one.
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.isDirectory(Path.of("/proc")), "needs a Linux /proc");

        CommandRun run = CommandRun.of("build", SAMPLE.toString(), "--out", "/proc/drillsheaf");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("/proc/drillsheaf").contains("--out").doesNotContain("Exception");
    }

    @Test
    void aVisitThatIsNotThereIsAnsweredWithThoseThatAre() {
        CommandRun run = CommandRun.of("read", SAMPLE.toString(), "--visit", "2026-01-01");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("There is no visit on 2026-01-01. Name one of 2026-03-05.");
    }

    @Test
    void anUnknownOptionShowsTheUsage() {
        CommandRun run = CommandRun.of("read", SAMPLE.toString(), "--loud");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--loud").contains("Usage: drillsheaf read");
    }
}
