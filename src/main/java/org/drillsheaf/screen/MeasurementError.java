package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import org.drillsheaf.Source;
import org.drillsheaf.client.Sex;

/**
 * Error of one measurement. All formulas about errors stand here. Source of the formulas: Weir JP, Quantifying test-retest
 * reliability using the intraclass correlation coefficient and the SEM, J Strength Cond Res 2005;19(1):231–240.
 *
 * @param sem standard error of one measurement, in the unit of the test, above 0
 * @param sex the sex it was found for; empty when it holds for both
 * @param population who was measured
 * @param ofThisClinic true when the clinic found it by measuring its own people twice
 */
public record MeasurementError(
        BigDecimal sem, Optional<Sex> sex, String population, Source source, boolean ofThisClinic) {
    /** 1.96 × √2: two measurements of an unchanged person differ by less than this many SEM in 95 of 100. */
    public static final double MDC95_FACTOR = 1.96 * StrictMath.sqrt(2);
    /** 1.645 × √2, for 90 of 100. */
    public static final double MDC90_FACTOR = 1.645 * StrictMath.sqrt(2);

    private static final BigDecimal MDC95 = BigDecimal.valueOf(MDC95_FACTOR);

    /**
     * SEM = SD × √(1 − ICC). Do not use it with an ICC near 1 that was rounded to two decimals: the SEM is then mostly
     * rounding.
     *
     * @param standardDeviation of the people measured, 0 or above
     * @param intraclassCorrelation 0 to 1
     */
    public static double semFrom(double standardDeviation, double intraclassCorrelation) {
        if (!(standardDeviation >= 0) || !(intraclassCorrelation >= 0 && intraclassCorrelation <= 1)) {
            throw new IllegalArgumentException("SD must be 0 or above and ICC between 0 and 1");
        }
        return standardDeviation * StrictMath.sqrt(1 - intraclassCorrelation);
    }

    /** SEM of people who were each measured twice: the standard deviation of the differences over √2. */
    public static double semFromDifferences(double standardDeviationOfDifferences) {
        return standardDeviationOfDifferences / StrictMath.sqrt(2);
    }

    /** Smallest difference of two measurements that is not chance in 95 of 100 unchanged people; same unit as the SEM. */
    public static double mdc95(double sem) {
        return MDC95_FACTOR * sem;
    }

    public static double mdc90(double sem) {
        return MDC90_FACTOR * sem;
    }

    /** SEM from a published MDC90. */
    public static double semFromMdc90(double mdc90) {
        return mdc90 / MDC90_FACTOR;
    }

    /**
     * Distance from a cut-off below which a value says nothing.
     *
     * @param factor how many SEM: 1 by default, 1.645 for a strict clinic
     */
    public BigDecimal line(BigDecimal step, BigDecimal factor) {
        return roundUp(sem.multiply(factor), step);
    }

    /** Smallest real change between two dates, or two sides of one date: MDC95, rounded up. */
    public BigDecimal change(BigDecimal step) {
        return roundUp(sem.multiply(MDC95), step);
    }

    /** Rounds an error up to the step in which values are stored, never down. */
    public static BigDecimal roundUp(BigDecimal value, BigDecimal step) {
        return value.divide(step, 0, RoundingMode.CEILING).multiply(step);
    }
}
