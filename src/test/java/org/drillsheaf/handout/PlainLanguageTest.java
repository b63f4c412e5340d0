package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.drillsheaf.Problems;
import org.drillsheaf.client.Paper;
import org.drillsheaf.handout.page.ClientHandout;
import org.junit.jupiter.api.Test;

/** Keeps true what docs/plain-language.md says, as far as it can be computed. */
class PlainLanguageTest {
    private static final Pattern ROW =
            Pattern.compile("(?m)^\\| \\d+ \\|[^|]+\\| (met|met †|not applicable|by hand) \\|[^|]+\\|$");

    @Test
    void everyItemOfTheThreeListsIsJudgedWithAReason() throws IOException {
        List<Long> rows = Pattern.compile("(?m)^## ")
                .splitAsStream(Files.readString(Path.of("docs/plain-language.md")))
                .map(part -> ROW.matcher(part).results().count())
                .filter(count -> count > 0)
                .toList();

        assertThat(rows).containsExactly(24L, 16L, 12L);
    }

    @Test
    void readingGradeOfAHandoutIsAtMostSix() {
        ClientHandout handout = handout("en");

        assertThat(CoachSheetMaker.grade(handout))
                .hasValueSatisfying(grade -> assertThat(grade).isLessThanOrEqualTo(6));
        assertThat(handout.drills()).allSatisfy(drill -> assertThat(drill.groups())
                .isNotEmpty()
                .allSatisfy(group -> assertThat(group.figure().alternative()).isNotBlank()));
    }

    @Test
    void pagesThatTheFormulaCannotCountGetNoGrade() {
        assertThat(CoachSheetMaker.grade(handout("ar"))).isEmpty();
    }

    private static ClientHandout handout(String language) {
        Problems problems = new Problems();
        return new HandoutMaker(SampleDocuments.printer(), java.util.Map.of())
                .handout(
                        SamplePrograms.order(
                                language, Paper.A4, false, List.of("wall-lean-breath", "arm-up-foot-back@left")),
                        problems)
                .orElseThrow(() -> new AssertionError(problems.all()));
    }
}
