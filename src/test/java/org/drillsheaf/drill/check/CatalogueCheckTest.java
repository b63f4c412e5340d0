package org.drillsheaf.drill.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.CatalogueReader;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.SampleDrill;
import org.drillsheaf.drill.safety.PoseMeasuring;
import org.drillsheaf.drill.safety.ProjectRules;
import org.drillsheaf.drill.safety.Safety;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each drill is broken in one place, and the check has to say so. */
class CatalogueCheckTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "Reach both arms forward and down. | Your arms reach forward. | WARNING | does not start with a verb",
                "Reach both arms forward and down. | Reach both of your long arms slowly forward and then also quite a bit down. | WARNING | has 15 words",
                "Breathe out as you reach. | Breathe out for 4 seconds as you reach. | WARNING | The text says “4 seconds”, but breath and hold",
                "Breathe out as you reach. | Take 9 breaths like this. | WARNING | The text says “9 breaths”, but the dose is 1–3 × 4–6 breaths",
                "Breathe out as you reach. | Do 5 rounds of it. | WARNING | The text says “5 rounds”, but the dose",
                "Breathe out as you reach. | Bend your hip to 90°. | WARNING | names degrees or a right angle",
                "Breathe out as you reach. | Keep your heels 40 cm away. | WARNING | The text says “40 cm”, but the pose has",
                "Sides of your belly at work | A stretch in your belly | WARNING | asks for burning, stretching or engaging",
                "Sides of your belly at work} | Sides of your belly at work, es: Los lados del vientre} | WARNING | This text is missing in es",
                "Breathe out as you reach. | Physiologically inappropriate muscular hyperactivity destabilizes respiratory coordination. Deteriorating neuromuscular efficiency considerably complicates rehabilitation. Individualized recommendations necessitate professional communication. | WARNING | reads at grade",
                "reviewed-on: 2026-10-12 | reviewed-on: 2019-10-12 | WARNING | The last review was on 2019-10-12",
                "reviewed-on: 2026-10-12 | reviewed-on: 2027-10-12 | ERROR | lies in the future",
                "out-seconds: [6, 8] | out-seconds: [3, 4] | WARNING | A full breath out lasts 5 to 10 seconds",
                "full-exhale: 2} | hamstring-and-pelvis: 3} | WARNING | A hamstring drill from Restore on reaches effort 4",
                ", mark: reach} | } | WARNING | No step tells what the arrow “reach” shows",
                ", mark: reach} | } | ADVICE | No action step has a mark",
                "hip: {flex: 20, abd: 4} | hip: {flex: 400, abd: 4} | ERROR | hip flex is 400°",
                "{place: heel.R, x: 0.16} | {place: heel.R, x: 0.9} | ERROR | misses by",
                "knee: {flex: 10} | knee: {flex: -70} | ERROR | Variant “hand-on-worktop”: knee flex is -70°",
                "effort: {default: 2, range: [1, 2]} | effort: {default: 2, range: [1, 6]} | WARNING | For hip-posterior the rules say exclude and the tag says allowed",
                "tags: {belly: 0, | tags: {belly: 3, | WARNING | For belly-gap the rules say exclude and the tag says allowed",
                "resist: false | resist: true | WARNING | For glaucoma the rules say exclude and the tag says allowed (Glaucoma or raised eye pressure: breath out against",
                "{id: pregnancy, action: modify, variant: hand-on-worktop, | {id: no-kneel, action: exclude, | ADVICE | For no-kneel the tag says exclude and the rules say allowed",
                "stop: [] | translations: {ar: {by: machine}} | ADVICE | made by a machine and nobody has gone through it"
            })
    void aDrillBrokenInOnePlaceGetsItsMessage(String whole, String broken, Problem.Severity severity, String message) {
        assertThat(SampleDrill.TEXT).contains(whole);

        List<Problem> problems = check(SampleDrill.TEXT.replace(whole, broken));

        assertThat(problems)
                .as(problems.toString())
                .anyMatch(p -> p.severity() == severity && p.what().contains(message) && p.line() > 0);
        assertThat(check(SampleDrill.TEXT)).as("the whole drill has none of it").noneMatch(p -> p.what()
                .contains(message));
    }

    @Test
    void aDrillOfMoreThanSevenStepsIsTooLong() {
        String step = "  - {en: \"Reach both arms forward and down.\", mark: reach}\n";

        assertThat(check(SampleDrill.TEXT.replace(step, step.repeat(7))))
                .anyMatch(p -> p.what().equals("The drill has 8 steps"));
    }

    @Test
    void familiesHaveNoGapsAndNeighboursNameEachOther() {
        Catalogue catalogue = catalogue(
                text("a", "level: 1", "prerequisites: []", "prerequisites: [c]\nharder: c"),
                text("c", "level: 3", "prerequisites: []", "prerequisites: [a]"),
                text("d", "level: 3", "family: wall-lean", "family: other"));

        assertThat(new LadderCheck(catalogue).check())
                .extracting(Problem::what)
                .contains(
                        "“wall-lean” has no drill on level 2",
                        "“c” does not name “a” as its easier neighbour",
                        "“a” is in the end a prerequisite of itself",
                        "“d” is alone in the family “other”")
                .filteredOn(w -> w.contains("prerequisite of itself"))
                .hasSize(1);
    }

    @Test
    void twoDrillsWithTheSameWordsOrNameAreTold() {
        Catalogue catalogue = catalogue(
                text("a", "level: 1", "{en: Wall lean with long breath}", "{en: One}"),
                text("b", "level: 2", "{en: Wall lean with long breath}", "{en: Two}"),
                text("c", "level: 3", "{en: Wall lean with long breath}", "{en: Two}"));

        List<Problem> problems = new DuplicateCheck(catalogue).check();

        assertThat(problems).anyMatch(p -> p.what().equals("100 % of its wording stands in “a” too"));
        assertThat(problems)
                .anyMatch(
                        p -> p.severity() == Problem.Severity.ERROR && p.what().equals("“b” has the same name"));
    }

    @Test
    void goalsAndConditionsWithoutEnoughDrillsAreTold() {
        CatalogueCheck check = new CatalogueCheck(
                catalogue(SampleDrill.TEXT), ProjectRules.RULES, new DrillReader(SampleDrill.schema()), TODAY);

        CatalogueCheck.Result result = check.run(done -> {});

        assertThat(result.problems())
                .anyMatch(p -> p.what().startsWith("The goal “overhead-reach” is served by 0 drills"))
                .anyMatch(p -> p.what().startsWith("For “no-kneel” phase integrate has 0 drills of 0 families left"));
        assertThat(result.coverage().byGoalAndPosition().get("full-exhale")).containsEntry("leaning", 1);
        assertThat(result.coverage().table(List.of("leaning", "seated")))
                .anyMatch(line -> line.startsWith("full-exhale") && line.contains("1"));
    }

    private static List<Problem> check(String text) {
        Drill drill = catalogue(text).drill("wall-lean-breath").orElseThrow();
        DrillReader reader = new DrillReader(SampleDrill.schema());
        PoseMeasuring measuring = new PoseMeasuring();
        return new CatalogueCheck(catalogue(text), ProjectRules.RULES, reader, TODAY)
                .drill(drill, new Safety(ProjectRules.RULES, reader, measuring), measuring);
    }

    private static String text(String id, String level, String from, String to) {
        return SampleDrill.TEXT
                .replace("id: wall-lean-breath", "id: " + id)
                .replace("level: 1", level)
                .replace(from, to);
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
