package org.drillsheaf.program.build;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/**
 * A good program to begin with: the best one over few drills, those that do most for the phases and need no other drill first.
 * It bounds the search over all drills, and is what there is when that search ends at its limit.
 */
final class FirstProgram {
    private static final int A_PHASE = 24;
    private static final int A_JUNCTION = 12;

    private FirstProgram() {}

    /** The program, or nothing found when there is none over so few drills. Numbers and value are those of {@code model}. */
    static SearchResult of(Model model, Objective objective, Tally tally) {
        Model few = new Model(few(model));
        SearchResult result =
                new ProgramSearch(few, objective, new PhaseMemo(few, objective, tally), tally, Long.MAX_VALUE).run();
        List<List<String>> ids = result.drills().stream().map(few::ids).toList();
        boolean holds = result.found() && RuleCheck.broken(model.task, ids).isEmpty();
        List<Choice> drills = holds
                ? ids.stream()
                        .map(phase -> Choice.of(phase.stream()
                                .mapToInt(id -> model.number(id).orElseThrow())
                                .toArray()))
                        .toList()
                : List.of();
        return new SearchResult(drills, holds ? result.value() : Long.MAX_VALUE, 0, true);
    }

    private static BuildTask few(Model model) {
        TreeSet<Integer> kept = new TreeSet<>();
        for (int p = 0; p < model.phases.size(); p++) {
            PhaseModel phase = model.phases.get(p);
            best(model, phase.drill, A_PHASE, d -> worth(phase, d), kept);
            if (p > 0) {
                PhaseModel earlier = model.phases.get(p - 1);
                best(model, model.carriable(p), A_JUNCTION, d -> worth(phase, d) + worth(earlier, d), kept);
            }
        }
        Arrays.stream(model.before.toArray()).forEach(kept::add);
        model.wants().forEach(want -> model.number(want.drill()).ifPresent(kept::add));
        BuildTask task = model.task;
        return new BuildTask(
                task.phases(),
                kept.stream().map(task.candidates()::get).toList(),
                task.carried(),
                task.taught(),
                task.before(),
                task.carriedBefore(),
                task.wants());
    }

    private static void best(
            Model model, int[] drills, int most, java.util.function.IntUnaryOperator worth, TreeSet<Integer> kept) {
        Arrays.stream(drills)
                .filter(d -> model.supports(d).isEmpty())
                .boxed()
                .sorted(Comparator.<Integer>comparingInt(d -> -worth.applyAsInt(d))
                        .thenComparing(d -> d))
                .limit(most)
                .forEach(kept::add);
    }

    private static int worth(PhaseModel phase, int drill) {
        int i = phase.local(drill);
        int sum = 0;
        for (int k = 0; k < phase.goal[i].length; k++) {
            int g = phase.goal[i][k];
            sum += phase.weight[g] * Math.min(phase.target[g], phase.strength[i][k]);
        }
        return sum;
    }
}
