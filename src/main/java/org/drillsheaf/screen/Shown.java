package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How numbers are written for people: a true minus, a point, no superfluous zeros. */
final class Shown {
    private Shown() {}

    static String number(double value) {
        String digits = BigDecimal.valueOf(StrictMath.abs(value))
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return value < 0 ? "−" + digits : digits;
    }

    static String number(BigDecimal value) {
        return number(value.doubleValue());
    }

    /** A number with its unit, for example {@code −9°} or {@code 1.5 cm}; one point is a point. */
    static String value(double value, Unit unit) {
        String suffix = unit == Unit.POINTS && value == 1 ? " point" : unit.suffix();
        return number(value) + suffix;
    }
}
