package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The lists of all choices against trying everything, and against the tree, which does without them. */
class SetChainsTest {
    private static final Objective OBJECTIVE = new Objective(List.of(Level.values()));
    /** Positions and things before what is otherwise counted first. */
    private static final Objective OTHER = new Objective(
            List.of(Level.COVERAGE, Level.POSITIONS, Level.EQUIPMENT, Level.MINUTES, Level.REPEATS, Level.CHANGES));
    /** One search of a phase for all its choices, however few sets of drills it can share. */
    private static final Listing AT_ONCE = new Listing(0, 100, Long.MAX_VALUE, Integer.MAX_VALUE, 1);

    private static final Listing SET_BY_SET = new Listing(0, 100, Long.MAX_VALUE, Integer.MAX_VALUE, Integer.MAX_VALUE);

    @Test
    void belowAnyLimitTheListsFindWhatTryingEverythingFinds() {
        int listed = 0;
        int found = 0;
        int answers = 0;
        for (long seed = 0; seed < 500; seed++) {
            BuildTask task = small(seed);
            Objective order = seed % 3 == 0 ? OTHER : OBJECTIVE;
            Optional<BruteForce.Found> expected = BruteForce.best(task, order);
            long best = expected.map(BruteForce.Found::value).orElse(Long.MAX_VALUE);
            Question question = new Question(task, order);
            for (long limit : question.limits(best)) {
                for (Listing listing : List.of(AT_ONCE, SET_BY_SET)) {
                    SearchResult result = question.listed(limit, listing);
                    String what = "seed " + seed + " below " + Valuation.unpacked(limit, order) + ", " + listing;
                    listed++;
                    assertThat(result.capped()).as(what).isFalse();
                    assertThat(result.found()).as(what).isEqualTo(best < limit);
                    if (result.found()) {
                        found++;
                        assertThat(result.value()).as(what).isEqualTo(best);
                        List<List<String>> drills = question.ids(result);
                        assertThat(RuleCheck.broken(task, drills)).as(what).isEmpty();
                        assertThat(Valuation.of(task, drills).packed(order))
                                .as(what)
                                .isEqualTo(best);
                    } else {
                        assertThat(result.bound()).as(what).isBetween(limit, best);
                    }
                }
            }
            Answer answer = new ExactBuilder(order, ExactBuilder.USUAL_STEPS)
                    .with(AT_ONCE)
                    .solve(task);
            assertThat(answer.found()).as("seed %d", seed).isEqualTo(expected.isPresent());
            if (expected.isPresent()) {
                answers++;
                assertThat(answer.value()).as("seed %d", seed).isEqualTo(best);
                assertThat(answer.drills())
                        .as("seed %d", seed)
                        .isEqualTo(expected.get().drills());
            }
        }
        assertThat(listed).as("limits at which the lists were asked").isGreaterThan(3_000);
        assertThat(found).as("limits below which they found a program").isBetween(500, listed - 500);
        assertThat(answers).as("tasks that have an answer").isBetween(100, 400);
    }

    /** In every program there is, the phases before one cost at least what is said of what that one holds. */
    @Test
    void whatADrillNeedsFirstIsNeverSaidToCostMoreThanItDoes() {
        int[] said = new int[1];
        for (long seed = 1_000; seed < 1_150; seed++) {
            BuildTask task = RandomTasks.undemanding(seed, 3, 10);
            Question question = new Question(task);
            if (question.root.isEmpty()) {
                continue;
            }
            String what = "seed " + seed;
            Supports supports = question.supports();
            BruteForce.best(task, OBJECTIVE, (program, value) -> {
                for (int p = 1; p < program.size(); p++) {
                    Valuation before = Valuation.of(BruteForce.begun(task, p), program.subList(0, p));
                    long more = before.packed(OBJECTIVE) - OBJECTIVE.one(Level.REPEATS, before.repeats());
                    for (int q = 0; q < p; q++) {
                        more -= question.alone[q];
                    }
                    for (int far = 1; far <= 3; far++) {
                        long least = supports.cost(p, question.numbers(program.get(p)), far);
                        said[0] += least > 0 ? 1 : 0;
                        if (least > more) {
                            assertThat(least).as(what + " " + program).isLessThanOrEqualTo(more);
                        }
                    }
                }
            });
        }
        assertThat(said[0]).as("times that something was said to cost more").isGreaterThan(1_000);
    }

    /** The first phase needs two positions alone. A third one there, for a drill that is needed first, is one change more and not two. */
    @Test
    void aDrillThatIsNeededFirstMayTakeAThirdPosition() {
        List<BuildTask.PhaseTask> phases = List.of(
                phase(new BuildTask.GoalTarget("left", 1, 2), new BuildTask.GoalTarget("right", 1, 2)),
                phase(new BuildTask.GoalTarget("both", 1, 3)));
        List<BuildTask.Candidate> drills = List.of(
                drill("lies-left", "supine", Set.of(), Map.of("left", 2), Set.of(), 0),
                drill("lies-right", "prone", Set.of(), Map.of("right", 2), Set.of(), 0),
                drill("needed-first", "standing", Set.of(), Map.of(), Set.of(), 0),
                drill("needs-it", "standing", Set.of(), Map.of("both", 3), Set.of("needed-first"), 1),
                drill("sits-with-a-band", "seated", Set.of("band"), Map.of("both", 2), Set.of(), 1),
                drill("kneels-with-a-band", "kneeling", Set.of("band"), Map.of("both", 2), Set.of(), 1));
        BuildTask task = new BuildTask(phases, drills, 0, Set.of(), Set.of(), 0, List.of());

        Answer answer = new ExactBuilder(OBJECTIVE, ExactBuilder.USUAL_STEPS)
                .with(AT_ONCE)
                .solve(task);

        assertThat(answer.drills())
                .containsExactly(List.of("lies-left", "lies-right", "needed-first"), List.of("needs-it"));
        assertThat(answer.kind()).isEqualTo(Answer.Kind.BEST);
    }

    /** What is said of programs beyond a limit: each of these tasks has only one place in the lists where it is learnt. */
    @Test
    void whatTheBestComesToBeyondALimitIsKnownExactly() {
        beyond(
                "two drills that are needed first take a third position, which no set below the limit has",
                OBJECTIVE.one(Level.POSITIONS, 2),
                OBJECTIVE.one(Level.POSITIONS, 2),
                drill("a", "supine", Set.of(), Map.of("first", 1), Set.of(), 0),
                drill("needed", "prone", Set.of(), Map.of(), Set.of(), 0),
                drill("needed-too", "seated", Set.of(), Map.of(), Set.of(), 0),
                drill("b", "standing", Set.of(), Map.of("second", 1), Set.of("needed", "needed-too"), 1));
        beyond(
                "a drill that is needed first takes a thing, which no choice in a list has",
                OBJECTIVE.one(Level.EQUIPMENT, 1),
                OBJECTIVE.one(Level.EQUIPMENT, 1),
                drill("a", "supine", Set.of(), Map.of("first", 1), Set.of(), 0),
                drill("needed", "supine", Set.of("band"), Map.of(), Set.of(), 0),
                drill("b", "standing", Set.of(), Map.of("second", 1), Set.of("needed"), 1));
        beyond(
                "the only drill of a phase needs another one first, and is left out of all its lists for that",
                OBJECTIVE.one(Level.POSITIONS, 1) + OBJECTIVE.one(Level.EQUIPMENT, 1),
                OBJECTIVE.one(Level.POSITIONS, 1) + OBJECTIVE.one(Level.EQUIPMENT, 1),
                drill("a", "supine", Set.of(), Map.of("first", 1), Set.of(), 0),
                drill("needed", "prone", Set.of(), Map.of(), Set.of(), 0),
                drill("b", "standing", Set.of("band"), Map.of("second", 1), Set.of("needed"), 1));
        Set<String> tooMany = Set.of("needed", "needed-too", "needed-as-well");
        beyond(
                "only choices with a thing each can follow one another: with all that the other one needs first, no place is left",
                OBJECTIVE.one(Level.EQUIPMENT, 2),
                OBJECTIVE.one(Level.EQUIPMENT, 2),
                drill("a", "supine", Set.of(), Map.of("first", 1), Set.of(), 0),
                drill("a-with-a-band", "supine", Set.of("band"), Map.of("first", 1), Set.of(), 0),
                drill("needed", "supine", Set.of(), Map.of(), Set.of(), 0),
                drill("needed-too", "supine", Set.of(), Map.of(), Set.of(), 0),
                drill("needed-as-well", "supine", Set.of(), Map.of(), Set.of(), 0),
                drill("b", "standing", Set.of(), Map.of("second", 1), tooMany, 1),
                drill("b-with-a-step", "standing", Set.of("step"), Map.of("second", 1), Set.of("a-with-a-band"), 1));
        beyond(
                "the only drill of two phases is a repeat",
                OBJECTIVE.one(Level.EQUIPMENT, 3),
                OBJECTIVE.one(Level.REPEATS, 1),
                drill("both", "supine", Set.of(), Map.of("first", 1, "second", 1), Set.of(), 0, 1));
    }

    /** Most choices of either phase need things, and one found first does not keep a better one out. */
    @Test
    void ofManyChoicesBelowALimitTheBestIsFound() {
        List<String> things = List.of("band", "chair", "step", "towel", "wall");
        List<BuildTask.Candidate> drills = new ArrayList<>();
        for (int few = 0; few <= things.size(); few++) {
            for (int phase = 0; phase < 2; phase++) {
                drills.add(drill(
                        phase + "-" + few,
                        "supine",
                        Set.copyOf(things.subList(0, few)),
                        Map.of("goal", 1),
                        Set.of(),
                        phase));
            }
        }
        BuildTask.PhaseTask phase = phase(new BuildTask.GoalTarget("goal", 1, 1));
        BuildTask task = new BuildTask(List.of(phase, phase), drills, 0, Set.of(), Set.of(), 0, List.of());
        for (Listing listing : List.of(AT_ONCE, SET_BY_SET)) {
            SearchResult result = new Question(task).listed(OBJECTIVE.one(Level.POSITIONS, 1), listing);
            assertThat(result.found()).isTrue();
            assertThat(result.value()).isZero();
        }
    }

    private static void beyond(String what, long limit, long best, BuildTask.Candidate... drills) {
        List<BuildTask.PhaseTask> phases = List.of(
                phase(new BuildTask.GoalTarget("first", 1, 1)), phase(new BuildTask.GoalTarget("second", 1, 1)));
        BuildTask task = new BuildTask(phases, List.of(drills), 0, Set.of(), Set.of(), 0, List.of());
        assertThat(BruteForce.best(task, OBJECTIVE).orElseThrow().value())
                .as(what)
                .isEqualTo(best);
        for (Listing listing : List.of(AT_ONCE, SET_BY_SET)) {
            SearchResult result = new Question(task).listed(limit, listing);
            assertThat(result.found()).as(what).isFalse();
            assertThat(result.bound()).as(what).isEqualTo(best);
        }
    }

    private static BuildTask.PhaseTask phase(BuildTask.GoalTarget... goals) {
        return new BuildTask.PhaseTask("phase", List.of(goals), 1, 3, 1, 9, 3, Set.of());
    }

    private static BuildTask.Candidate drill(
            String id,
            String position,
            Set<String> equipment,
            Map<String, Integer> strengths,
            Set<String> prerequisites,
            int... phases) {
        Map<Integer, BuildTask.Option> options = new TreeMap<>();
        for (int phase : phases) {
            options.put(phase, new BuildTask.Option(1, 3, false));
        }
        return new BuildTask.Candidate(id, id, 1, position, equipment, strengths, prerequisites, false, options);
    }

    @Test
    void listsAndTreeProveTheSameOverFourPhases() {
        int listed = 0;
        for (long seed = 0; seed < 50; seed++) {
            BuildTask task = RandomTasks.undemanding(seed, 4, 20);
            Question question = new Question(task);
            SearchResult tree = question.searched(Listing.NEVER);
            for (Listing listing : List.of(AT_ONCE, SET_BY_SET)) {
                SearchResult lists = question.searched(listing);
                assertThat(lists.value()).as("seed %d, %s", seed, listing).isEqualTo(tree.value());
            }
            for (long limit : question.limits(tree.value())) {
                listed++;
                assertThat(question.listed(limit, SET_BY_SET).value())
                        .as("seed %d below %s", seed, Valuation.unpacked(limit, OBJECTIVE))
                        .isEqualTo(tree.value() < limit ? tree.value() : Long.MAX_VALUE);
            }
        }
        assertThat(listed).as("limits at which the lists were asked").isGreaterThan(200);
    }

    /** Whether the lists end early because of their steps or because of their length, the tree then goes on to the same answer. */
    @Test
    void listsThatAreCutShortChangeNothing() {
        for (long seed = 0; seed < 60; seed++) {
            Question question = new Question(RandomTasks.undemanding(seed, 3, 14));
            long best = question.searched(Listing.NEVER).value();
            for (int most = 1; most < 3_000; most += 1 + most / 2) {
                SearchResult fewSteps = question.searched(new Listing(0, 100, most, Integer.MAX_VALUE, 2));
                SearchResult fewChoices = question.searched(new Listing(0, 100, Long.MAX_VALUE, most, 2));
                assertThat(fewSteps.capped()).isFalse();
                assertThat(fewSteps.value()).as("seed %d, %d steps", seed, most).isEqualTo(best);
                assertThat(fewChoices.value())
                        .as("seed %d, %d choices", seed, most)
                        .isEqualTo(best);
            }
        }
    }

    @Test
    void listsForFewerSetsThanOneAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Listing(0, 100, 100, 100, 0));
    }

    private static BuildTask small(long seed) {
        return RandomTasks.undemanding(seed, seed % 4 == 0 ? 2 : 3, 8 + (int) (seed % 4));
    }

    /** One task, and what is asked about it. */
    private static final class Question {
        private final Objective objective;
        private final Model model;
        private final Tally tally = new Tally(Long.MAX_VALUE, () -> false);
        private final PhaseMemo memo;
        private final Optional<Node> root;
        private final long[] alone;

        Question(BuildTask task) {
            this(task, OBJECTIVE);
        }

        Question(BuildTask task, Objective objective) {
            this.objective = objective;
            model = new Model(task);
            memo = new PhaseMemo(model, objective, tally);
            root = new ProgramSearch(model, objective, memo, tally, Long.MAX_VALUE).root();
            alone = new long[model.phases.size()];
            for (int p = 0; p < alone.length && root.isPresent(); p++) {
                Node all = root.get();
                alone[p] = memo.solve(p, PhaseMemo.ANY, all.forced[p], all.forbidden[p], Long.MAX_VALUE)
                        .value();
            }
        }

        /** Those at which the lists may be asked: near ones, far ones, and those at the best value. */
        TreeSet<Long> limits(long best) {
            TreeSet<Long> limits = new TreeSet<>();
            long sum = 0;
            for (long one : alone) {
                if (one == Long.MAX_VALUE || root.isEmpty()) {
                    return limits;
                }
                sum += one;
            }
            for (int more = 1; more <= 4; more++) {
                limits.add(sum + objective.one(Level.POSITIONS, more));
                limits.add(sum + objective.one(Level.POSITIONS, more - 1) + objective.one(Level.EQUIPMENT, 2));
            }
            limits.add(best);
            limits.add(best == Long.MAX_VALUE ? best : best + 1);
            limits.removeIf(limit -> !sets(limit).isWorthwhile());
            return limits;
        }

        private PositionSets sets(long limit) {
            return new PositionSets(model, memo, objective, root.orElseThrow(), alone, limit);
        }

        SearchResult listed(long limit, Listing listing) {
            return new SetChains(
                            model, objective, root.orElseThrow(), sets(limit), supports(), alone, limit, tally, listing)
                    .search();
        }

        Supports supports() {
            return new Supports(model, objective, root.orElseThrow(), tally, alone);
        }

        Choice numbers(List<String> ids) {
            return Choice.of(
                    ids.stream().mapToInt(id -> model.number(id).orElseThrow()).toArray());
        }

        /** The whole search. */
        SearchResult searched(Listing listing) {
            return new ProgramSearch(model, objective, memo, tally, Long.MAX_VALUE, listing).run();
        }

        List<List<String>> ids(SearchResult result) {
            return result.drills().stream().map(model::ids).toList();
        }
    }
}
