package org.drillsheaf.drill;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What an author writes about a drill because no arithmetic can tell it, or to be stricter than the arithmetic. Keys are
 * those of the drill file.
 *
 * @param numbers for example {@code belly}, {@code stand}, {@code held-weight-kg}
 * @param truths for example {@code can-hold}, {@code end-range}
 * @param stop what ends the depth: {@code seat}, {@code floor}, {@code wall} or {@code nothing}
 * @param kinds kinds of movement named by the condition rules
 */
public record Tags(Map<String, Double> numbers, Map<String, Boolean> truths, Optional<String> stop, Set<String> kinds) {

    public static final Tags NONE = new Tags(Map.of(), Map.of(), Optional.empty(), Set.of());

    public Tags {
        numbers = Map.copyOf(numbers);
        truths = Map.copyOf(truths);
        kinds = Set.copyOf(kinds);
    }

    public Optional<Double> number(String key) {
        return Optional.ofNullable(numbers.get(key));
    }

    public Optional<Boolean> truth(String key) {
        return Optional.ofNullable(truths.get(key));
    }
}
