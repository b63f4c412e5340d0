package org.drillsheaf.program.build;

import java.util.Arrays;
import java.util.Optional;

/**
 * The best choice for one phase alone, exactly. A depth-first search adds one drill after the other and leaves a branch as soon
 * as a bound shows that it cannot beat the best choice found. A goal that may not stay open any more is served next, the one with
 * the fewest drills for it first; when every goal may stay open, the drill that gains most comes first.
 *
 * <p>Where none is given, the limit below which a choice counts starts just above what the bound allows and is raised until one is
 * found: below a near limit only drills in few positions and with few things are left, and a branch is small.
 *
 * <p>One object answers one question after the other; not safe for several threads.
 */
final class PhaseSearch {
    private final PhaseModel model;
    private final Objective objective;
    private final Tally tally;
    private final int places;
    private final PartialChoice choice;
    private final Beginning beginning;
    private final OpenDrills[] open;

    private long best;
    private int[] bestChosen = new int[0];
    private boolean found;
    /** The lowest bound of all that was left out: nothing at all is better when nothing was found. */
    private long beyond;

    PhaseSearch(PhaseModel model, Objective objective, int families, Tally tally) {
        this.model = model;
        this.objective = objective;
        this.tally = tally;
        places = model.task.most();
        choice = new PartialChoice(model, families);
        beginning = new Beginning(choice);
        open = new OpenDrills[places + 1];
    }

    /**
     * @param positions one bit each; drills in others are left out
     * @param least a lower bound that is known
     * @param below only a choice with a smaller value counts
     */
    PhaseAnswer solve(long positions, Choice forced, Choice forbidden, long least, long below) {
        Optional<int[]> begun = beginning.with(positions, forced, forbidden);
        if (begun.isEmpty()) {
            return PhaseAnswer.atLeast(Long.MAX_VALUE);
        }
        int[] drills = begun.get();
        found = false;
        beyond = Math.max(least, at(choice.size()).look(drills, 0, drills.length, Long.MAX_VALUE));
        Limits limits = new Limits(objective, beyond, below);
        boolean bounded = below < Long.MAX_VALUE;
        while (!found && (bounded ? beyond < below : limits.next(beyond))) {
            best = bounded ? below : limits.now();
            beyond = Long.MAX_VALUE;
            search(drills, 0, drills.length);
            if (tally.spent()) {
                return PhaseAnswer.atLeast(0);
            }
        }
        return found ? new PhaseAnswer(best, chosen(bestChosen)) : PhaseAnswer.atLeast(Math.max(beyond, below));
    }

    private Choice chosen(int[] local) {
        return Choice.of(Arrays.stream(local).map(i -> model.drill[i]).toArray());
    }

    private OpenDrills at(int depth) {
        if (open[depth] == null) {
            open[depth] = new OpenDrills(choice, objective, model.size());
        }
        return open[depth];
    }

    private void search(int[] drills, int from, int to) {
        tally.look();
        tally.weighed(to - from + 1);
        if (tally.spent()) {
            return;
        }
        if (choice.size() >= model.task.fewest()) {
            long value = objective.pack(
                    choice.shortfall(),
                    choice.minutesUnder(0),
                    choice.changes(),
                    Math.max(0, Long.bitCount(choice.positions()) - 1),
                    0,
                    Long.bitCount(choice.equipment()));
            if (value < best) {
                best = value;
                bestChosen = choice.drills();
                found = true;
            } else {
                beyond = Math.min(beyond, value);
            }
        }
        if (choice.size() == places) {
            return;
        }
        OpenDrills here = at(choice.size());
        long least = here.look(drills, from, to, best);
        beyond = Math.min(beyond, Math.min(least < best ? Long.MAX_VALUE : least, here.leftOut()));
        if (least >= best) {
            tally.ruleOut();
            return;
        }
        int last = here.order(best);
        beyond = Math.min(beyond, here.leftOut());
        for (int i = 0; i < last; i++) {
            long bound = here.boundFrom(i);
            if (bound >= best) {
                beyond = Math.min(beyond, bound);
                tally.ruleOut();
                return;
            }
            choice.add(here.drill(i));
            search(here.drills(), i + 1, here.count());
            choice.removeLast();
        }
    }
}
