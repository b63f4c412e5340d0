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

    /** All positions. */
    static final long ANY = -1;

    /** @param used the positions of the answer's drills */
    private record Known(Choice forbidden, PhaseAnswer answer, long used) {}

    private final Model model;
    private final Tally tally;
    private final List<PhaseSearch> searches = new ArrayList<>();
    private final List<Map<Long, Map<Choice, List<Known>>>> memo = new ArrayList<>();

    PhaseMemo(Model model, Objective objective, Tally tally) {
        this.model = model;
        this.tally = tally;
        for (PhaseModel phase : model.phases) {
            searches.add(new PhaseSearch(phase, objective, model.families, tally));
            memo.add(new HashMap<>());
        }
    }

    /**
     * The best choice for the phase alone with a value smaller than {@code below}, or how good one could be at most.
     *
     * @param positions that the choice may use, one bit each
     */
    PhaseAnswer solve(int phase, long positions, Choice forced, Choice forbidden, long below) {
        if (tally.spent()) {
            return PhaseAnswer.atLeast(0);
        }
        Map<Choice, List<Known>> here = memo.get(phase).computeIfAbsent(positions, p -> new HashMap<>());
        PhaseAnswer asked = known(here.getOrDefault(forced, List.of()), positions, forced, forbidden);
        if (positions != ANY && asked.drills() == null && asked.value() < below) {
            Map<Choice, List<Known>> anywhere = memo.get(phase).getOrDefault(ANY, Map.of());
            asked = better(asked, known(anywhere.getOrDefault(forced, List.of()), positions, forced, forbidden));
        }
        for (int i = 0; i < forced.size() && asked.drills() == null && asked.value() < below; i++) {
            List<Known> fewer = here.getOrDefault(forced.without(i), List.of());
            asked = better(asked, known(fewer, positions, forced, forbidden));
        }
        if (asked.drills() != null || asked.value() >= below) {
            return asked;
        }
        PhaseAnswer answer = searches.get(phase).solve(positions, forced, forbidden, asked.value(), below);
        if (tally.spent()) {
            return PhaseAnswer.atLeast(0);
        }
        List<Known> known = here.computeIfAbsent(forced, f -> new ArrayList<>(2));
        if (known.size() == KEPT) {
            known.remove(0);
        }
        known.add(new Known(forbidden, answer, used(phase, answer)));
        return answer;
    }

    private static PhaseAnswer better(PhaseAnswer one, PhaseAnswer other) {
        return other.drills() != null || other.value() > one.value() ? other : one;
    }

    private long used(int phase, PhaseAnswer answer) {
        PhaseModel here = model.phases.get(phase);
        long used = 0;
        for (int drill : answer.drills() == null ? new int[0] : answer.drills().toArray()) {
            used |= here.position[here.local(drill)];
        }
        return used;
    }

    /** What earlier answers say: one of them, if it holds for this question too, or the highest bound. */
    private static PhaseAnswer known(List<Known> known, long positions, Choice forced, Choice forbidden) {
        long least = 0;
        for (Known one : known) {
            if (!forbidden.hasAll(one.forbidden)) {
                continue;
            }
            Choice drills = one.answer.drills();
            if (drills != null && (one.used & ~positions) == 0 && drills.hasNone(forbidden) && drills.hasAll(forced)) {
                return one.answer;
            }
            least = Math.max(least, one.answer.value());
        }
        return PhaseAnswer.atLeast(least);
    }
}
