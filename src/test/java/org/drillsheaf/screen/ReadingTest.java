package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.client.Client;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.client.Sex;
import org.drillsheaf.client.Visit;
import org.junit.jupiter.api.Test;

/** Facts of the trade: common practice, no source. */
class ReadingTest {
    private static final Client WOMAN = House.client(Optional.of(Sex.FEMALE), 1986);
    private static final String BOTH_HIPS_AND_LOW_SQUAT =
            """
            thigh-drop: {unit: deg, left: -8, right: -10}
            hip-extension: {unit: deg, left: 0, right: 2}
            squat-depth: {unit: deg, value: 2, tucks: yes}
            breath-out: {unit: s, value: 3}
            straight-leg-raise: {unit: deg, left: 72, right: 74}
            sway-back-stance: {unit: cm, hip: 2, shoulder: 0}
            """;

    private static Reading read(String screen) {
        return InventedScreen.read(WOMAN, List.of(), screen, Map.of());
    }

    @Test
    void bothSidesLimitedWithLowSquatReadsAsExtensionDominant() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT + "toe-touch: {unit: cm, value: 8}\n");

        assertThat(reading.leading()).map(p -> said(p.name())).contains("Extension-dominant, both sides");
        assertThat(reading.contradictions()).isEmpty();
    }

    @Test
    void palmsFarBelowTheFloorTurnItIntoLaxGiveAndNameTheContradiction() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT + "toe-touch: {unit: cm, value: -19}\n");

        assertThat(reading.leading()).map(p -> said(p.name())).contains("Extension-dominant with lax give");
        assertThat(reading.contradictions()).extracting(Contradiction::id).containsExactly("palms-down-hips-short");
        assertThat(said(reading.contradictions().get(0).findings())).contains("−19 cm");
        assertThat(reading.hasRestriction("no-end-range")).isTrue();
        assertThat(reading.conditions()).extracting(ScreenCondition::id).containsExactly("hypermobility");
    }

    @Test
    void whileLaxGiveIsOpenItsRestrictionsHoldAlready() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT);

        assertThat(reading.verdict("extension-lax-give")).isEqualTo(Verdict.OPEN);
        assertThat(reading.hasRestriction("no-end-range")).isTrue();
        assertThat(said(reading.restrictions().get(0).because())).contains("open");
        assertThat(reading.conditions()).allMatch(ScreenCondition::holds);
    }

    @Test
    void evidenceIsListedForAgainstAndNotKnown() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT);
        PresentationReading both =
                reading.presentation("extension-both-sides", Optional.empty()).orElseThrow();

        assertThat(both.evidence(Evidence.Kind.FOR))
                .extracting(e -> said(e.words()))
                .contains(
                        "side-lying thigh drop limited on both sides (L −8°, R −10°)",
                        "the squat stalls and goes deeper only by tucking (2°, tucks)");
        assertThat(both.evidence(Evidence.Kind.NOT_KNOWN)).isNotEmpty();
        assertThat(said(both.openBecause())).containsExactly("Standing toe touch: not tested");
    }

    @Test
    void theNextTestIsTheOneThatSettlesMostAndSaysWhy() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT);
        NextTest next = reading.nextTest().orElseThrow();

        assertThat(next.test().id()).isEqualTo("toe-touch");
        assertThat(next.minutes()).isEqualTo(1);
        assertThat(said(next.reason()))
                .startsWith("Take standing toe touch: it settles most of what is open")
                .contains("lax give")
                .endsWith("1 minute");
    }

    @Test
    void aSideThatWasLeftOutIsTakenNotRepeated() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT.replace("left: -8, right: -10", "right: -10")
                + "toe-touch: {unit: cm, value: 8}\n");
        NextTest next = reading.nextTest().orElseThrow();

        assertThat(next.repeat()).isFalse();
        assertThat(said(next.reason())).startsWith("Take side-lying thigh drop, left: it settles most");
    }

    /** One unknown finding with three ways to come out: two make both sides hold, one makes lax give hold. */
    @Test
    void theGainIsTheDropOfUncertaintySummedOverTheOpenNames() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT);

        double oneName = InformationGain.entropy(2, 1);
        assertThat(reading.nextTest().orElseThrow().bits())
                .isCloseTo(2 * oneName, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void aTestThatAConditionBarsIsNeverNextAndItsQuestionIsOffered() {
        Reading reading =
                InventedScreen.read(WOMAN, List.of(ClientCondition.of("glaucoma")), BOTH_HIPS_AND_LOW_SQUAT, Map.of());

        assertThat(reading.nextTest()).map(n -> n.test().id()).isNotEqualTo(Optional.of("toe-touch"));
        assertThat(reading.standIn())
                .map(NextTest.StandInQuestion::question)
                .contains("Could you ever put your palms flat on the floor with straight knees?");
    }

    @Test
    void aNoToTheStandInQuestionSettlesItAndAYesDoesNot() {
        String answer =
                BOTH_HIPS_AND_LOW_SQUAT + "joint-laxity: {unit: points, value: 0, questions: {palms-ever: %s}}\n";
        List<ClientCondition> glaucoma = List.of(ClientCondition.of("glaucoma"));

        Reading never = InventedScreen.read(WOMAN, glaucoma, answer.formatted("no"), Map.of());
        Reading once = InventedScreen.read(WOMAN, glaucoma, answer.formatted("yes"), Map.of());

        assertThat(InventedScreen.inShort(never)).isEqualTo("EXT");
        assertThat(never.standIn()).isEmpty();
        assertThat(InventedScreen.inShort(once)).isEqualTo("open EXT,LAX (leaning EXT)");
    }

    @Test
    void theNextTestSaysWhatNeedsCare() {
        Reading reading =
                InventedScreen.read(WOMAN, List.of(ClientCondition.of("falls")), BOTH_HIPS_AND_LOW_SQUAT, Map.of());

        assertThat(said(reading.nextTest().orElseThrow().reason()))
                .endsWith("1 minute. With care (Poor balance or falls): Wall behind.");
    }

    @Test
    void aCountInTheEvidenceSaysHowManyHoldAndListsThem() {
        PresentationReading both = InventedScreen.table("invented-screens.txt")
                .get(34)
                .read()
                .presentation("extension-both-sides", Optional.empty())
                .orElseThrow();

        assertThat(both.evidence())
                .extracting(e -> said(e.words()))
                .contains(
                        "two outer signs of an extended body: 4 of 5 there, 1 not known",
                        "the squat stalls and goes deeper only by tucking: not known (painful)");
    }

    @Test
    void noTestThatAConditionBarsIsProposedForAnyRowAndAnyCondition() {
        List<String> conditions = House.RULES.battery().tests().values().stream()
                .flatMap(t -> t.bars().stream())
                .flatMap(b -> b.condition().stream())
                .distinct()
                .toList();
        assertThat(conditions).hasSizeGreaterThan(12);
        Map<String, Integer> proposed = new LinkedHashMap<>();
        for (InventedScreen row : InventedScreen.table("invented-screens.txt").subList(21, 35)) {
            for (String condition : conditions) {
                List<ClientCondition> with = List.of(ClientCondition.of(condition));
                Reading reading = InventedScreen.read(row.client(), with, row.yaml(), Map.of());
                Bars bars = new Bars(with, List.of(), InventedScreen.DAY);
                reading.nextTest().ifPresent(n -> {
                    proposed.merge(n.test().id(), 1, Integer::sum);
                    assertThat(bars.barsAll(n.test()))
                            .as(condition + " and " + n.test().id())
                            .isFalse();
                });
            }
        }
        assertThat(proposed).hasSizeGreaterThan(3);
    }

    @Test
    void aCoachMayDeclineWhatFollowsFromTheScreenAndTheReasonIsKept() {
        Reading reading = read(BOTH_HIPS_AND_LOW_SQUAT + "joint-laxity: {unit: points, value: 7}\n");
        assertThat(reading.conditions().get(0).holds()).isTrue();

        var visit = InventedScreen.visit(
                InventedScreen.DAY, BOTH_HIPS_AND_LOW_SQUAT + "joint-laxity: {unit: points, value: 7}\n", Map.of());
        var declined = new Visit(
                visit.date(),
                visit.safety(),
                visit.observed(),
                visit.measuredBy(),
                visit.next(),
                visit.log(),
                visit.screen(),
                visit.coach(),
                Map.of("hypermobility", "Measured by a clinician: not lax."),
                visit.handoutNote(),
                1);
        Reading after = House.RULES.read(WOMAN, List.of(), declined, reading.screen(), Optional.empty());

        assertThat(after.conditions().get(0).holds()).isFalse();
        assertThat(after.conditions().get(0).declined()).contains("Measured by a clinician: not lax.");
    }

    @Test
    void theJointCountAloneSwitchesOnTheLaxityRestrictions() {
        Reading reading = read("joint-laxity: {unit: points, value: 5}\n");

        assertThat(reading.lax()).isTrue();
        assertThat(reading.hasRestriction("effort-5")).isTrue();
    }

    @Test
    void twoFreeThighsNameLaxGiveOnlyOnceTheyWereSeenWithThePelvisHeld() {
        String free =
                """
                thigh-drop: {unit: deg, left: -30, right: -30}
                hip-extension: {unit: deg, left: 0, right: 2}
                squat-depth: {unit: deg, value: 2, tucks: yes}
                breath-out: {unit: s, value: 3}
                straight-leg-raise: {unit: deg, left: 72, right: 74}
                toe-touch: {unit: cm, value: 8}
                joint-laxity: {unit: points, value: 0}
                sway-back-stance: {unit: cm, hip: 2, shoulder: 0}
                """;

        assertThat(InventedScreen.inShort(read(free))).isEqualTo("open LAX");
        assertThat(InventedScreen.inShort(
                        InventedScreen.read(WOMAN, List.of(), free, Map.of("thighs-drop-with-pelvis-held", true))))
                .isEqualTo("LAX");
    }

    @Test
    void localFindingsCarryTheGoalTheyPointTo() {
        Reading reading = InventedScreen.table("invented-screens.txt").get(16).read();

        assertThat(reading.layers().local().get(0).goal()).contains("restore-hip-extension");
        assertThat(said(reading.layers().local().get(0).words())).startsWith("Short hip fronts on both sides");
    }

    @Test
    void underneathIsSaidWithTheValuesAndTheExpectation() {
        Reading reading = InventedScreen.table("invented-screens.txt").get(9).read();

        assertThat(reading.layers().underneath()).contains(Side.LEFT);
        assertThat(reading.layers().expectedFirst()).isEqualTo(Side.RIGHT);
        assertThat(said(reading.layers().underneathWords()))
                .startsWith("Left side probably underneath")
                .contains("L −2°, R −16°");
    }

    @Test
    void fewDataAndNoReferenceAreSaid() {
        Reading old = InventedScreen.read(House.client(Optional.of(Sex.MALE), 1944), List.of(), "{}", Map.of());
        Reading young = InventedScreen.read(House.client(Optional.of(Sex.MALE), 2012), List.of(), "{}", Map.of());

        assertThat(old.fewData()).isTrue();
        assertThat(young.noReference()).isTrue();
        assertThat(young.nextTest()).isEmpty();
    }
}
