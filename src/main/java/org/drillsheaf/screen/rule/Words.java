package org.drillsheaf.screen.rule;

import java.util.Map;
import java.util.Set;

/**
 * The names that rules may use.
 *
 * @param tests by id
 * @param presentations ids
 */
public record Words(Map<String, Subject> tests, Set<String> presentations) {

    /**
     * A test as rules see it.
     *
     * @param parts names of its two values; empty for a test with one
     * @param marks names of its yes-or-no marks
     * @param hasUpperMark whether it can be beyond expected
     * @param isRange whether it can be wide or narrow
     */
    public record Subject(boolean sided, Set<String> parts, Set<String> marks, boolean hasUpperMark, boolean isRange) {}

    public Words {
        tests = Map.copyOf(tests);
        presentations = Set.copyOf(presentations);
    }
}
