package org.drillsheaf.program.build;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * A good program to begin with: the best one over the drills that do most for each phase and need no other first, and in which only
 * a few of them may be carried over. It bounds the search over all drills, and is what there is when that search ends at its limit.
 */
final class FirstProgram {
    private static final int A_PHASE = 60;
    private static final int A_JUNCTION = 30;
    private static final int CARRIABLE = 10;

    private FirstProgram() {}

    /** The program, or nothing found when there is none over so few drills. Numbers and value are those of {@code model}. */
    static SearchResult of(Model model, Objective objective, Tally tally) {
        Model few = new Model(few(model), CARRIABLE);
        SearchResult result =
                new ProgramSearch(few, objective, new PhaseMemo(few, objective, tally), tally, Long.MAX_VALUE).run();
        boolean holds = result.found()
                && RuleCheck.broken(
                                model.task,
                                result.drills().stream().map(few::ids).toList())
                        .isEmpty();
        return new SearchResult(holds ? result.drills() : List.of(), holds ? result.value() : Long.MAX_VALUE, 0, true);
    }

    /** The same task in which the other drills only count as rungs of their families. */
    private static BuildTask few(Model model) {
        BuildTask task = model.task;
        Set<String> kept = new HashSet<>(task.before());
        task.wants().forEach(w -> kept.add(w.drill()));
        for (int p = 0; p < model.phases.size(); p++) {
            PhaseModel phase = model.phases.get(p);
            Comparator<Integer> most = Comparator.comparingInt(d -> -phase.worth(d));
            Arrays.stream(phase.drill)
                    .boxed()
                    .filter(d -> model.supports(d).isEmpty())
                    .sorted(most)
                    .limit(A_PHASE)
                    .forEach(d -> kept.add(task.candidates().get(d).id()));
            Arrays.stream(model.carriable(p))
                    .filter(d -> model.supports(d).isEmpty())
                    .limit(A_JUNCTION)
                    .forEach(d -> kept.add(task.candidates().get(d).id()));
        }
        return new BuildTask(
                task.phases(),
                task.candidates().stream()
                        .map(c -> kept.contains(c.id()) ? c : c.notOffered())
                        .toList(),
                task.carried(),
                task.taught(),
                task.before(),
                task.carriedBefore(),
                task.wants());
    }
}
