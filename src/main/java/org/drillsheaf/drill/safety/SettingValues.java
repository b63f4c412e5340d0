package org.drillsheaf.drill.safety;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.Set;

/**
 * The settings of one client's condition on one date, every missing one at its cautious default.
 *
 * @param values setting id to value
 * @param assumed ids of the settings that took their cautious default
 * @param weeks whole weeks since the condition began, to the visit; not known when no beginning was given
 * @param age the client's age at the visit, years
 * @param seen what the coach has seen at the visit ({@code another-adult}, {@code down-to-floor} …); not seen counts as no
 * @param bothSides the condition is on both sides, or nobody said on which
 */
public record SettingValues(
        Map<String, String> values,
        Set<String> assumed,
        OptionalLong weeks,
        int age,
        Set<String> seen,
        boolean bothSides) {

    /** For rules that name no setting. */
    public static final SettingValues NONE =
            new SettingValues(Map.of(), Set.of(), OptionalLong.empty(), 0, Set.of(), true);

    public static final String WEEKS = "weeks";
    public static final String AGE = "age";
    public static final String BOTH_SIDES = "both-sides";
    public static final String SEEN = "seen:";

    public SettingValues {
        values = Map.copyOf(values);
        assumed = Set.copyOf(assumed);
        seen = Set.copyOf(seen);
    }

    Truth truth(String name) {
        if (name.equals(BOTH_SIDES)) {
            return Truth.of(bothSides);
        }
        if (name.startsWith(SEEN)) {
            return Truth.of(seen.contains(name.substring(SEEN.length())));
        }
        String value = values.get(name);
        return value == null ? Truth.UNKNOWN : Truth.of(value.equals("yes"));
    }

    Truth isWord(String name, String word) {
        String value = values.get(name);
        return value == null ? Truth.UNKNOWN : Truth.of(value.equals(word));
    }

    OptionalDouble number(String name) {
        if (name.equals(WEEKS)) {
            return weeks.isPresent() ? OptionalDouble.of(weeks.getAsLong()) : OptionalDouble.empty();
        }
        if (name.equals(AGE)) {
            return OptionalDouble.of(age);
        }
        String value = values.get(name);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(value));
    }
}
