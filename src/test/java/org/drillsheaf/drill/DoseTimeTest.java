package org.drillsheaf.drill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** The time model is the house's own: common practice, no source. */
class DoseTimeTest {
    private static final Breathing LONG_BREATH = new Breathing(
            Breathing.Seconds.of(3),
            new Breathing.Seconds(6, 8),
            Breathing.Seconds.of(2),
            Breathing.Airway.NOSE,
            Breathing.Airway.MOUTH,
            1,
            true,
            false,
            Optional.empty());

    @Test
    void breathsCountInOutAndPause() {
        // 40 + 2 × 5 × (3 + 7 + 2) + 30 = 190 s
        Dose dose = dose(Dose.Count.BREATHS, 2, 5, 2, Dose.Sides.BOTH_TOGETHER);

        assertThat(DoseTime.seconds(dose, LONG_BREATH, dose.usual())).isEqualTo(190);
        assertThat(DoseTime.minutes(dose, LONG_BREATH, dose.usual())).isEqualTo(4);
    }

    @Test
    void sidesAlternateSetBySetWithTenSecondsEachChange() {
        // 40 + 2 × 2 × 6 × 6 + 3 × 10 + 45 = 259 s
        Dose dose = dose(Dose.Count.REPETITIONS, 2, 6, 4, Dose.Sides.EACH_SIDE);

        assertThat(DoseTime.seconds(dose, LONG_BREATH, dose.usual())).isEqualTo(259);
        assertThat(DoseTime.minutes(dose, LONG_BREATH, dose.usual())).isEqualTo(5);
    }

    @Test
    void stepsTakeTwoSecondsAndMinutesAreMinutes() {
        Dose steps = dose(Dose.Count.STEPS, 2, 16, 3, Dose.Sides.BOTH_TOGETHER);
        Dose walk = dose(Dose.Count.MINUTES, 1, 3, 3, Dose.Sides.BOTH_TOGETHER);

        assertThat(DoseTime.seconds(steps, LONG_BREATH, steps.usual())).isEqualTo(40 + 2 * 32 + 30);
        assertThat(DoseTime.seconds(walk, LONG_BREATH, walk.usual())).isEqualTo(40 + 180);
    }

    @Test
    void restGrowsWithEffort() {
        assertThat(DoseTime.restSeconds(3)).isEqualTo(30);
        assertThat(DoseTime.restSeconds(4)).isEqualTo(45);
        assertThat(DoseTime.restSeconds(5)).isEqualTo(60);
    }

    @Property
    void moreIsNeverShorter(
            @ForAll @IntRange(min = 1, max = 4) int sets,
            @ForAll @IntRange(min = 1, max = 30) int each,
            @ForAll @IntRange(min = 0, max = 6) int effort) {
        Dose dose = dose(Dose.Count.REPETITIONS, sets, each, effort, Dose.Sides.EACH_SIDE);
        Dose more = dose(Dose.Count.REPETITIONS, sets + 1, each + 1, effort + 1, Dose.Sides.EACH_SIDE);

        assertThat(DoseTime.minutes(more, LONG_BREATH, more.usual()))
                .isGreaterThanOrEqualTo(DoseTime.minutes(dose, LONG_BREATH, dose.usual()));
    }

    private static Dose dose(Dose.Count count, int sets, int each, int effort, Dose.Sides sides) {
        return new Dose(
                count,
                Map.of(),
                DoseRange.fixed(sets),
                DoseRange.fixed(each),
                6,
                DoseRange.fixed(0),
                DoseRange.fixed(effort),
                sides);
    }
}
