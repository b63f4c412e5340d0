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

    private record Asked(long positions, Choice forced) {}

    /** @param used the positions of the answer's drills */
    private record Known(Choice forbidden, PhaseAnswer answer, long used) {}

    private final Model model;
    private final Tally tally;
    private final List<PhaseSearch> searches = new ArrayList<>();
    private final List<Map<Asked, List<Known>>> memo = new ArrayList<>();

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
        Map<Asked, List<Known>> here = memo.get(phase);
        List<Known> known = here.computeIfAbsent(new Asked(positions, forced), f -> new ArrayList<>());
        PhaseAnswer asked = known(known, positions, forced, forbidden);
        for (int i = -1; i < forced.size() && asked.drills() == null && asked.value() < below; i++) {
            if (i < 0 && positions == ANY) {
                continue;
            }
            Asked wider = i < 0 ? new Asked(ANY, forced) : new Asked(positions, forced.without(i));
            PhaseAnswer more = known(here.getOrDefault(wider, List.of()), positions, forced, forbidden);
            if (more.drills() != null || more.value() > asked.value()) {
                asked = more;
            }
        }
        if (asked.drills() != null || asked.value() >= below) {
            return asked;
        }
        PhaseAnswer answer = searches.get(phase).solve(positions, forced, forbidden, asked.value(), below);
        if (tally.spent()) {
            return PhaseAnswer.atLeast(0);
        }
        if (known.size() == KEPT) {
            known.remove(0);
        }
        known.add(new Known(forbidden, answer, used(phase, answer)));
        return answer;
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
