package org.drillsheaf.desk.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.course.Folders;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.screen.Battery;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.store.record.Content;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is typed into one field of the screen, and what then stands in the visit. */
class ScreenEntryTest {
    private static Battery battery;

    @BeforeAll
    static void read() {
        Folders folders = new Folders(Path.of("").toAbsolutePath(), Path.of("no-clinic"));
        battery = Knowledge.read(folders, new Problems())
                .orElseThrow()
                .vocabulary()
                .reading()
                .battery();
    }

    private static Content visit(String yaml) {
        return Content.of(
                YamlNode.parse("visit", yaml, new Problems()).orElseThrow().json());
    }

    private static List<ScreenEntry> entries(String test) {
        return ScreenEntry.of(battery.test(test).orElseThrow());
    }

    @Test
    void aNumberComesWithTheUnitOfItsTest() {
        Content visit = entries("thigh-drop").get(0).with(visit("date: 2026-06-04"), -9);
        assertThat(visit.value("/screen/thigh-drop/unit")).contains("deg");
        assertThat(visit.value("/screen/thigh-drop/left")).contains("-9");
        assertThat(visit.value("/screen/thigh-drop/right")).isEmpty();
    }

    @Test
    void painStandsBesideTheNumberAndGoesAlone() {
        ScreenEntry right = entries("shoulder-internal-rotation").get(1);
        Content visit = right.withPain(right.with(visit("date: 2026-06-04"), 44), true);
        assertThat(right.isPainful(visit)).isTrue();
        assertThat(right.value(visit)).contains("44");
        Content calm = right.withPain(visit, false);
        assertThat(right.isPainful(calm)).isFalse();
        assertThat(right.value(calm)).contains("44");
    }

    @Test
    void whatStandsBesideAValueStays() {
        Content before =
                visit("screen: {straight-leg-raise: {unit: deg, left: {value: 90, or-more: true, note: soft}}}");
        ScreenEntry left = entries("straight-leg-raise").get(0);
        Content visit = left.with(before, 84);
        assertThat(left.value(visit)).contains("84");
        assertThat(visit.value("/screen/straight-leg-raise/left/note")).contains("soft");
    }

    @Test
    void takingEverythingBackLeavesNothingOfTheTest() {
        ScreenEntry left = entries("thigh-drop").get(0);
        Content before = visit("date: 2026-06-04");
        Content after = left.withoutValue(left.with(before, -9));
        assertThat(after.below("/screen/thigh-drop")).isEmpty();
    }

    @Test
    void halfOfAPairIsKeptAndMeansNothingYet() {
        ScreenEntry hip = entries("sway-back-stance").get(0);
        Content visit = hip.with(visit("date: 2026-06-04"), 2);
        assertThat(hip.value(visit)).contains("2");
        assertThat(ScreenEntry.withoutHalves(visit, battery).below("/screen/sway-back-stance"))
                .isEmpty();
        Content whole = entries("sway-back-stance").get(1).with(visit, 0);
        assertThat(ScreenEntry.withoutHalves(whole, battery)).isSameAs(whole);
    }

    @Test
    void aMarkOfATestWithOneValueStandsBesideIt() {
        ScreenEntry squat = entries("squat-depth").get(0);
        Content visit = squat.withMark(squat.with(visit("date: 2026-06-04"), 14), "tucks", true);
        assertThat(squat.value(visit)).contains("14");
        assertThat(squat.mark(visit, "tucks")).contains(true);
    }

    @Test
    void numbersOutsideTheTestAreNotPossible() {
        ScreenEntry drop = entries("thigh-drop").get(0);
        assertThat(drop.isPossible(-60)).isTrue();
        assertThat(drop.isPossible(-61)).isFalse();
        ScreenEntry ankle = entries("knee-to-wall").get(0);
        assertThat(ankle.isOnStep(9.5)).isTrue();
        assertThat(ankle.isOnStep(9.3)).isFalse();
    }

    @Test
    void everyTestHasAPosition() {
        for (MovementTest test : battery.tests().values()) {
            assertThat(ScreenModel.position(test))
                    .isIn("standing", "seated", "supine", "side-lying", "prone", "anywhere");
        }
    }
}
