package org.drillsheaf;

import java.util.ArrayList;
import java.util.List;

/** Collects problems while something is read, so that a user sees all of them at once. Not safe for several threads. */
public final class Problems {
    private final List<Problem> found = new ArrayList<>();

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

    /** Everything found so far, in the order it was found. */
    public List<Problem> all() {
        return List.copyOf(found);
    }
}
