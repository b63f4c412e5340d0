package org.drillsheaf.drill.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.SampleDrill;
import org.drillsheaf.drill.safety.ProjectRules;
import org.junit.jupiter.api.Test;

/** Each drill is broken in one place, and the check has to say so. */
class CatalogueCheckTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @Test
    void goalsAndConditionsWithoutEnoughDrillsAreTold() {
        CatalogueCheck check = new CatalogueCheck(
                catalogue(SampleDrill.TEXT),
                ProjectRules.RULES,
                new DrillReader(SampleDrill.schema()),
                TODAY,
                ProjectRules.SPEECH);

        CatalogueCheck.Result result = check.run(done -> {});

        assertThat(result.problems())
                .anyMatch(p -> p.what().startsWith("The goal “overhead-reach” is served by 0 drills"))
                .anyMatch(p -> p.what()
                        .equals("The goal “full-exhale” is served by 1 drills in 1 positions, 0 of them without"
                                + " any equipment"))
                .anyMatch(p -> p.what().equals("No drill is done in the position “walking”"))
                .anyMatch(p -> p.what().equals("For “no-kneel” no drill is left that serves “overhead-reach”"))
                .anyMatch(p -> p.what().startsWith("For “no-kneel” phase integrate has 0 drills of 0 families left"));
        assertThat(result.coverage().byGoalAndPosition().get("full-exhale")).containsEntry("leaning", 1);
        assertThat(result.coverage().byCondition().get("no-kneel").byGoalAndPosition())
                .containsEntry("full-exhale", Map.of("leaning", 1))
                .containsEntry("overhead-reach", Map.of());
        assertThat(result.coverage().byCondition().get("hip-posterior").byGoalAndPosition())
                .doesNotContainKey("shift-to-one-side");
    }

    private static Catalogue catalogue(String... texts) {
        Map<String, String> files = new TreeMap<>();
        for (String text : texts) {
            files.put(text.substring(4, text.indexOf('\n')) + ".yaml", text);
        }
        DrillWords plain = SampleDrill.words();
        DrillWords words = new DrillWords(
                plain.goals(),
                plain.positions(),
                plain.equipment(),
                ProjectRules.RULES.conditions().keySet(),
                ProjectRules.RULES.kinds().keySet());
        Problems problems = new Problems();
        Catalogue catalogue = new CatalogueReader(words, SampleDrill.schema()).read(files, problems);
        assertThat(problems.all()).isEmpty();
        return catalogue;
    }
}
