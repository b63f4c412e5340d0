package org.drillsheaf.program;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * The answers to the last few questions. Safe for several threads; two that ask the same at once may both work it out.
 *
 * @param <Q> question, compared by its content
 * @param <A> answer, never changed
 */
public final class Remembered<Q, A> {
    private final int most;
    private final Map<Q, A> known = new LinkedHashMap<>(32, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
            return size() > most;
        }
    };

    /** @param most how many are remembered, those asked for last */
    public Remembered(int most) {
        this.most = most;
    }

    /** The answer that is remembered. */
    public Optional<A> to(Q question) {
        synchronized (known) {
            return Optional.ofNullable(known.get(question));
        }
    }

    /**
     * The answer that is remembered, or a new one.
     *
     * @param worthKeeping whether a new answer is remembered
     */
    public A to(Q question, Supplier<A> work, Predicate<A> worthKeeping) {
        Optional<A> remembered = to(question);
        if (remembered.isPresent()) {
            return remembered.get();
        }
        A answer = work.get();
        if (worthKeeping.test(answer)) {
            synchronized (known) {
                known.put(question, answer);
            }
        }
        return answer;
    }
}
