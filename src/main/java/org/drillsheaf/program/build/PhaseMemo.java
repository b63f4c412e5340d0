package org.drillsheaf.program.build;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Asks {@link PhaseSearch} and remembers what it said. Not safe for several threads. */
final class PhaseMemo {
    private record Question(PhaseModel phase, Choice forced, Choice forbidden) {}

    /** @param answer null when there is none below {@code atLeast} */
    private record Known(@Nullable PhaseAnswer answer, long atLeast) {}

    private final Objective objective;
    private final int families;
    private final Tally tally;
    private final Map<Question, Known> memo = new HashMap<>();

    PhaseMemo(Objective objective, int families, Tally tally) {
        this.objective = objective;
        this.families = families;
        this.tally = tally;
    }

    /** The best choice for the phase alone with a value smaller than {@code below}. */
    Optional<PhaseAnswer> solve(PhaseModel phase, Choice forced, Choice forbidden, long below) {
        Question question = new Question(phase, forced, forbidden);
        Known known = memo.get(question);
        if (known != null) {
            if (known.answer != null) {
                return known.answer.value() < below ? Optional.of(known.answer) : Optional.empty();
            }
            if (known.atLeast >= below) {
                return Optional.empty();
            }
        }
        Optional<PhaseAnswer> answer =
                new PhaseSearch(phase, objective, families, tally).solve(forced, forbidden, below);
        memo.put(question, new Known(answer.orElse(null), below));
        return answer;
    }
}
