package org.drillsheaf.drill.safety;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.drillsheaf.LocalText;

/**
 * Everything that the conditions file says. Immutable.
 *
 * @param conditions by id, in the order of the file
 * @param kinds kind of movement to the drills that have it
 * @param inPersonFrom from this many conditions of joints, heart and belly on there is no home program
 */
public record SafetyRules(
        Map<String, Condition> conditions,
        Map<String, Set<String>> kinds,
        List<Combination> combinations,
        int inPersonFrom,
        List<ByAge> byAge) {

    public SafetyRules {
        conditions = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(conditions));
        kinds = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
        combinations = List.copyOf(combinations);
        byAge = List.copyOf(byAge);
    }

    /**
     * Rules that hold for two or more conditions at once.
     *
     * @param needs one condition of each list
     * @param unlessSeen what the coach has to have seen for the rules not to hold
     */
    public record Combination(
            String id, LocalText reason, List<List<String>> needs, Optional<String> unlessSeen, List<Rule> rules) {
        public Combination {
            needs = List.copyOf(needs);
            rules = List.copyOf(rules);
        }

        boolean holds(Set<String> conditions, Set<String> seen) {
            return needs.stream().allMatch(any -> any.stream().anyMatch(conditions::contains))
                    && unlessSeen.filter(seen::contains).isEmpty();
        }
    }

    /** A condition that holds from an age on until the coach has seen it otherwise. */
    public record ByAge(String condition, int years, String unlessSeen) {}

    public Optional<Condition> condition(String id) {
        return Optional.ofNullable(conditions.get(id));
    }

    /** The kinds of movement that name this drill. */
    public Set<String> kindsOf(String drill) {
        Set<String> all = new TreeSet<>();
        kinds.forEach((kind, drills) -> {
            if (drills.contains(drill)) {
                all.add(kind);
            }
        });
        return all;
    }
}
