package org.drillsheaf.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a coach sees who checks a folder of drills: what is wrong where, what to do, how far the folder reaches. */
class CheckCommandTest {
    private static final String DRILL = "wall-lean-breath.yaml";

    @TempDir
    private Path folder;

    private Path drills;
    private String whole;

    @BeforeEach
    void oneDrillOfTheLibraryInAFolderOfItsOwn() throws IOException {
        drills = Files.createDirectory(folder.resolve("my-drills"));
        whole = Files.readString(Path.of("exercise-library", DRILL)).replaceAll("(?m)^(harder|easier): .*\\R", "");
        Files.writeString(drills.resolve(DRILL), whole);
    }

    @Test
    void aDrillWithoutErrorsEndsWithZeroAndTheCoverageTable() {
        CommandRun run = check();

        assertThat(run.code()).as(run.out() + run.err()).isZero();
        assertThat(run.out())
                .contains("1 drills, 1 of them in use: 0 errors")
                .contains("Language es: 1 drills in use speak it whole, 1 of them by a machine and not reviewed.")
                .containsPattern("(?m)^full-exhale .* 1 ")
                .containsPattern("(?m)^no-kneel +1/1 +1/1 +1/1 +1/1$");
    }

    @Test
    void warningsNameFileLineAndRemedyAndDoNotFail() throws IOException {
        CommandRun run = checkWith("en: Bend your knees a little.", "en: Your knees are bent a little.");

        assertThat(run.code()).isZero();
        assertThat(run.out())
                .containsPattern("(?m)^Warnings \\(\\d+\\)$")
                .containsPattern(
                        "(?m)^  my-drills/wall-lean-breath\\.yaml:\\d+: The step “Your knees .*” does not start"
                                + " with a verb\\. Begin with what to do, .*\\.$");
    }

    @Test
    void anImpossiblePoseIsAnErrorAndFails() throws IOException {
        CommandRun run = checkWith("knee: {flex: 26}", "knee: {flex: 400}");

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).containsPattern("(?s)^Errors \\(\\d+\\)\\R  my-drills/\\S+:\\d+: .*knee flex");
    }

    @Test
    void aDrillThatCannotBeReadIsAnErrorAndFails() throws IOException {
        CommandRun run = checkWith("phases: [settle, restore, reference, integrate]", "phases: [warm-up]");

        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .containsPattern("^Errors \\(1\\)\\R  my-drills/wall-lean-breath\\.yaml:6: .*settle")
                .contains("0 drills");
    }

    @Test
    void theDayThatReviewsAreCountedToCanBeGiven() {
        assertThat(checkOn("2029-01-01").out()).contains("The last review was on 2026-10-12");
        assertThat(checkOn("2026-01-01").code()).as("a review in the future").isEqualTo(1);
    }

    @Test
    void jsonHoldsTheSame() throws IOException {
        CommandRun run =
                checkWith("en: Bend your knees a little.", "en: Your knees are bent a little.", "--format=json");

        JsonNode json = new ObjectMapper().readTree(run.out());

        assertThat(json.get("drills").asInt()).isEqualTo(1);
        assertThat(json.get("errors")).isEmpty();
        assertThat(json.get("warnings").findValuesAsText("what")).anyMatch(w -> w.contains("start with a verb"));
        assertThat(json.at("/languages/ar/unreviewed").asInt()).isEqualTo(1);
        assertThat(json.at("/goals/full-exhale/leaning").asInt()).isEqualTo(1);
        assertThat(json.at("/conditions/no-kneel/settle/drills").asInt()).isEqualTo(1);
        assertThat(json.at("/conditions/no-kneel/goals/full-exhale/leaning").asInt())
                .isEqualTo(1);
    }

    @Test
    void theLibraryItselfHasNothingToMend() {
        CommandRun run = CommandRun.of("check", "--today", "2026-11-25");

        assertThat(run.code()).isZero();
        assertThat(run.out()).as(run.out()).containsPattern("\\d+ drills, .* 0 errors, 0 warnings,");
    }

    @Test
    void thePageOfLimitsForAClinicianIsTheOneInTheDocuments() throws IOException {
        CommandRun run = CommandRun.of("check", "--limits-to-confirm");

        assertThat(run.code()).isZero();
        assertThat(run.out().lines())
                .as("write it anew: ./drillsheaf check --limits-to-confirm > docs/limits-to-confirm.md")
                .containsExactlyElementsOf(Files.readAllLines(Path.of("docs", "limits-to-confirm.md")));
    }

    @Test
    void theCoverageOfEveryGoalUnderEveryConditionIsPrintedOnRequest() {
        assertThat(check().out()).doesNotContain("Drills/positions left for each goal");
        assertThat(check("--coverage").out())
                .containsPattern("(?m)^   3 full-exhale$")
                .containsPattern("(?m)^condition +1 +2 +3 ")
                .containsPattern("(?m)^no-kneel +1/1 +1/1 +1/1 +0/0 ");
    }

    @Test
    void aFolderThatIsNotThereIsBadInput() {
        CommandRun run = CommandRun.of("check", folder.resolve("nowhere").toString());

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("nowhere: There is no such folder. Name the folder that holds drills.");
        assertThat(run.out()).isEmpty();
    }

    private CommandRun checkWith(String from, String to, String... more) throws IOException {
        assertThat(whole).contains(from);
        Files.writeString(drills.resolve(DRILL), whole.replace(from, to));
        return check(more);
    }

    private CommandRun check(String... more) {
        return checkOn("2026-11-25", more);
    }

    private CommandRun checkOn(String today, String... more) {
        List<String> arguments = new ArrayList<>(List.of("check", drills.toString(), "--today", today));
        arguments.addAll(List.of(more));
        return CommandRun.of(arguments.toArray(String[]::new));
    }
}
