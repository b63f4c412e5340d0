package org.drillsheaf.drill.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.client.ClientCondition;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillReader;
import org.drillsheaf.drill.SampleDrill;
import org.junit.jupiter.api.Test;

/** The judge with facts given by hand; what the poses really measure is tested with the library. */
class SafetyTest {
    private static final LocalDate VISIT = LocalDate.of(2026, 11, 25);

    @Test
    void aDrillThatBreaksNoRuleIsAllowed() {
        Judgement judgement = judge(drill(), harmless(), hip(Side.LEFT));

        assertThat(judgement.action()).isEqualTo(Action.ALLOWED);
        assertThat(judgement.reasons()).isEmpty();
    }

    @Test
    void aHipBentPastTheLimitIsExcludedWithTheNumberInWords() {
        Judgement judgement = judge(drill(), harmless().with(Measure.HIP_FLEXION, 95), hip(Side.LEFT));

        assertThat(judgement.action()).isEqualTo(Action.EXCLUDE);
        assertThat(said(judgement.reasons().get(0).words())).contains("hip bend, degrees: 95 (rule: > 80)");
        assertThat(judgement.reasons().get(0).condition()).isEqualTo("hip-posterior");
    }

    @Test
    void theSurgeonsWordLiftsTheLimitsAndADateAloneDoesNot() {
        Facts deep = harmless().with(Measure.HIP_FLEXION, 95);
        ClientCondition longAgo = condition("hip-posterior", Map.of(), Set.of(Side.LEFT), LocalDate.of(2020, 1, 1));
        ClientCondition lifted = condition(
                "hip-posterior", Map.of("limits-lifted", "yes"), Set.of(Side.LEFT), LocalDate.of(2026, 10, 1));

        assertThat(judge(drill(), deep, longAgo).action()).isEqualTo(Action.EXCLUDE);
        assertThat(judge(drill(), deep, lifted).action()).isEqualTo(Action.ALLOWED);
    }

    @Test
    void whatCannotBeMeasuredIsNotSafe() {
        Map<Measure, Double> numbers = new EnumMap<>(harmless().numbers());
        numbers.remove(Measure.HIP_IN);
        Facts unsure = new Facts(numbers, harmless().truths(), Set.of());

        Judgement judgement = judge(drill(), unsure, hip(Side.LEFT));

        assertThat(judgement.action()).isEqualTo(Action.EXCLUDE);
        assertThat(said(judgement.reasons().get(0).words())).contains("thigh turned in, degrees: not known");
    }

    @Test
    void aVariantThatPassesWhenMeasuredAgainMakesItAChange() {
        Drill drill = drill();
        Safety safety = safety(d ->
                hasCounter(d) ? harmless() : harmless().with(Measure.STAND, 2).with(Measure.FREE_STAND, 2));

        Judgement judgement = safety.judge(drill, client(ClientCondition.of("blood-thinners")));

        assertThat(judgement.action()).isEqualTo(Action.MODIFY);
        assertThat(judgement.drill().equipment()).containsExactly("wall", "counter");
        assertThat(judgement.texts()).extracting(LocalText::english).contains("Keep one hand on the worktop.");
    }

    @Test
    void aVariantThatFailsWhenMeasuredAgainExcludesTheDrill() {
        Judgement judgement = judge(
                drill(),
                harmless().with(Measure.STAND, 2).with(Measure.FREE_STAND, 2),
                ClientCondition.of("blood-thinners"));

        assertThat(judgement.action()).isEqualTo(Action.EXCLUDE);
        assertThat(said(judgement.reasons().get(0).words())).contains("no written change answers it");
    }

    @Test
    void aChangeThatTheDrillDoesNotCarryExcludesIt() {
        Drill bare = SampleDrill.drill(SampleDrill.TEXT
                .replaceAll("variants:\\n.*\\n", "")
                .replaceAll("conditions:\\n.*\\n", "conditions: []\n"));

        assertThat(judge(
                                bare,
                                harmless().with(Measure.STAND, 2).with(Measure.FREE_STAND, 2),
                                ClientCondition.of("blood-thinners"))
                        .action())
                .isEqualTo(Action.EXCLUDE);
    }

    @Test
    void theAuthorsTagCountsBesideTheRulesAndTheStricterWins() {
        Drill tagged = SampleDrill.drill(SampleDrill.TEXT.replace(
                "{id: pregnancy, action: modify, variant: hand-on-worktop,", "{id: hip-posterior, action: exclude,"));

        assertThat(judge(tagged, harmless(), hip(Side.LEFT)).action()).isEqualTo(Action.EXCLUDE);
        assertThat(judge(drill(), harmless(), ClientCondition.of("pregnancy")).action())
                .as("tagged modify though no rule fires")
                .isEqualTo(Action.MODIFY);
    }

    @Test
    void aPauseIsTakenOutOfTheDoseWithoutAVariant() {
        ClientCondition pressure = ClientCondition.of("blood-pressure");
        Safety safety =
                safety(d -> harmless().with(Measure.PAUSE, d.breathing().pause().most()));

        Judgement judgement = safety.judge(drill(), client(pressure));

        assertThat(judgement.action()).isEqualTo(Action.MODIFY);
        assertThat(judgement.limits().noPause()).isTrue();
        assertThat(judgement.drill().breathing().pause().most()).isZero();
        assertThat(judgement.texts()).extracting(LocalText::english).contains("Do not wait after the breath out.");
    }

    @Test
    void twoSoreSidesLeaveNoSideToLieOn() {
        Facts lying = harmless().with(Measure.ON_SIDE, Truth.YES);
        ClientCondition rightHip = hip(Side.RIGHT);
        ClientCondition leftShoulder =
                condition("shoulder-unstable", Map.of(), Set.of(Side.LEFT), LocalDate.of(2026, 1, 1));

        assertThat(judge(drill(), lying, rightHip).lieOn()).contains(Side.LEFT);
        Judgement both = judge(drill(), lying, rightHip, leftShoulder);
        assertThat(both.action()).isEqualTo(Action.EXCLUDE);
        assertThat(both.reasons()).extracting(r -> said(r.words())).anyMatch(w -> w.contains("both sides to lie on"));
    }

    @Test
    void anUnknownSideCountsAsBoth() {
        assertThat(judge(drill(), harmless().with(Measure.ON_SIDE, Truth.YES), hip())
                        .action())
                .isEqualTo(Action.EXCLUDE);
    }

    @Test
    void weeksAreCountedToTheVisitAndNotKnownCountsAsEarly() {
        Facts floor = harmless().with(Measure.ON_FLOOR, Truth.YES);
        Map<String, String> allowed = Map.of("approach-known", "yes", "floor-allowed", "yes");
        ClientCondition early = condition("hip-posterior", allowed, Set.of(Side.LEFT), VISIT.minusWeeks(11));
        ClientCondition late = condition("hip-posterior", allowed, Set.of(Side.LEFT), VISIT.minusWeeks(12));
        ClientCondition undated = new ClientCondition(
                "hip-posterior", Set.of(Side.LEFT), Optional.empty(), allowed, Optional.empty(), Set.of(), 0);

        assertThat(judge(drill(), floor, early).action()).isEqualTo(Action.EXCLUDE);
        assertThat(judge(drill(), floor, late).action()).isEqualTo(Action.ALLOWED);
        assertThat(judge(drill(), floor, undated).action()).isEqualTo(Action.EXCLUDE);
    }

    @Test
    void poorBalanceTogetherWithWeakBonesLeavesNoFreeStandingEvenWithAHand() {
        Safety safety = safety(d ->
                hasCounter(d) ? harmless() : harmless().with(Measure.STAND, 2).with(Measure.FREE_STAND, 2));
        ClientCondition falls = ClientCondition.of("falls");
        ClientCondition bones = ClientCondition.of("osteoporosis");

        assertThat(safety.judge(drill(), client(falls)).action()).isEqualTo(Action.MODIFY);
        assertThat(safety.judge(drill(), client(falls, bones)).action()).isEqualTo(Action.EXCLUDE);
        assertThat(safety.judge(
                                drill(),
                                ClientSafety.of(
                                        ProjectRules.RULES,
                                        List.of(falls, bones),
                                        VISIT,
                                        50,
                                        Set.of("another-adult", "down-to-floor")))
                        .action())
                .isEqualTo(Action.MODIFY);
    }

    @Test
    void moreThanFourExtraSentencesExcludeTheDrill() {
        Facts many = harmless()
                .with(Measure.FLAT_BACK, Truth.YES)
                .with(Measure.ON_FLOOR, Truth.YES)
                .with(Measure.KNEE_CONTACT, Truth.YES)
                .with(Measure.EFFORT, 4);
        ClientCondition[] four = {
            ClientCondition.of("belly-gap"),
            ClientCondition.of("blood-thinners"),
            ClientCondition.of("leaks-heaviness"),
            ClientCondition.of("feet-feeling"),
            ClientCondition.of("acute-leg-pain")
        };
        Judgement judgement = judge(drill("x-drill"), many, four);

        assertThat(judgement.action()).isEqualTo(Action.EXCLUDE);
        assertThat(judgement.reasons()).extracting(r -> said(r.words())).anyMatch(w -> w.contains("extra sentences"));
    }

    static Facts harmless() {
        Map<Measure, Double> numbers = new EnumMap<>(Measure.class);
        Map<Measure, Truth> truths = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            if (measure.kind() == Measure.Kind.NUMBER) {
                numbers.put(measure, 0.0);
            } else {
                truths.put(measure, Truth.NO);
            }
        }
        return new Facts(numbers, truths, Set.of());
    }

    static Safety safety(Measuring measuring) {
        return new Safety(ProjectRules.RULES, new DrillReader(SampleDrill.schema()), measuring);
    }

    private static Judgement judge(Drill drill, Facts facts, ClientCondition... conditions) {
        return safety(d -> facts).judge(drill, client(conditions));
    }

    private static ClientSafety client(ClientCondition... conditions) {
        return ClientSafety.of(ProjectRules.RULES, List.of(conditions), VISIT, 50, Set.of("down-to-floor"));
    }

    private static boolean hasCounter(Drill drill) {
        return drill.equipment().contains("counter");
    }

    private static Drill drill() {
        return SampleDrill.drill();
    }

    /** The sample under a name that no rule knows. */
    private static Drill drill(String id) {
        org.drillsheaf.Problems problems = new org.drillsheaf.Problems();
        String text = SampleDrill.TEXT.replace("id: wall-lean-breath", "id: " + id);
        return new org.drillsheaf.drill.CatalogueReader(SampleDrill.words(), SampleDrill.schema())
                .read(Map.of(id + ".yaml", text), problems)
                .drill(id)
                .orElseThrow();
    }

    private static ClientCondition hip(Side... sides) {
        return condition(
                "hip-posterior",
                Map.of("approach-known", "yes", "floor-allowed", "yes"),
                Set.of(sides),
                LocalDate.of(2026, 2, 10));
    }

    private static ClientCondition condition(
            String id, Map<String, String> settings, Set<Side> sides, LocalDate since) {
        return new ClientCondition(id, sides, Optional.of(since), settings, Optional.empty(), Set.of(), 0);
    }
}
