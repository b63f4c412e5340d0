package org.drillsheaf.cli;

import java.util.List;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;

/** Ends a command because something in the input is wrong; carries every problem that was found. */
final class BadInput extends RuntimeException {
    private final transient List<Problem> problems;

    private BadInput(List<Problem> problems) {
        super(problems.isEmpty() ? "bad input" : problems.get(0).message());
        this.problems = List.copyOf(problems);
    }

    static BadInput because(String file, String what, String remedy) {
        return new BadInput(List.of(Problem.error(file, 0, what, remedy)));
    }

    /** Throws when there are errors; warnings and advice pass. */
    static void stopAtErrors(Problems problems) {
        if (problems.hasErrors()) {
            throw new BadInput(problems.all().stream()
                    .filter(p -> p.severity() == Problem.Severity.ERROR)
                    .toList());
        }
    }

    List<Problem> problems() {
        return problems;
    }
}
