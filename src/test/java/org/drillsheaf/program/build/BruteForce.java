package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Tries every program of a small task. */
final class BruteForce {
    private final BuildTask task;
    private final Objective objective;
    private final BiConsumer<List<List<String>>, Long> each;
    private final List<List<List<String>>> choices = new ArrayList<>();
    private long best = Long.MAX_VALUE;
    private List<List<String>> bestDrills = List.of();

    private BruteForce(BuildTask task, Objective objective, BiConsumer<List<List<String>>, Long> each) {
        this.task = task;
        this.objective = objective;
        this.each = each;
    }

    record Found(long value, List<List<String>> drills) {}

    static Optional<Found> best(BuildTask task, Objective objective) {
        return best(task, objective, (program, value) -> {});
    }

    /** @param each gets every program that holds all rules, with its packed value */
    static Optional<Found> best(BuildTask task, Objective objective, BiConsumer<List<List<String>>, Long> each) {
        BruteForce force = new BruteForce(task, objective, each);
        for (int p = 0; p < task.phases().size(); p++) {
            force.choices.add(force.choices(p));
        }
        force.tryAll(new ArrayList<>());
        return force.best == Long.MAX_VALUE ? Optional.empty() : Optional.of(new Found(force.best, force.bestDrills));
    }

    /** Sets that could stand in the phase as far as the phase alone can tell, smallest sorted list first. */
    private List<List<String>> choices(int phase) {
        List<String> offered = task.candidates().stream()
                .filter(c -> c.options().containsKey(phase))
                .map(BuildTask.Candidate::id)
                .toList();
        List<List<String>> sets = new ArrayList<>();
        add(offered, 0, new ArrayList<>(), phase, sets);
        return sets;
    }

    private void add(List<String> offered, int from, List<String> now, int phase, List<List<String>> sets) {
        if (now.size() >= task.phases().get(phase).fewest() && holdsAlone(now, phase)) {
            sets.add(List.copyOf(now));
        }
        if (now.size() == task.phases().get(phase).most()) {
            return;
        }
        for (int i = from; i < offered.size(); i++) {
            now.add(offered.get(i));
            add(offered, i + 1, now, phase, sets);
            now.remove(now.size() - 1);
        }
    }

    private boolean holdsAlone(List<String> set, int phase) {
        BuildTask.PhaseTask rules = task.phases().get(phase);
        List<BuildTask.Candidate> chosen =
                task.candidates().stream().filter(c -> set.contains(c.id())).toList();
        return chosen.stream().map(BuildTask.Candidate::family).distinct().count() == set.size()
                && chosen.stream()
                                .mapToInt(c -> c.options().get(phase).fewestMinutes())
                                .sum()
                        <= rules.mostMinutes()
                && chosen.stream().filter(c -> c.options().get(phase).strong()).count() <= rules.strongAtMost();
    }

    /** Every rule but the wants is settled by a phase and those before it: what breaks one there is not gone on with. */
    private boolean canGoOn(List<List<String>> now) {
        return RuleCheck.broken(begun(task, now.size()), now).isEmpty();
    }

    /** The task of the first phases only, without wants. */
    static BuildTask begun(BuildTask task, int phases) {
        return new BuildTask(
                task.phases().subList(0, phases),
                task.candidates(),
                task.carried(),
                task.taught(),
                task.before(),
                task.carriedBefore(),
                List.of());
    }

    private void tryAll(List<List<String>> now) {
        if (now.size() == task.phases().size()) {
            if (RuleCheck.broken(task, now).isEmpty()) {
                long value = Valuation.of(task, now).packed(objective);
                each.accept(now, value);
                if (value < best) { // lists come in order, so the first of equals is the smallest
                    best = value;
                    bestDrills = List.copyOf(now);
                }
            }
            return;
        }
        for (List<String> set : choices.get(now.size())) {
            now.add(set);
            if (canGoOn(now)) {
                tryAll(now);
            }
            now.remove(now.size() - 1);
        }
    }
}
