package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** What a coach sees of a reading on the terminal, and what a machine gets. */
class ReadCommandTest {

    @Test
    void aClearClientGetsFindingsReadingAndGoalsAndNoProgram() {
        CommandRun run = CommandRun.of("read", "samples/clients/odile-farrant.yaml");

        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(run.out())
                .containsSubsequence(
                        "Safety: clear",
                        "Side-lying thigh drop",
                        "L −8°",
                        "limited",
                        "Reading: Extension-dominant, both sides",
                        "not a diagnosis",
                        "Goals by phase")
                .doesNotContain("Program:");
    }

    @Test
    void aStoppedClientShowsTheQuestionAndNoPresentation() {
        CommandRun run = CommandRun.of("read", "samples/clients/petra-holm.yaml");

        assertThat(run.code()).isEqualTo(ExitCode.CANNOT);
        assertThat(run.out()).contains("Safety: stopped", "stops: ").doesNotContain("Reading:", "Goals by phase");
    }

    /** Common practice, no source: in most people the right side comes back first when the left lay underneath. */
    @Test
    void aRescreenIsComparedWithTheErrorOfTheTests() {
        CommandRun run = CommandRun.of("read", "samples/clients/joaquin-mirande.yaml");

        assertThat(run.out())
                .containsSubsequence(
                        "Since 2 March 2026",
                        "Comfortable breath out: 2 s → 5 s, better (+3 s, counts from 3 s)",
                        "The layer underneath shows: one side forward, left. This is progress",
                        "Gate after Settle: gate met",
                        "Next: go on");
    }

    @Test
    void anEarlierVisitCanBeReadByItself() {
        CommandRun run = CommandRun.of("read", "samples/clients/joaquin-mirande.yaml", "--visit", "2026-03-02");

        assertThat(run.out())
                .contains("visit of 2 March 2026", "Reading: Extension-dominant, both sides")
                .doesNotContain("Since ");
    }

    @Test
    void explainingShowsEveryPresentationAndEveryReason() {
        String brief = CommandRun.of("read", "samples/clients/bram-okonjo.yaml").out();
        String full = CommandRun.of("read", "samples/clients/bram-okonjo.yaml", "--explain")
                .out();

        assertThat(brief).doesNotContain("One side forward, right");
        assertThat(full).contains("One side forward, right: not held", "passes at");
        assertThat(full.length()).isGreaterThan(2 * brief.length());
    }

    @Test
    void aMachineGetsTheSameReadingAsJson() throws IOException {
        CommandRun run = CommandRun.of("read", "samples/clients/joaquin-mirande.yaml", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(run.out());

        assertThat(json.at("/safety/status").asText()).isEqualTo("clear");
        assertThat(json.at("/leading").asText()).isEqualTo("one-side-forward");
        assertThat(json.at("/change/next").asText()).isEqualTo("advance");
        assertThat(json.at("/findings").size()).isGreaterThan(20);
        assertThat(json.at("/goals/0/phase").asText()).isEqualTo("restore");
    }
}
