package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Asks {@link PhaseSearch} and remembers what it said. An answer holds for every question that forbids more, as long as none of
 * its own drills is forbidden; a lower bound does so always. Not safe for several threads.
 */
final class PhaseMemo {
    /** Answers kept for one set of forced drills; more would take longer to look through than to find again. */
    private static final int KEPT = 24;

    /** @param answer null when there is none below {@code atLeast} */
    private record Known(Choice forbidden, @Nullable PhaseAnswer answer, long atLeast) {}

    private final Model model;
    private final Objective objective;
    private final Tally tally;
    private final List<Map<Choice, List<Known>>> memo = new ArrayList<>();

    PhaseMemo(Model model, Objective objective, Tally tally) {
        this.model = model;
        this.objective = objective;
        this.tally = tally;
        model.phases.forEach(p -> memo.add(new HashMap<>()));
    }

    /** The best choice for the phase alone with a value smaller than {@code below}. */
    Optional<PhaseAnswer> solve(int phase, Choice forced, Choice forbidden, long below) {
        if (tally.spent()) {
            return Optional.empty();
        }
        List<Known> known = memo.get(phase).computeIfAbsent(forced, f -> new ArrayList<>());
        for (Known one : known) {
            if (!forbidden.hasAll(one.forbidden)) {
                continue;
            }
            PhaseAnswer answer = one.answer;
            if (answer != null && answer.value() < below && answer.drills().hasNone(forbidden)) {
                return Optional.of(answer);
            }
            if (one.atLeast >= below) {
                return Optional.empty();
            }
        }
        Optional<PhaseAnswer> answer = new PhaseSearch(model.phases.get(phase), objective, model.families, tally)
                .solve(forced, forbidden, below);
        if (tally.spent()) {
            return Optional.empty();
        }
        if (known.size() == KEPT) {
            known.remove(0);
        }
        known.add(new Known(
                forbidden, answer.orElse(null), answer.map(PhaseAnswer::value).orElse(below)));
        return answer;
    }
}
