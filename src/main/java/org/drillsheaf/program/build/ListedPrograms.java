package org.drillsheaf.program.build;

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
        if (phase == 0) {
            extend(0, value, ChoiceLists.NONE, lists.first());
            return;
        }
        for (long set : lists.shared(phase, chosen[phase - 1])) {
            extend(phase, value, set, lists.holding(phase, set));
        }
    }

    /** @param next choices that hold the set, what comes to least first */
    private void extend(int phase, long value, long set, List<ChoiceLists.Listed> next) {
        tally.weighed(1);
        for (ChoiceLists.Listed listed : next) {
            long least = value + listed.onward();
            if (least >= limit) {
                beyond = Math.min(beyond, least);
                return;
            }
            tally.weighed(1);
            if (tally.spent()) {
                return;
            }
            chosen[phase] = listed.drills();
            int common = model.earlier(chosen, phase).sharedWith(chosen[phase]);
            int repeats = common - model.carried(phase);
            boolean isOnce = phase == 0 || common == ChoiceLists.size(set) || isFirst(phase, set);
            if (repeats < 0 || !isOnce || !canFollow(phase)) {
                continue;
            }
            long own = objective.one(Level.REPEATS, repeats);
            if (least + own >= limit) {
                beyond = Math.min(beyond, least + own);
                continue;
            }
            extend(phase + 1, value + listed.value() + own);
        }
    }

    /** Whether the set is the first of those that the phase shares with the one before; a choice that shares more comes once for each. */
    private boolean isFirst(int phase, long set) {
        Choice common = chosen[phase].only(chosen[phase - 1]::has);
        return lists.shared(phase, common).get(0) == set;
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
