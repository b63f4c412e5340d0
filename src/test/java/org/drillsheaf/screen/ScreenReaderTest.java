package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.client.Sex;
import org.drillsheaf.client.Visit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ScreenReaderTest {
    private static final Client CLIENT = House.client(Optional.of(Sex.FEMALE), 1980);

    private static List<Problem> problems(String screen) {
        Problems problems = new Problems();
        Optional<YamlNode> node = YamlNode.parse("ann.yaml", screen, problems);
        node.ifPresent(n -> {
            Visit visit = new Visit(
                    InventedScreen.DAY,
                    Map.of(),
                    Map.of(),
                    Optional.empty(),
                    Optional.empty(),
                    org.drillsheaf.client.PracticeLog.NOTHING_SAID,
                    Optional.of(n),
                    Optional.empty(),
                    Map.of(),
                    Optional.empty(),
                    1);
            new ScreenReader(House.RULES.battery())
                    .read(new ClientFile("ann.yaml", CLIENT, List.of(), List.of(visit)), problems);
        });
        return problems.all();
    }

    /** Each gives exactly one message, with the line and a remedy. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "toe-touch: {unit: deg, value: 4} | The unit of toe-touch is cm, not deg",
                "toe-touch: {value: 4} | The unit of toe-touch is missing",
                "toe-touch: 4 | The value of toe-touch has no unit",
                "toe-touch: {unit: cm, left: 4} | Standing toe touch (toe-touch) has no sides",
                "thigh-drop: {unit: deg, value: -9} | does not say which side",
                "thigh-drop: {unit: deg, left: -9, middle: 2} | “middle” is not known in thigh-drop",
                "thigh-drop: {unit: deg, left: 75} | thigh-drop of 75° cannot be true",
                "thigh-drop: {unit: deg, left: -9.5} | is finer than it can be measured",
                "thigh-drop: {unit: deg, left: much} | The value of thigh-drop is no number",
                "thigh-drop: {unit: deg, left: {note: later}} | There is no value of thigh-drop here",
                "thigh-drop: {unit: deg, left: {value: -9, pain: 12}} | Pain of 12",
                "thigh-drop: {unit: deg, left: {value: -9, pain: perhaps}} | “pain” is neither yes nor no",
                "thigh-drop: {unit: deg, left: {value: -9, or-more: yes, or-less: yes}} | cannot be “or more” and “or less”",
                "thigh-dorp: {unit: deg, left: -9} | There is no test “thigh-dorp”",
                "squat-depth: {unit: deg, value: 4, tuks: yes} | “tuks” is not known in squat-depth",
                "sway-back-stance: {unit: cm, hip: 4} | “shoulder” is missing in sway-back-stance",
                "joint-laxity: {unit: points, value: 12} | joint-laxity of 12 points cannot be true",
                "joint-laxity: {unit: points, value: 1, items: {palms: yes, thumb-left: yes}} | written as 1, but 2 items say yes",
                "joint-laxity: {unit: points, value: 1, questions: {dubble: yes}} | There is no answer in joint-laxity",
                "back-rib-expansion: {unit: cm, value: .nan} | is no number"
            })
    void whatIsWrongIsToldOnceWithItsLineAndARemedy(String line, String what) {
        List<Problem> problems = problems("breath-out: {unit: s, value: 4}\n" + line + "\n");

        assertThat(problems).as(line).hasSize(1);
        assertThat(problems.get(0).line()).isEqualTo(2);
        assertThat(problems.get(0).what()).contains(what);
        assertThat(problems.get(0).remedy()).isNotBlank();
    }

    @Test
    void aTestThatStandsTwiceIsRefused() {
        List<Problem> problems = problems("toe-touch: {unit: cm, value: 4}\ntoe-touch: {unit: cm, value: 5}\n");

        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).line()).isEqualTo(2);
        assertThat(problems.get(0).what()).contains("toe-touch");
    }

    @Test
    void theRemedyForASlipOfTheSignNamesTheConvention() {
        assertThat(problems("thigh-drop: {unit: deg, left: 75}\n").get(0).remedy())
                .contains("between −60 and 40")
                .contains("minus = thigh below it");
    }

    @Test
    void notTestedMayBeWrittenInEveryWay() {
        assertThat(
                        problems(
                                """
                        thigh-drop: not-tested
                        toe-touch: {unit: cm, value: not-tested}
                        hip-extension: {unit: deg, left: not-tested, right: 4}
                        """))
                .isEmpty();
    }

    @Test
    void onlyTheJointCountIsKeptFromAnEarlierVisit() {
        LocalDate later = InventedScreen.DAY.plusWeeks(6);
        Visit first = InventedScreen.visit(
                InventedScreen.DAY,
                "{joint-laxity: {unit: points, value: 6}, breath-out: {unit: s, value: 4}}",
                Map.of());
        Visit second = InventedScreen.visit(later, "{breath-out: {unit: s, value: 7}}", Map.of());
        Problems problems = new Problems();
        List<Screen> screens = new ScreenReader(House.RULES.battery())
                .read(new ClientFile("ann.yaml", CLIENT, List.of(), List.of(first, second)), problems);

        assertThat(problems.all()).isEmpty();
        assertThat(screens.get(1).measurements())
                .extracting(Measurement::testId, Measurement::date)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("breath-out", later),
                        org.assertj.core.groups.Tuple.tuple("joint-laxity", InventedScreen.DAY));
        Reading reading = House.RULES.read(CLIENT, List.of(), second, screens.get(1), Optional.empty());
        assertThat(reading.lax()).isTrue();
        assertThat(said(reading.remarks())).contains("Joint laxity count is of 2026-06-15.");
    }
}
