package org.drillsheaf.program.build;

import java.util.List;

/** Finds the best drills for a task and proves it. Immutable and safe for several threads; the same task gives the same answer. */
public final class ExactBuilder {
    /** Tree nodes that are enough for every client we have tried over a house catalogue. */
    public static final long USUAL_NODES = 60_000;

    private final Objective objective;
    private final long nodeCap;

    /** @param nodeCap tree nodes after which the best program found so far is given, with its distance from the bound */
    public ExactBuilder(Objective objective, long nodeCap) {
        this.objective = objective;
        this.nodeCap = nodeCap;
    }

    public Objective objective() {
        return objective;
    }

    /**
     * Solves the task.
     *
     * @throws IllegalStateException when the answer breaks a rule, which would be a fault of the builder
     */
    public Answer solve(BuildTask task) {
        return solve(task, true);
    }

    /** Only the value: which of several equally good programs is given does not matter to the caller. */
    public Answer value(BuildTask task) {
        return solve(task, false);
    }

    private Answer solve(BuildTask task, boolean breakTies) {
        int offered =
                task.candidates().stream().mapToInt(c -> c.options().size()).sum();
        Model model = new Model(task);
        int considered = model.phases.stream().mapToInt(PhaseModel::size).sum();
        Tally tally = new Tally();
        PhaseMemo memo = new PhaseMemo(model, objective, tally);
        SearchResult result = new ProgramSearch(model, objective, memo, tally, nodeCap, Long.MAX_VALUE).run();
        if (!result.found()) {
            Answer.Kind kind = result.capped() ? Answer.Kind.NOT_DECIDED : Answer.Kind.NOTHING_FITS;
            return new Answer(kind, List.of(), 0, 0, offered, considered, tally.looked, tally.ruledOut, false);
        }
        boolean best = !result.capped();
        List<Choice> chosen = result.drills();
        boolean settled = false;
        if (best && breakTies) {
            TieBreak ties = new TieBreak(model, objective, memo, tally, result.value());
            chosen = ties.first(chosen);
            settled = ties.settled();
        }
        List<List<String>> drills = chosen.stream().map(model::ids).toList();
        check(task, drills, result.value());
        return new Answer(
                best ? Answer.Kind.BEST : Answer.Kind.BEST_FOUND,
                drills,
                result.value(),
                best ? result.value() : Math.min(result.bound(), result.value()),
                offered,
                considered,
                tally.looked,
                tally.ruledOut,
                settled);
    }

    private void check(BuildTask task, List<List<String>> drills, long value) {
        List<String> broken = RuleCheck.broken(task, drills);
        if (!broken.isEmpty()) {
            throw new IllegalStateException("the builder broke its own rules: " + broken);
        }
        long counted = Valuation.of(task, drills).packed(objective);
        if (counted != value) {
            throw new IllegalStateException("the builder counted " + value + ", the check " + counted);
        }
    }
}
