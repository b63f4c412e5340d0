package org.drillsheaf.cli;

import java.io.PrintWriter;
import org.drillsheaf.course.Course;
import org.drillsheaf.saying.Speech;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.TestChange;

/** What a re-screen shows, on the terminal. */
final class ChangeText {
    private final PrintWriter out;
    private final Speech speech;
    private final boolean explain;

    ChangeText(PrintWriter out, Speech speech, boolean explain) {
        this.out = out;
        this.speech = speech;
        this.explain = explain;
    }

    void print(Course.Change change) {
        out.println();
        out.println("Since " + Words.day(change.comparison().before()));
        for (TestChange test : change.comparison().changes()) {
            boolean tells = test.kind() == TestChange.Kind.BETTER || test.kind() == TestChange.Kind.WORSE;
            if (explain || tells || test.newPain()) {
                out.println("  " + speech.say(test.words()));
            }
        }
        long same = change.comparison().changes().stream()
                .filter(c -> c.kind() == TestChange.Kind.NO_REAL_CHANGE)
                .count();
        if (!explain && same > 0) {
            out.println("  no real change in " + same + (same == 1 ? " value" : " values"));
        }
        change.comparison().sideOrder().forEach(words -> out.println("  " + speech.say(words)));
        change.comparison().remarks().forEach(words -> out.println("  " + speech.say(words)));
        gate(change);
        out.println("Next: " + speech.say(change.decision().step().words()));
        change.decision().reasons().forEach(reason -> out.println("  " + speech.say(reason)));
    }

    private void gate(Course.Change change) {
        out.println("Gate after " + change.phaseBefore().title() + ": "
                + speech.say(change.gate().status().words()));
        for (GateResult.Line line : change.gate().lines()) {
            if (line.required() || explain) {
                out.println("  " + words(line) + (line.required() ? ": " : " (helps): ") + speech.say(line.words()));
            }
        }
    }

    private static String words(GateResult.Line line) {
        return switch (line.truth()) {
            case TRUE -> "yes";
            case FALSE -> "no";
            case UNKNOWN -> "not known";
        };
    }
}
