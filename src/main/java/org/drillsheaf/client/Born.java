package org.drillsheaf.client;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;

/**
 * When somebody was born.
 *
 * @param date the day, when it was given; its year is then {@code year}
 */
public record Born(int year, Optional<LocalDate> date) {

    public static Born in(int year) {
        return new Born(year, Optional.empty());
    }

    public static Born on(LocalDate date) {
        return new Born(date.getYear(), Optional.of(date));
    }

    /** Whole years on that day; with only a birth year, the difference of the years. Negative before birth. */
    public int ageOn(LocalDate day) {
        return date.map(d -> Period.between(d, day).getYears()).orElse(day.getYear() - year);
    }

    /** True when that day lies before the birth. */
    public boolean isAfter(LocalDate day) {
        return date.map(d -> d.isAfter(day)).orElse(year > day.getYear());
    }
}
