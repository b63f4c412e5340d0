package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drillsheaf.client.Sex;
import org.drillsheaf.screen.rule.Truth;

/**
 * One test for one client: its cut-offs for their age and sex and its errors, in whole steps of the test. When the sex is not
 * given, a statement counts only if it comes out alike for both; else it is not known.
 */
final class Scale {
    /** Below this age there is no cut-off except of the joint count. Years. */
    static final int ADULT_FROM = 18;

    /**
     * What holds for one sex.
     *
     * @param line distance from a cut-off below which a value says nothing; 0 where the test has no error
     * @param change smallest real change; 0 where the test has none
     */
    record Variant(Sex sex, Optional<MeasurementError> error, long line, long change) {}

    private final MovementTest test;
    private final int age;
    private final List<Variant> variants;

    Scale(MovementTest test, Optional<Sex> sex, int age, BigDecimal factor) {
        this.test = test;
        this.age = age;
        List<Variant> found = new ArrayList<>();
        for (Sex who : Sex.values()) {
            if (sex.isEmpty() || sex.get() == who) {
                Optional<MeasurementError> error = test.errors().stream()
                        .filter(e -> e.sex().map(s -> s == who).orElse(true))
                        .findFirst();
                found.add(new Variant(
                        who,
                        error,
                        error.map(e -> steps(e.line(test.step(), factor))).orElse(0L),
                        error.map(e -> steps(e.change(test.step()))).orElse(0L)));
            }
        }
        this.variants = List.copyOf(found);
    }

    MovementTest test() {
        return test;
    }

    List<Variant> variants() {
        return variants;
    }

    boolean hasReference() {
        return age >= ADULT_FROM || test.norm() instanceof Norm.Count;
    }

    private boolean lowerIsFuller() {
        return test.norm() instanceof Norm.Threshold threshold && !threshold.higherIsFuller();
    }

    long steps(BigDecimal value) {
        return value.divide(test.step(), 0, java.math.RoundingMode.HALF_UP).longValueExact();
    }

    /** A number in the test's own unit and direction as whole steps, more is fuller. */
    long fuller(double value) {
        long steps = StrictMath.round(value / test.step().doubleValue());
        return lowerIsFuller() ? -steps : steps;
    }

    /** What is known of a value; pain makes it unknown, a bound leaves one end open. */
    Span span(Optional<Measurement> measurement, Optional<String> part) {
        if (measurement.isEmpty() || measurement.get().painful()) {
            return Span.UNKNOWN;
        }
        return asWritten(measurement.get(), part);
    }

    /** The same without regard to pain. */
    Span asWritten(Measurement measurement, Optional<String> part) {
        Optional<Double> value =
                part.isPresent() ? Optional.ofNullable(measurement.parts().get(part.get())) : measurement.value();
        if (value.isEmpty()) {
            return Span.UNKNOWN;
        }
        long steps = fuller(value.get());
        return switch (measurement.bound()) {
            case EXACT -> Span.exactly(steps);
            case OR_MORE -> lowerIsFuller() ? Span.atMost(steps) : Span.atLeast(steps);
            case OR_LESS -> lowerIsFuller() ? Span.atLeast(steps) : Span.atMost(steps);
        };
    }

    /** The mark for this client's age and one sex. */
    Optional<Norm.Mark> mark(List<Norm.Mark> marks, Variant variant) {
        return marks.stream().filter(m -> m.fits(age, variant.sex())).findFirst();
    }

    /** A truth that must come out alike for both sexes when the sex is not given. */
    Truth agreed(Function<Variant, Truth> truth) {
        Truth first = truth.apply(variants.get(0));
        return variants.stream().allMatch(v -> truth.apply(v) == first) ? first : Truth.UNKNOWN;
    }

    /** Whether a value is at or above (or at or below) a number by at least the line, in the test's own direction. */
    Truth compares(Span span, boolean atLeast, double number) {
        boolean fullerWanted = atLeast != lowerIsFuller();
        long mark = fuller(number);
        return agreed(
                v -> fullerWanted ? span.passes(mark, v.line()) : span.negated().passes(-mark, v.line()));
    }

    /** Whether the first is less full than the second by a real change. */
    Truth isLess(Span first, Span second) {
        return agreed(v -> second.minus(first).reaches(v.change()));
    }
}
