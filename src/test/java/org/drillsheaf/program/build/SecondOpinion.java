package org.drillsheaf.program.build;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** The same task for a constraint solver of another kind, one level of the objective after the other. */
public final class SecondOpinion {
    private final BuildTask task;
    private final CpModel model = new CpModel();
    private final Map<String, BoolVar> in = new HashMap<>();
    private final Map<Level, LinearExprBuilder> levels = new EnumMap<>(Level.class);

    private SecondOpinion(BuildTask task) {
        this.task = task;
        for (Level level : Level.values()) {
            levels.put(level, LinearExpr.newBuilder());
        }
    }

    /** Best value of each level in the given order, or empty when nothing fits. */
    static Optional<Map<Level, Integer>> best(BuildTask task, List<Level> order) {
        return best(task, order, 3_600);
    }

    /**
     * The same with a limit.
     *
     * @param seconds for all levels together
     * @throws IllegalStateException when the time was not enough
     */
    public static Optional<Map<Level, Integer>> best(BuildTask task, List<Level> order, double seconds) {
        long end = System.nanoTime() + (long) (seconds * 1e9);
        SecondOpinion opinion = new SecondOpinion(task);
        opinion.write();
        Map<Level, Integer> best = new EnumMap<>(Level.class);
        for (Level level : order) {
            LinearExpr value = opinion.levels.get(level).build();
            opinion.model.minimize(value);
            CpSolver solver = new CpSolver();
            solver.getParameters()
                    .setNumWorkers(2)
                    .setMaxTimeInSeconds(Math.max(0.01, (end - System.nanoTime()) / 1e9));
            CpSolverStatus status = solver.solve(opinion.model);
            if (status == CpSolverStatus.INFEASIBLE) {
                return Optional.empty();
            }
            if (status != CpSolverStatus.OPTIMAL) {
                throw new IllegalStateException("the second solver ended with " + status);
            }
            int found = (int) Math.round(solver.objectiveValue());
            best.put(level, found);
            opinion.model.addLessOrEqual(value, found);
        }
        return Optional.of(best);
    }

    private Optional<BoolVar> in(String id, int phase) {
        return Optional.ofNullable(in.get(id + "@" + phase));
    }

    private void write() {
        for (BuildTask.Candidate c : task.candidates()) {
            c.options().keySet().forEach(p -> in.put(c.id() + "@" + p, model.newBoolVar(c.id() + "@" + p)));
        }
        for (int p = 0; p < task.phases().size(); p++) {
            phase(p);
            junction(p);
            for (BuildTask.Candidate c : task.candidates()) {
                if (in(c.id(), p).isPresent()) {
                    ladder(c, p);
                }
            }
        }
        for (BuildTask.Want want : task.wants()) {
            List<BoolVar> places = new ArrayList<>();
            for (int p = 0; p < task.phases().size(); p++) {
                if (want.phase().isEmpty() || want.phase().get() == p) {
                    in(want.drill(), p).ifPresent(places::add);
                }
            }
            model.addGreaterOrEqual(sum(places), 1);
        }
    }

    private static LinearExpr sum(List<BoolVar> vars) {
        return LinearExpr.sum(vars.toArray(new BoolVar[0]));
    }

    private void phase(int p) {
        BuildTask.PhaseTask rules = task.phases().get(p);
        List<BuildTask.Candidate> here = task.candidates().stream()
                .filter(c -> c.options().containsKey(p))
                .toList();
        List<BoolVar> all = here.stream().map(c -> in(c.id(), p).orElseThrow()).toList();
        model.addLinearConstraint(sum(all), rules.fewest(), rules.most());
        LinearExprBuilder shortest = LinearExpr.newBuilder();
        LinearExprBuilder longest = LinearExpr.newBuilder();
        LinearExprBuilder strong = LinearExpr.newBuilder();
        Map<String, List<BoolVar>> families = new HashMap<>();
        Map<String, List<BoolVar>> positions = new HashMap<>();
        for (BuildTask.Candidate c : here) {
            BoolVar x = in(c.id(), p).orElseThrow();
            shortest.addTerm(x, c.options().get(p).fewestMinutes());
            longest.addTerm(x, c.options().get(p).mostMinutes());
            strong.addTerm(x, c.options().get(p).strong() ? 1 : 0);
            families.computeIfAbsent(c.family(), f -> new ArrayList<>()).add(x);
            positions.computeIfAbsent(c.position(), f -> new ArrayList<>()).add(x);
            if (!rules.kept().isEmpty() && !rules.kept().contains(c.id())) {
                levels.get(Level.CHANGES).add(x);
            } else if (!rules.kept().isEmpty()) {
                levels.get(Level.CHANGES).addTerm(x, -1);
            }
        }
        levels.get(Level.CHANGES).add(rules.kept().size());
        model.addLessOrEqual(shortest.build(), rules.mostMinutes());
        model.addLessOrEqual(strong.build(), rules.strongAtMost());
        families.values().forEach(f -> model.addAtMostOne(new ArrayList<>(f)));
        IntVar under = model.newIntVar(0, rules.targetMinutes(), "under");
        longest.add(under);
        model.addGreaterOrEqual(longest.build(), rules.targetMinutes());
        levels.get(Level.MINUTES).add(under);
        LinearExprBuilder used = LinearExpr.newBuilder();
        for (List<BoolVar> drills : positions.values()) {
            BoolVar place = model.newBoolVar("place");
            drills.forEach(x -> model.addImplication(x, place));
            used.add(place);
        }
        IntVar changes = model.newIntVar(0, 20, "changes");
        model.addGreaterOrEqual(changes, used.add(-1).build());
        levels.get(Level.POSITIONS).add(changes);
        for (String item :
                new TreeSet<>(here.stream().flatMap(c -> c.equipment().stream()).toList())) {
            BoolVar needed = model.newBoolVar(item);
            here.stream()
                    .filter(c -> c.equipment().contains(item))
                    .forEach(c -> model.addImplication(in(c.id(), p).orElseThrow(), needed));
            levels.get(Level.EQUIPMENT).add(needed);
        }
        rules.goals().forEach(goal -> coverage(goal, p, here));
    }

    /** Half of every strength rounded down, and once more the upper half of the strongest. */
    private void coverage(BuildTask.GoalTarget goal, int p, List<BuildTask.Candidate> here) {
        LinearExprBuilder covered = LinearExpr.newBuilder();
        List<BoolVar> any = new ArrayList<>();
        List<BoolVar> strongest = new ArrayList<>();
        for (BuildTask.Candidate c : here) {
            int strength = c.strengths().getOrDefault(goal.goal(), 0);
            BoolVar x = in(c.id(), p).orElseThrow();
            covered.addTerm(x, strength / 2);
            if (strength >= 1) {
                any.add(x);
            }
            if (strength == 3) {
                strongest.add(x);
            }
        }
        BoolVar one = model.newBoolVar("any");
        BoolVar three = model.newBoolVar("strongest");
        model.addLessOrEqual(one, sum(any));
        model.addLessOrEqual(three, sum(strongest));
        IntVar missing = model.newIntVar(0, goal.target(), "missing");
        model.addGreaterOrEqual(covered.add(one).add(three).add(missing).build(), goal.target());
        levels.get(Level.COVERAGE).addTerm(missing, goal.weight());
    }

    private void junction(int p) {
        List<BoolVar> shared = new ArrayList<>();
        for (BuildTask.Candidate c : task.candidates()) {
            Optional<BoolVar> here = in(c.id(), p);
            if (here.isEmpty()) {
                continue;
            }
            if (p == 0) {
                if (task.before().contains(c.id())) {
                    shared.add(here.get());
                }
            } else if (in(c.id(), p - 1).isPresent()) {
                BoolVar both = model.newBoolVar("both");
                BoolVar earlier = in(c.id(), p - 1).orElseThrow();
                model.addImplication(both, here.get());
                model.addImplication(both, earlier);
                model.addGreaterOrEqual(
                        both,
                        LinearExpr.newBuilder()
                                .add(here.get())
                                .add(earlier)
                                .add(-1)
                                .build());
                shared.add(both);
            }
        }
        int least = p == 0 ? task.carriedBefore() : task.carried();
        model.addGreaterOrEqual(sum(shared), least);
        IntVar beyond = model.newIntVar(0, 20, "beyond");
        model.addGreaterOrEqual(
                beyond, LinearExpr.newBuilder().add(sum(shared)).add(-least).build());
        levels.get(Level.REPEATS).add(beyond);
    }

    private void ladder(BuildTask.Candidate c, int p) {
        BoolVar x = in(c.id(), p).orElseThrow();
        for (String prerequisite : c.prerequisites()) {
            if (!task.taught().contains(prerequisite)) {
                model.addLessOrEqual(x, sum(earlier(List.of(prerequisite), p)));
            }
        }
        List<BuildTask.Candidate> family = task.candidates().stream()
                .filter(o -> o.family().equals(c.family()))
                .toList();
        for (BuildTask.Candidate lower : family) {
            for (int q = p + 1; q < task.phases().size(); q++) {
                if (lower.level() < c.level() && in(lower.id(), q).isPresent()) {
                    model.addAtMostOne(List.of(x, in(lower.id(), q).orElseThrow()));
                }
            }
        }
        if (c.level() > 2 && !c.freeEntry()) {
            int below = family.stream()
                    .mapToInt(BuildTask.Candidate::level)
                    .filter(l -> l < c.level())
                    .max()
                    .orElse(1);
            List<String> rungs = family.stream()
                    .filter(o -> o.level() >= below && o.level() <= c.level())
                    .map(BuildTask.Candidate::id)
                    .toList();
            if (rungs.stream().noneMatch(task.taught()::contains)) {
                model.addLessOrEqual(x, sum(earlier(rungs, p)));
            }
        }
    }

    private List<BoolVar> earlier(List<String> ids, int p) {
        List<BoolVar> places = new ArrayList<>();
        for (String id : ids) {
            for (int q = 0; q < p; q++) {
                in(id, q).ifPresent(places::add);
            }
        }
        return places;
    }
}
