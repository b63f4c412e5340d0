package org.drillsheaf.program;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.BuildTask;

/**
 * The answers to the last few tasks, for a client that is worked on: most values that a coach enters change the words of a program
 * but nothing that the builder is asked. Safe for several threads.
 */
public final class KnownAnswers {
    private final int most;
    private final Map<BuildTask, Answer> known = new LinkedHashMap<>(32, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<BuildTask, Answer> eldest) {
            return size() > most;
        }
    };

    /** @param most how many are remembered, those asked for last */
    public KnownAnswers(int most) {
        this.most = most;
    }

    /** The answer that is remembered, or a new one; one that was stopped is not remembered. */
    Answer to(BuildTask task, Supplier<Answer> search) {
        synchronized (known) {
            Answer answer = known.get(task);
            if (answer != null) {
                return answer;
            }
        }
        Answer answer = search.get();
        if (!answer.stopped()) {
            synchronized (known) {
                known.put(task, answer);
            }
        }
        return answer;
    }
}
