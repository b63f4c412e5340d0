package org.drillsheaf.program;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;

/**
 * The answers to the last few tasks, for a client that is worked on: most values that a coach enters change the words of a program
 * but nothing that the builder is asked. Safe for several threads.
 */
public final class KnownAnswers {
    private final Remembered<BuildTask, Answer> known;
    private final Remembered<Chosen, Swaps> swaps;

    private record Chosen(BuildTask task, List<List<String>> drills) {}

    /** @param most how many are remembered, those asked for last */
    public KnownAnswers(int most) {
        known = new Remembered<>(most);
        swaps = new Remembered<>(most);
    }

    /** The answer that is remembered. */
    Optional<Answer> to(BuildTask task) {
        return known.to(task);
    }

    /** The answer that is remembered, or a new one; one that was stopped is not remembered. */
    Answer to(BuildTask task, Supplier<Answer> search) {
        return known.to(task, search, answer -> !answer.stopped());
    }

    /** What could stand in each place of an answer instead, remembered or worked out. */
    Swaps swaps(BuildTask task, Answer answer, Supplier<Swaps> work) {
        return swaps.to(new Chosen(task, answer.drills()), work, swaps -> true);
    }
}
