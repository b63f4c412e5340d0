package org.drillsheaf.program.build;

import java.util.List;
import java.util.Optional;

/**
 * Among all programs of the best value the one whose ids come first in the alphabet: phase by phase the smallest sorted list,
 * a list before its own longer ones. Asks for each earlier id whether any best program holds it. Not safe for several threads.
 */
final class TieBreak {
    private final Model model;
    private final Objective objective;
    private final PhaseMemo memo;
    private final Tally tally;
    private final long value;
    private final Listing listing;
    private boolean settled = true;

    TieBreak(Model model, Objective objective, PhaseMemo memo, Tally tally, long value, Listing listing) {
        this.model = model;
        this.objective = objective;
        this.memo = memo;
        this.tally = tally;
        this.value = value;
        this.listing = listing;
    }

    /** Whether every question was answered; if not, the program given is as good, but perhaps not the first by name. */
    boolean settled() {
        return settled;
    }

    List<Choice> first(List<Choice> found) {
        List<Choice> best = found;
        Node fixed = search().root().orElseThrow();
        for (int p = 0; p < model.phases.size(); p++) {
            best = first(p, fixed, best);
            closeTo(fixed, p, best.get(p));
        }
        return best;
    }

    private List<Choice> first(int phase, Node fixed, List<Choice> found) {
        List<Choice> best = found;
        PhaseModel here = model.phases.get(phase);
        int last = -1;
        for (int place = 0; place < best.get(phase).size(); place++) {
            if (place >= here.task.fewest()
                    && canEnd(phase, fixed, best.get(phase), place).isPresent()) {
                return canEnd(phase, fixed, best.get(phase), place).orElseThrow();
            }
            int now = best.get(phase).get(place);
            for (int drill : here.drill) {
                if (drill <= last || drill >= now || fixed.forbidden[phase].has(drill)) {
                    continue;
                }
                Node with = fixed.child();
                Optional<List<Choice>> better = with.force(drill, phase) ? ask(with) : Optional.empty();
                if (better.isPresent()) {
                    best = better.get();
                    break;
                }
                fixed.forbid(drill, phase);
            }
            last = best.get(phase).get(place);
            fixed.force(last, phase);
        }
        return best;
    }

    /** A best program in which the phase holds only the first {@code size} drills. */
    private Optional<List<Choice>> canEnd(int phase, Node fixed, Choice drills, int size) {
        Node closed = fixed.child();
        int[] kept = java.util.Arrays.copyOf(drills.toArray(), size);
        return closeTo(closed, phase, Choice.of(kept)) ? ask(closed) : Optional.empty();
    }

    private boolean closeTo(Node node, int phase, Choice drills) {
        for (int drill : model.phases.get(phase).drill) {
            boolean possible = drills.has(drill) ? node.force(drill, phase) : node.forbid(drill, phase);
            if (!possible) {
                return false;
            }
        }
        return true;
    }

    private Optional<List<Choice>> ask(Node node) {
        node.bound = 0;
        SearchResult result = search().any(node);
        settled &= result.found() || !result.capped();
        return result.found() ? Optional.of(result.drills()) : Optional.empty();
    }

    private ProgramSearch search() {
        return new ProgramSearch(model, objective, memo, tally, value + 1, listing);
    }
}
