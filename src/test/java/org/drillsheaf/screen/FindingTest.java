package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.Sex;
import org.drillsheaf.screen.rule.Truth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingTest {
    private static final Optional<Side> LEFT = Optional.of(Side.LEFT);
    private static final Optional<Side> NO_SIDE = Optional.empty();

    private static Finding finding(Optional<Sex> sex, int age, String test, String value, Optional<Side> side) {
        Client client = House.client(sex, InventedScreen.DAY.getYear() - age);
        return InventedScreen.read(client, List.of(), "{" + test + ": " + value + "}", Map.of())
                .finding(test, side)
                .orElseThrow();
    }

    private static Finding woman(String test, String value, Optional<Side> side) {
        return finding(Optional.of(Sex.FEMALE), 40, test, value, side);
    }

    @ParameterizedTest
    @CsvSource({
        "-20, LIMITED",
        "-21, AT_THE_LINE",
        "-23, AT_THE_LINE",
        "-25, AT_THE_LINE",
        "-26, FULL",
        "-37, FULL",
        "-42, BEYOND_EXPECTED"
    })
    void thighDropCountsFromItsErrorOn(int degrees, FindingKind kind) {
        Finding finding = woman("thigh-drop", "{unit: deg, left: " + degrees + "}", LEFT);

        assertThat(finding.kind()).isEqualTo(kind);
    }

    @Test
    void nearTheUpperMarkItIsFullPerhapsBeyond() {
        Finding finding = woman("thigh-drop", "{unit: deg, left: -38}", LEFT);

        assertThat(said(finding.kindWords())).isEqualTo("full, perhaps beyond");
        assertThat(finding.beyond()).isEqualTo(Truth.UNKNOWN);
        assertThat(said(finding.words()))
                .isEqualTo(
                        "Side-lying thigh drop, left: −38°, full, perhaps beyond (passes at −23° or less, error 3°)");
    }

    /** Malfait F et al., Am J Med Genet C 2017;175C:8–26: 6 in children, 5 to age 50, 4 above; exactly 50 is still 5. */
    @ParameterizedTest
    @CsvSource({
        "17, 6, BEYOND_EXPECTED",
        "17, 5, AT_THE_LINE",
        "17, 4, FULL",
        "18, 5, BEYOND_EXPECTED",
        "18, 4, AT_THE_LINE",
        "18, 3, FULL",
        "50, 5, BEYOND_EXPECTED",
        "50, 4, AT_THE_LINE",
        "51, 4, BEYOND_EXPECTED",
        "51, 3, AT_THE_LINE",
        "51, 2, FULL"
    })
    void jointCountAtTheExactAges(int age, int points, FindingKind kind) {
        Finding finding =
                finding(Optional.empty(), age, "joint-laxity", "{unit: points, value: " + points + "}", NO_SIDE);

        assertThat(finding.kind()).isEqualTo(kind);
    }

    /** The same source: one point below counts with two yes to the five questions. */
    @Test
    void onePointBelowCountsWithTwoYesToTheQuestions() {
        Finding two = woman(
                "joint-laxity", "{unit: points, value: 4, questions: {palms-ever: yes, double-jointed: yes}}", NO_SIDE);
        Finding one = woman("joint-laxity", "{unit: points, value: 4, questions: {palms-ever: yes}}", NO_SIDE);

        assertThat(said(two.kindWords())).isEqualTo("beyond expected, lax");
        assertThat(one.kind()).isEqualTo(FindingKind.AT_THE_LINE);
    }

    @Test
    void theCountIsAddedUpFromItsItems() {
        Finding finding = woman(
                "joint-laxity",
                "{unit: points, items: {little-finger-left: yes, little-finger-right: yes, thumb-left: yes, thumb-right: yes,"
                        + " elbow-left: yes, elbow-right: no, knee-left: no, knee-right: no, palms: no}}",
                NO_SIDE);

        assertThat(said(finding.values())).isEqualTo("5 points");
        assertThat(finding.kind()).isEqualTo(FindingKind.BEYOND_EXPECTED);
    }

    @Test
    void anItemThatWasNotLookedAtMayStillCount() {
        Finding finding = woman(
                "joint-laxity",
                "{unit: points, items: {little-finger-left: yes, little-finger-right: yes, thumb-left: yes, thumb-right: yes,"
                        + " elbow-left: no, elbow-right: no, knee-left: no, knee-right: no}}",
                NO_SIDE);

        assertThat(finding.beyond()).isEqualTo(Truth.UNKNOWN);
    }

    /** Men and women differ by 5 degrees: 62 is at the line of both, 70 passes both, 65 passes one. */
    @ParameterizedTest
    @CsvSource({"70, FULL", "65, AT_THE_LINE", "56, LIMITED", "59, AT_THE_LINE"})
    void withoutSexAFindingCountsOnlyWhereBothAgree(int degrees, FindingKind kind) {
        Finding finding =
                finding(Optional.empty(), 40, "straight-leg-raise", "{unit: deg, left: " + degrees + "}", LEFT);

        assertThat(finding.kind()).isEqualTo(kind);
    }

    @Test
    void aBoundDecidesOnlyWhatItDecides() {
        Finding ninety = woman("straight-leg-raise", "{unit: deg, left: {value: 90, or-more: true}}", LEFT);
        Finding hundred = woman("straight-leg-raise", "{unit: deg, left: {value: 100, or-more: true}}", LEFT);
        Finding forty = woman("straight-leg-raise", "{unit: deg, left: {value: 40, or-more: true}}", LEFT);
        Finding less = woman("straight-leg-raise", "{unit: deg, left: {value: 40, or-less: true}}", LEFT);

        assertThat(said(ninety.kindWords())).isEqualTo("full, perhaps beyond");
        assertThat(hundred.kind()).isEqualTo(FindingKind.BEYOND_EXPECTED);
        assertThat(forty.limited()).isEqualTo(Truth.UNKNOWN);
        assertThat(less.kind()).isEqualTo(FindingKind.LIMITED);
    }

    @ParameterizedTest
    @CsvSource({
        "'pain: 3', PAINFUL",
        "'pain: 2', LIMITED",
        "'pain: yes', PAINFUL",
        "'pain: no', LIMITED",
        "'stopped: yes', PAINFUL"
    })
    void painFromThreeOfTenCountsAsNotKnown(String pain, FindingKind kind) {
        Finding finding = woman("thigh-drop", "{unit: deg, left: {value: -5, " + pain + "}}", LEFT);

        assertThat(finding.kind()).isEqualTo(kind);
        assertThat(finding.limited().isUnknown()).isEqualTo(kind == FindingKind.PAINFUL);
        assertThat(said(finding.values())).isEqualTo("−5°");
    }

    @ParameterizedTest
    @CsvSource({
        "105, 'limited, wide'",
        "65, 'limited, narrow'",
        "104, at the line",
        "95, full",
        "75, full",
        "74, at the line"
    })
    void theRibAngleSaysWhichWay(int degrees, String words) {
        assertThat(said(woman("infrasternal-angle", "{unit: deg, value: " + degrees + "}", NO_SIDE)
                        .kindWords()))
                .isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"6, 3, 'limited, swayed'", "5.5, 3, at the line", "6, 2, at the line", "4, 8, full", "9, 1, full"})
    void swayNeedsBothMarks(double hip, double shoulder, String words) {
        assertThat(said(woman("sway-back-stance", "{unit: cm, hip: " + hip + ", shoulder: " + shoulder + "}", NO_SIDE)
                        .kindWords()))
                .isEqualTo(words);
    }

    @Test
    void belowEighteenThereIsNoReference() {
        Finding finding = finding(Optional.of(Sex.MALE), 17, "hip-extension", "{unit: deg, left: 0}", LEFT);

        assertThat(finding.kind()).isEqualTo(FindingKind.NO_REFERENCE);
        assertThat(finding.limited()).isEqualTo(Truth.UNKNOWN);
    }

    /**
     * Ferber 2010 counts below the horizontal as minus, Reese and Bandy 2003 count adduction as plus. A clinic that stores the
     * other convention gets the same finding for the same limb.
     */
    @ParameterizedTest
    @CsvSource({"10", "20", "22", "23", "26", "38", "42"})
    void theSameLimbInBothConventionsGivesTheSameFinding(int degreesBelowHorizontal) {
        Problems problems = new Problems();
        YamlNode other = House.yaml(
                """
                tests:
                  - id: thigh-drop
                    sign: "Adduction, plus = thigh below the horizontal"
                    plausible: [-40, 60]
                    norm:
                      threshold:
                        higher-is-fuller: true
                        cut-offs: [{value: 23, source: {kind: published, text: "Reese NB, Bandy WD, JOSPT 2003;33:326-330: 23.4"}}]
                        beyond: [{value: 39, source: {kind: derived, text: "as ours"}}]
                """);
        Battery turned = new BatteryReader(House.schema("tests"))
                .read(House.yaml(House.text(Path.of("shared/tests.yaml"))), other, problems)
                .orElseThrow();
        assertThat(problems.all()).extracting(Problem::message).isEmpty();

        Finding ours = woman("thigh-drop", "{unit: deg, left: " + -degreesBelowHorizontal + "}", LEFT);
        Scale scale = new Scale(turned.test("thigh-drop").orElseThrow(), Optional.of(Sex.FEMALE), 40, BigDecimal.ONE);
        Measurement measured = new Measurement(
                "thigh-drop",
                LEFT,
                Optional.of((double) degreesBelowHorizontal),
                Map.of(),
                Measurement.Bound.EXACT,
                false,
                Map.of(),
                Optional.empty(),
                InventedScreen.DAY,
                1);
        Finding theirs = new FindingMaker(scale, Optional.empty()).finding(LEFT, Optional.of(measured));

        assertThat(theirs.kind()).isEqualTo(ours.kind());
        assertThat(theirs.limited()).isEqualTo(ours.limited());
        assertThat(theirs.beyond()).isEqualTo(ours.beyond());
    }

    @Test
    void aClinicsOwnErrorIsUsedFirstAndNamed() {
        Problems problems = new Problems();
        YamlNode own = House.yaml(
                """
                tests:
                  - id: shoulder-flexion
                    own-error: {sem: 3, population: ten of our own people measured twice, source: {kind: house, text: Otterbrook 2026}}
                """);
        Battery battery = new BatteryReader(House.schema("tests"))
                .read(House.yaml(House.text(Path.of("shared/tests.yaml"))), own, problems)
                .orElseThrow();
        MovementTest test = battery.test("shoulder-flexion").orElseThrow();
        Scale scale = new Scale(test, Optional.of(Sex.FEMALE), 40, BigDecimal.ONE);

        assertThat(scale.variants().get(0).change()).isEqualTo(9);
        assertThat(test.errors()).hasSize(2);
        assertThat(said(new FindingMaker(scale, Optional.empty()).reason()))
                .isEqualTo("passes at 150° or more, error 3° of this clinic");
    }

    @Test
    void aBarredTestThatWasMeasuredDoesNotCount() {
        Client client = House.client(Optional.of(Sex.FEMALE), 1970);
        Reading reading = InventedScreen.read(
                client, List.of(ClientCondition.of("glaucoma")), "{toe-touch: {unit: cm, value: 20}}", Map.of());
        Finding finding = reading.finding("toe-touch", NO_SIDE).orElseThrow();

        assertThat(finding.kind()).isEqualTo(FindingKind.NOT_TESTED);
        assertThat(finding.limited()).isEqualTo(Truth.UNKNOWN);
        assertThat(said(reading.remarks())).anyMatch(r -> r.contains("was measured but does not count"));
    }
}
