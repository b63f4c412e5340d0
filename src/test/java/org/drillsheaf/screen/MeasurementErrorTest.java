package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import org.drillsheaf.Source;
import org.drillsheaf.client.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasurementErrorTest {

    /** Table 1 of López-Miñarro PÁ et al., J Sports Sci Med 2009;8(1):116–122: SEM and published MDC, men, then women. */
    @ParameterizedTest
    @CsvSource({
        "2.8, 8", "3.0, 8", "1.4, 4", "1.2, 3", "2.3, 6", "2.5, 7", "2.2, 6",
        "4.0, 11", "4.2, 12", "1.3, 4", "1.4, 4", "4.0, 11", "2.5, 7", "3.4, 9"
    })
    void smallestChangeOfTheStraightLegRaiseTable(double sem, long published) {
        assertThat(Math.round(MeasurementError.mdc95(sem))).isEqualTo(published);
    }

    /** Weir JP, J Strength Cond Res 2005;19(1):231–240. */
    @Test
    void factors() {
        assertThat(MeasurementError.MDC95_FACTOR).isCloseTo(2.7719, within(5e-5));
        assertThat(MeasurementError.MDC90_FACTOR).isCloseTo(2.3264, within(5e-5));
        assertThat(MeasurementError.semFromMdc90(4)).isCloseTo(1.72, within(5e-3));
    }

    /** Conference table in Ann Rheum Dis: 0.91 → 2.52, 0.40 → 1.10 (printed; 1.109), 0.37 → 1.02 (printed; 1.026). */
    @Test
    void goniometerTableWithinItsRounding() {
        assertThat(MeasurementError.mdc95(0.91)).isCloseTo(2.52, within(0.01));
        assertThat(MeasurementError.mdc95(0.40)).isCloseTo(1.10, within(0.01));
        assertThat(MeasurementError.mdc95(0.37)).isCloseTo(1.02, within(0.01));
    }

    /** The same table prints SD 28.87 with ICC .99 and SEM 0.91: a rounded ICC near 1 gives back another SEM. */
    @Test
    void aRoundedIccNearOneMustNotBeTurnedBackIntoAnSem() {
        assertThat(MeasurementError.semFrom(28.87, 0.99)).isCloseTo(2.89, within(0.005));
    }

    /** 1.96 √2 (SDdiff / √2) = 1.96 SDdiff. */
    @Test
    void changeFromDifferencesOfTwoMeasurements() {
        assertThat(MeasurementError.mdc95(MeasurementError.semFromDifferences(5)))
                .isCloseTo(9.8, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "thigh-drop, , 3, 9",
        "hip-extension, , 5, 14",
        "hip-internal-rotation, , 2, 6",
        "hip-external-rotation, , 4, 9",
        "straight-leg-raise, MALE, 3, 9",
        "straight-leg-raise, FEMALE, 5, 12",
        "shoulder-flexion, , 13, 35",
        "shoulder-internal-rotation, , 2, 5",
        "trunk-rotation, , 2, 6",
        "knee-to-wall, , 1.0, 2.0",
        "squat-depth, , 5, 14",
        "toe-touch, , 4.0, 10.0",
        "infrasternal-angle, , 5, 14",
        "back-rib-expansion, , 0.6, 1.7",
        "breath-out, , 1, 3",
        "sway-back-stance, , 1.0, 3.0"
    })
    void lineAndChangeAreRoundedUpToTheStep(String id, String sex, BigDecimal line, BigDecimal change) {
        MovementTest test = House.test(id);
        MeasurementError error = test.errors().stream()
                .filter(e -> sex == null || e.sex().equals(Optional.of(Sex.valueOf(sex))))
                .findFirst()
                .orElseThrow();

        assertThat(error.line(test.step(), BigDecimal.ONE)).isEqualByComparingTo(line);
        assertThat(error.change(test.step())).isEqualByComparingTo(change);
    }

    @Test
    void anExactMultipleIsNotRoundedFurther() {
        MeasurementError error = new MeasurementError(
                new BigDecimal("0.6"), Optional.empty(), "", new Source(Source.Kind.HOUSE, ""), false);

        assertThat(error.line(new BigDecimal("0.1"), BigDecimal.ONE)).isEqualByComparingTo("0.6");
        assertThat(error.line(new BigDecimal("0.1"), new BigDecimal("1.645"))).isEqualByComparingTo("1.0");
    }

    /** Ferber R, Kendall KD, McElroy L, J Athl Train 2010;45(4):344–348: the criterion follows from the group means. */
    @Test
    void criticalCriteriaFollowFromTheGroupMeans() {
        assertThat(new BigDecimal("-16.29").subtract(new BigDecimal("6.87"))).isEqualByComparingTo("-23.16");
        assertThat(new BigDecimal("-15.51").add(new BigDecimal("5.82"))).isEqualByComparingTo("-9.69");
        assertThat((432 * -27.13 + 168 * -16.29) / 600).isCloseTo(-24.59, within(0.6));
        Norm.Threshold norm = (Norm.Threshold) House.test("thigh-drop").norm();
        assertThat(norm.cutoffs().get(0).value()).isEqualTo(Math.round(-23.16));
        assertThat(norm.beyond().get(0).value()).isEqualTo(Math.round(-24.59 - 2 * 7.27));
    }
}
