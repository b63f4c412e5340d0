package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The programs that can be put together from {@link ChoiceLists}: here every rule between phases counts. Not safe for several threads. */
final class ListedPrograms {
    private final Model model;
    private final Objective objective;
    private final ChoiceLists lists;
    private final Tally tally;
    private final Choice[] chosen;
    private long limit;
    private long beyond = Long.MAX_VALUE;
    private Choice @Nullable [] best;

    /** @param limit only programs with a smaller value count */
    ListedPrograms(Model model, Objective objective, ChoiceLists lists, Tally tally, long limit) {
        this.model = model;
        this.objective = objective;
        this.lists = lists;
        this.tally = tally;
        this.limit = limit;
        chosen = new Choice[model.phases.size()];
        java.util.Arrays.fill(chosen, Choice.EMPTY);
    }

    /** The value is that of the best program, or the limit when there is none; nothing is an answer once the steps are used up. */
    SearchResult best() {
        extend(0, 0);
        List<Choice> drills = best == null ? List.of() : List.of(best);
        return new SearchResult(drills, best == null ? Long.MAX_VALUE : limit, beyond, tally.spent());
    }

    private void extend(int phase, long value) {
        if (phase == chosen.length) {
            if (hasWanted()) {
                limit = value;
                best = chosen.clone();
            }
            return;
        }
        List<ChoiceLists.Listed> next =
                new ArrayList<>(phase == 0 ? lists.first() : lists.after(phase, chosen[phase - 1]));
        tally.weighed(next.size());
        next.sort(Comparator.comparingLong(ChoiceLists.Listed::onward)
                .thenComparing(ChoiceLists.Listed::drills, Choice::compareByName));
        for (ChoiceLists.Listed listed : next) {
            if (tally.spent()) {
                return;
            }
            if (value + listed.onward() >= limit) {
                beyond = Math.min(beyond, value + listed.onward());
                continue;
            }
            chosen[phase] = listed.drills();
            int repeats = model.earlier(chosen, phase).sharedWith(chosen[phase]) - model.carried(phase);
            long own = objective.one(Level.REPEATS, Math.max(0, repeats));
            if (repeats < 0 || !canFollow(phase)) {
                continue;
            }
            if (value + listed.onward() + own >= limit) {
                beyond = Math.min(beyond, value + listed.onward() + own);
                continue;
            }
            extend(phase + 1, value + listed.value() + own);
        }
    }

    /** Whether nothing in the phase needs another drill first, or steps down from one before. */
    private boolean canFollow(int phase) {
        for (int i = 0; i < chosen[phase].size(); i++) {
            int drill = chosen[phase].get(i);
            for (int[] oneOf : model.supports(drill)) {
                boolean any = false;
                for (int support : oneOf) {
                    any |= isBefore(phase, support);
                }
                if (!any) {
                    return false;
                }
            }
            for (int q = 0; q < phase; q++) {
                for (int k = 0; k < chosen[q].size(); k++) {
                    int earlier = chosen[q].get(k);
                    if (model.family[earlier] == model.family[drill] && model.level[earlier] > model.level[drill]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private boolean isBefore(int phase, int drill) {
        for (int q = 0; q < phase; q++) {
            if (chosen[q].has(drill)) {
                return true;
            }
        }
        return false;
    }

    private boolean hasWanted() {
        for (BuildTask.Want want : model.wants()) {
            int drill = model.number(want.drill()).orElse(-1);
            boolean there =
                    want.phase().isPresent() ? chosen[want.phase().get()].has(drill) : isBefore(chosen.length, drill);
            if (!there) {
                return false;
            }
        }
        return true;
    }
}
