package org.drillsheaf.client;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.drillsheaf.Side;

/**
 * Something the client lives with that changes what is safe.
 *
 * @param id condition id, for example {@code hip-posterior}
 * @param sides the sides concerned; empty when the condition has none or none was said
 * @param since the day it began; the last day of the month when only a month was given
 * @param settings what was said about it, as written ({@code limits-lifted} → {@code false}); a setting that is missing
 *     takes the cautious default of the condition
 * @param release a clinician's written word about it
 * @param releases ids of the safety questions which that word answers
 * @param line where it stands in the client's file
 */
public record ClientCondition(
        String id,
        Set<Side> sides,
        Optional<LocalDate> since,
        Map<String, String> settings,
        Optional<Release> release,
        Set<String> releases,
        int line) {

    public ClientCondition {
        sides = Set.copyOf(sides);
        settings = Map.copyOf(settings);
        releases = Set.copyOf(releases);
    }

    /** A condition of which nothing more is known. */
    public static ClientCondition of(String id) {
        return new ClientCondition(id, Set.of(), Optional.empty(), Map.of(), Optional.empty(), Set.of(), 0);
    }

    /** Whole weeks from the beginning to that day; empty when the beginning is not known. Never counted to today. */
    public OptionalLong weeksOn(LocalDate day) {
        return since.isPresent() ? OptionalLong.of(ChronoUnit.WEEKS.between(since.get(), day)) : OptionalLong.empty();
    }

    public Optional<String> setting(String name) {
        return Optional.ofNullable(settings.get(name));
    }

    /** True only when the setting was written as yes or true. */
    public boolean says(String name) {
        return setting(name).filter(v -> v.equals("true") || v.equals("yes")).isPresent();
    }
}
