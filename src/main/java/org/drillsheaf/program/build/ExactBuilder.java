package org.drillsheaf.program.build;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Finds the best drills for a task and proves it. Immutable and safe for several threads; the same task gives the same answer. */
public final class ExactBuilder {
    /** Steps that are enough for every client we have tried over a house catalogue, with room to spare. */
    public static final long USUAL_STEPS = 150_000_000;

    /** With more drills than this a first program over few of them is worth its time. */
    private static final int MANY = 150;

    private static final SearchResult NOTHING = new SearchResult(List.of(), Long.MAX_VALUE, 0, true);

    private final Objective objective;
    private final long mostSteps;
    private final BooleanSupplier stopAsked;
    private final Listing listing;

    /**
     * @param mostSteps how often a drill may be weighed for a partial choice; then the best program found so far is given, with
     *     its distance from the bound
     */
    public ExactBuilder(Objective objective, long mostSteps) {
        this(objective, mostSteps, () -> false, Listing.USUAL);
    }

    private ExactBuilder(Objective objective, long mostSteps, BooleanSupplier stopAsked, Listing listing) {
        this.objective = objective;
        this.mostSteps = mostSteps;
        this.stopAsked = stopAsked;
        this.listing = listing;
    }

    /**
     * The same builder, whose searches end with what they have found as soon as that is asked for.
     *
     * @param stopAsked looked at every few thousand steps, by the thread that searches; may turn true at any time
     */
    public ExactBuilder stoppedBy(BooleanSupplier stopAsked) {
        return new ExactBuilder(objective, mostSteps, stopAsked, listing);
    }

    /** The same builder, with another rule for when choices are listed. Its answers are the same. */
    ExactBuilder with(Listing other) {
        return new ExactBuilder(objective, mostSteps, stopAsked, other);
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

    /**
     * Whether any program at all holds every rule.
     *
     * @param mostSteps for this question; see the constructor
     * @return empty when that was not decided within the steps, or stopped
     */
    public Optional<Boolean> fits(BuildTask task, long mostSteps) {
        Model model = new Model(task.withRulesOnly());
        Tally tally = new Tally(mostSteps, stopAsked);
        PhaseMemo memo = new PhaseMemo(model, objective, tally);
        SearchResult result = new ProgramSearch(model, objective, memo, tally, Long.MAX_VALUE, Listing.NEVER).run();
        if (result.found()) {
            return Optional.of(true);
        }
        return result.capped() ? Optional.empty() : Optional.of(false);
    }

    private Answer solve(BuildTask task, boolean breakTies) {
        int offered =
                task.candidates().stream().mapToInt(c -> c.options().size()).sum();
        Model model = new Model(task);
        int considered = model.phases.stream().mapToInt(PhaseModel::size).sum();
        Tally tally = new Tally(mostSteps, stopAsked);
        PhaseMemo memo = new PhaseMemo(model, objective, tally);
        SearchResult first = NOTHING;
        if (task.candidates().size() > MANY) {
            first = FirstProgram.of(model, objective, tally);
            tally.allow(mostSteps);
        }
        SearchResult result = new ProgramSearch(model, objective, memo, tally, first.value(), listing).run();
        if (result.capped() && !result.found() && !first.found()) {
            tally.allow(mostSteps);
            first = FirstProgram.of(model, objective, tally);
        }
        if (!result.found() && first.found()) {
            long bound = result.capped() ? result.bound() : first.value();
            result = new SearchResult(first.drills(), first.value(), bound, result.capped());
        }
        if (!result.found()) {
            Answer.Kind kind = result.capped() ? Answer.Kind.NOT_DECIDED : Answer.Kind.NOTHING_FITS;
            return new Answer(
                    kind,
                    List.of(),
                    0,
                    0,
                    offered,
                    considered,
                    tally.looked(),
                    tally.ruledOut(),
                    tally.stopped(),
                    false);
        }
        boolean best = !result.capped();
        List<Choice> chosen = result.drills();
        boolean settled = false;
        if (best && breakTies) {
            tally.allow(mostSteps);
            TieBreak ties = new TieBreak(model, objective, memo, tally, result.value(), listing);
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
                tally.looked(),
                tally.ruledOut(),
                tally.stopped(),
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
