package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Asks {@link PhaseSearch} and remembers what it said. An answer holds for every question that forbids or forces more, as long as
 * it holds what is forced and nothing that is forbidden; a lower bound does so always. Not safe for several threads.
 */
final class PhaseMemo {
    /** Answers kept for one set of forced drills; more would take longer to look through than to find again. */
    private static final int KEPT = 24;

    private record Known(Choice forbidden, PhaseAnswer answer) {}

    private final Tally tally;
    private final List<PhaseSearch> searches = new ArrayList<>();
    private final List<Map<Choice, List<Known>>> memo = new ArrayList<>();

    PhaseMemo(Model model, Objective objective, Tally tally) {
        this.tally = tally;
        for (PhaseModel phase : model.phases) {
            searches.add(new PhaseSearch(phase, objective, model.families, tally));
            memo.add(new HashMap<>());
        }
    }

    /** The best choice for the phase alone with a value smaller than {@code below}, or how good one could be at most. */
    PhaseAnswer solve(int phase, Choice forced, Choice forbidden, long below) {
        if (tally.spent()) {
            return PhaseAnswer.atLeast(0);
        }
        List<Known> known = memo.get(phase).computeIfAbsent(forced, f -> new ArrayList<>());
        PhaseAnswer asked = known(known, forced, forbidden);
        for (int i = 0; i < forced.size() && asked.drills() == null && asked.value() < below; i++) {
            PhaseAnswer fewer = known(memo.get(phase).getOrDefault(forced.without(i), List.of()), forced, forbidden);
            if (fewer.drills() != null || fewer.value() > asked.value()) {
                asked = fewer;
            }
        }
        if (asked.drills() != null || asked.value() >= below) {
            return asked;
        }
        PhaseAnswer answer = searches.get(phase).solve(forced, forbidden, asked.value(), below);
        if (tally.spent()) {
            return PhaseAnswer.atLeast(0);
        }
        if (known.size() == KEPT) {
            known.remove(0);
        }
        known.add(new Known(forbidden, answer));
        return answer;
    }

    /** What earlier answers say: one of them, if it holds for this question too, or the highest bound. */
    private static PhaseAnswer known(List<Known> known, Choice forced, Choice forbidden) {
        long least = 0;
        for (Known one : known) {
            if (!forbidden.hasAll(one.forbidden)) {
                continue;
            }
            Choice drills = one.answer.drills();
            if (drills != null && drills.hasNone(forbidden) && drills.hasAll(forced)) {
                return one.answer;
            }
            least = Math.max(least, one.answer.value());
        }
        return PhaseAnswer.atLeast(least);
    }
}
