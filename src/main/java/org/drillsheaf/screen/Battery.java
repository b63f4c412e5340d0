package org.drillsheaf.screen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The tests a clinic takes, by id, in the order in which they are taken.
 *
 * @param tests unmodifiable, in order
 */
public record Battery(Map<String, MovementTest> tests) {

    public Battery {
        tests = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(tests));
    }

    public Optional<MovementTest> test(String id) {
        return Optional.ofNullable(tests.get(id));
    }

    public List<MovementTest> shortSet() {
        return tests.values().stream().filter(MovementTest::inShortSet).toList();
    }
}
