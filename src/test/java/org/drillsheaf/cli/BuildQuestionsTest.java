package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a coach asks about a program while it is built. */
class BuildQuestionsTest {
    private static final String CLIENT = "samples/clients/edwin-tarrow.yaml";

    @TempDir
    private static Path out;

    @Test
    void theTerminalSaysWhyADrillIsNotInAndWhatAChangeWouldGain() {
        CommandRun run = CommandRun.of(
                "build",
                CLIENT,
                "--out",
                out.toString(),
                "--explain",
                "--why-not",
                "sit-hum,hips-lift-heels",
                "--what-if",
                "minutes=+5");

        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        assertThat(run.out())
                .containsSubsequence(
                        "      or ", "Proved best: ", "places for drills offered", "ruled out by their bound");
        assertThat(run.out())
                .contains("What if\n  With 5 more minutes: ")
                .containsPattern("(Why not .*\n  |is in\\. Without it: )");
    }

    @Test
    void aMachineGetsTheProgramItsProofAndEveryAnswer() throws IOException {
        CommandRun plain = CommandRun.of("build", CLIENT, "--out", out.toString(), "--format", "json");
        JsonNode program = new ObjectMapper().readTree(plain.out()).get("program");
        String in = program.at("/phases/3/drills/0/drill").asText();

        CommandRun run = CommandRun.of(
                "build",
                CLIENT,
                "--out",
                out.toString(),
                "--format",
                "json",
                "--why-not",
                in,
                "--what-if",
                "minutes=+5");
        JsonNode json = new ObjectMapper().readTree(run.out());

        assertThat(json.get("program")).isEqualTo(program);
        assertThat(program.at("/proof/best").asBoolean()).isTrue();
        assertThat(program.at("/proof/value")).isEqualTo(program.at("/proof/bound"));
        assertThat(program.at("/proof/ruled-out").asInt()).isPositive();
        assertThat(program.findValues("alternatives")).anyMatch(a -> !a.isEmpty());
        assertThat(json.at("/why-not/0/drill").asText()).isEqualTo(in);
        assertThat(json.at("/why-not/0/is-in").asBoolean()).isTrue();
        assertThat(json.at("/why-not/0/without-it/cost").isObject()).isTrue();
        assertThat(json.at("/why-not/0/without-it/decided").asBoolean()).isTrue();
        assertThat(json.at("/what-if/0/cost/coverage").asInt()).isLessThanOrEqualTo(0);
        assertThat(json.at("/reading/client").asText()).isEqualTo("edwin-tarrow");
        assertThat(json.at("/written").size()).isEqualTo(2);
    }

    @Test
    void aMachineIsToldWhyThereIsNoProgram() throws IOException {
        CommandRun run =
                CommandRun.of("build", "samples/clients/petra-holm.yaml", "--out", out.toString(), "--format", "json");

        assertThat(run.code()).isEqualTo(ExitCode.CANNOT);
        assertThat(new ObjectMapper().readTree(run.out()).at("/no-program").asText())
                .contains("safety answers");
    }

    @Test
    void aQuestionThatCannotBeAnsweredIsAMistakeWithItsRemedy() {
        for (String[] asked : new String[][] {
            {"--why-not", "no-such-drill", "Ids are the file names"},
            {"--what-if", "equipment=trampoline", "Use one of: "},
            {"--what-if", "minutes=5", "Write minutes=+5"},
            {"--what-if", "equipment=chair", "Name another piece"}
        }) {
            CommandRun run = CommandRun.of("build", CLIENT, "--out", out.toString(), asked[0], asked[1]);

            assertThat(run.code()).as(asked[1]).isEqualTo(ExitCode.BAD_INPUT);
            assertThat(run.err()).contains(asked[2]);
        }
    }
}
