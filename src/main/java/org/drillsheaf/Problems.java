package org.drillsheaf;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects problems while something is read, so that a user sees all of them at once, and each of them once: a part
 * that several readers look at is wrong only once. Not safe for several threads.
 */
public final class Problems {
    private final Set<Problem> found = new LinkedHashSet<>();

    public void add(Problem problem) {
        found.add(problem);
    }

    public void addAll(List<Problem> problems) {
        found.addAll(problems);
    }

    public void error(String file, int line, String what, String remedy) {
        add(Problem.error(file, line, what, remedy));
    }

    public boolean hasErrors() {
        return found.stream().anyMatch(p -> p.severity() == Problem.Severity.ERROR);
    }

    public boolean isEmpty() {
        return found.isEmpty();
    }

    /** Everything found so far, in the order it was first found. */
    public List<Problem> all() {
        return List.copyOf(found);
    }
}
