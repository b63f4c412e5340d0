package org.drillsheaf.cli;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Numbers and days as the terminal shows them. */
final class Words {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private Words() {}

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** A number without a needless decimal part. */
    static String number(double value) {
        return value == StrictMath.rint(value)
                ? String.valueOf((long) value)
                : String.format(Locale.ROOT, "%.1f", value);
    }
}
