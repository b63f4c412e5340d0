package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.drillsheaf.saying.English.said;

import java.nio.file.Path;
import org.drillsheaf.drill.Phase;
import org.junit.jupiter.api.Test;

/** Readings as the tests of the presentations have them, and what the phases make of them. */
class NeedsMakerTest {
    private static final String START = "      thigh-drop:";
    private final House house = House.open();

    /** The sample with other measurements and, perhaps, a coach's part. */
    private Needs needs(String screen, String coach) {
        String yaml = House.text(Path.of("samples/clients/odile-farrant.yaml"));
        yaml = yaml.substring(0, yaml.indexOf(START)) + screen.indent(6) + coach.indent(4);
        return house.needs(house.client(yaml));
    }

    private static final String LAX_GIVE =
            """
            thigh-drop: {unit: deg, left: -9, right: -11}
            hip-extension: {unit: deg, left: 0, right: 2}
            hip-internal-rotation: {unit: deg, left: 40, right: 42}
            straight-leg-raise: {unit: deg, left: 104, right: 106}
            shoulder-flexion: {unit: deg, left: 122, right: 120}
            squat-depth: {unit: deg, value: 0, tucks: yes}
            toe-touch: {unit: cm, value: -20}
            infrasternal-angle: {unit: deg, value: 110}
            back-rib-expansion: {unit: cm, value: 0.7}
            breath-out: {unit: s, value: 3}
            sway-back-stance: {unit: cm, hip: 3, shoulder: 1}
            """;
    private static final String NOTHING_FOUND =
            """
            thigh-drop: {unit: deg, left: -30, right: -31}
            hip-extension: {unit: deg, left: 19, right: 20}
            hip-internal-rotation: {unit: deg, left: 42, right: 44}
            hip-external-rotation: {unit: deg, left: 46, right: 46}
            straight-leg-raise: {unit: deg, left: 78, right: 80}
            shoulder-flexion: {unit: deg, left: 170, right: 171}
            shoulder-internal-rotation: {unit: deg, left: 62, right: 62}
            trunk-rotation: {unit: deg, left: 50, right: 50}
            knee-to-wall: {unit: cm, left: 12, right: 11.5}
            squat-depth: {unit: deg, value: -24, tucks: no}
            toe-touch: {unit: cm, value: 0}
            infrasternal-angle: {unit: deg, value: 85}
            back-rib-expansion: {unit: cm, value: 2.8}
            breath-out: {unit: s, value: 9}
            sway-back-stance: {unit: cm, hip: 1, shoulder: 0}
            joint-laxity: {unit: points, value: 1}
            """;

    @Test
    void laxGiveRaisesFeetAndSideAbdominalsLowersInternalRotationAndCapsTheEffort() {
        Needs needs = needs(LAX_GIVE, "");

        assertThat(needs.start()).isEqualTo(Phase.SETTLE);
        assertThat(goal(needs, Phase.RESTORE, "foot-pressure-cueing").weight()).isEqualTo(4);
        assertThat(goal(needs, Phase.RESTORE, "foot-pressure-cueing").target()).isEqualTo(2);
        assertThat(goal(needs, Phase.SETTLE, "side-abdominals").weight()).isEqualTo(2);
        assertThat(goal(needs, Phase.SETTLE, "side-abdominals").target()).isEqualTo(1);
        assertThat(goal(needs, Phase.REFERENCE, "internal-rotation-reference").weight())
                .isEqualTo(4);
        assertThat(goal(needs, Phase.SETTLE, "internal-rotation-reference").weight())
                .isZero();
        assertThat(needs.effortCap()).isEqualTo(5);
        assertThat(said(goal(needs, Phase.RESTORE, "foot-pressure-cueing")
                        .reasons()
                        .get(1)))
                .contains("lax give")
                .contains("plus 2 to weight 4, target 2");
        assertThat(house.builder.offers(needs).all())
                .filteredOn(o -> o.drill().tags().truth("end-range").orElse(false))
                .noneMatch(Offer::isOpen);
    }

    @Test
    void withNoDominantPresentationAllGoalsWeighAlikeAndTheWishMore() {
        Needs needs = needs(NOTHING_FOUND, "");

        assertThat(needs.reading().leading().orElseThrow().id()).isEqualTo("none");
        assertThat(needs.start()).isEqualTo(Phase.REFERENCE);
        for (GoalNeed goal : needs.phase(Phase.REFERENCE).goals()) {
            int expected = goal.goal().equals("restore-hip-extension") ? 5 : 3;
            assertThat(goal.weight()).as(goal.goal()).isEqualTo(expected);
        }
        assertThat(goal(needs, Phase.REFERENCE, "restore-hip-extension").target())
                .isEqualTo(2);
    }

    @Test
    void theCoachsWeightWinsAndItsReasonIsKept() {
        Needs needs = needs(
                LAX_GIVE,
                """
                coach:
                  weights: [{phase: restore, goal: overhead-reach, weight: 4, reason: She paints ceilings.}]
                  start: {phase: restore, reason: Settled already last year.}
                """);

        GoalNeed goal = goal(needs, Phase.RESTORE, "overhead-reach");
        assertThat(goal.weight()).isEqualTo(4);
        assertThat(goal.target()).isEqualTo(2);
        assertThat(said(goal.reasons())).last().isEqualTo("the coach set weight 4, target 2: She paints ceilings.");
        assertThat(needs.start()).isEqualTo(Phase.RESTORE);
        assertThat(said(needs.startReasons().get(0))).isEqualTo("the coach chose it: Settled already last year.");
        assertThat(said(needs.startReasons().get(1))).startsWith("proposed was Settle");
    }

    private static GoalNeed goal(Needs needs, Phase phase, String goal) {
        return needs.phase(phase).goals().stream()
                .filter(g -> g.goal().equals(goal))
                .findFirst()
                .orElseThrow();
    }
}
