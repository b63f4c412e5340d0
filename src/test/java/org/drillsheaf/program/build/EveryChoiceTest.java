package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** All choices of a phase against trying every set of its drills. */
class EveryChoiceTest {
    private static final List<Objective> ORDERS = List.of(
            new Objective(List.of(Level.values())),
            new Objective(List.of(
                    Level.COVERAGE, Level.POSITIONS, Level.EQUIPMENT, Level.MINUTES, Level.REPEATS, Level.CHANGES)),
            new Objective(List.of(
                    Level.MINUTES, Level.CHANGES, Level.COVERAGE, Level.EQUIPMENT, Level.POSITIONS, Level.REPEATS)));

    private int asked;
    private int taken;
    private int beyond;

    @Test
    void noneBelowTheLimitIsMissedAndNoneOfTheOthersIsBetterThanIsSaid() {
        for (long seed = 0; seed < 120; seed++) {
            BuildTask few = seed % 2 == 0 ? RandomTasks.small(seed) : RandomTasks.undemanding(seed, 2, 12);
            ask(onePhase(few, 0), ORDERS.get((int) (seed % 3)), seed);
        }
        for (long seed = 0; seed < 12; seed++) {
            ask(onePhase(RandomTasks.large(seed, 26), (int) (seed % 4)), ORDERS.get((int) (seed % 3)), seed);
        }
        assertThat(asked).as("questions").isGreaterThan(3_000);
        assertThat(taken).as("choices below a limit").isGreaterThan(20_000);
        assertThat(beyond).as("questions with others at or above it").isGreaterThan(1_500);
    }

    /** Three drills were planned; with a new one there is place for two of them, so that two things change at least. */
    @Test
    void choicesWithTooManyChangesAreLeftOutTogetherAndNotForgotten() {
        Set<String> planned = Set.of("planned-1", "planned-2", "planned-3");
        BuildTask.PhaseTask phase = new BuildTask.PhaseTask("phase", List.of(), 2, 3, 0, 9, 0, planned);
        List<BuildTask.Candidate> drills = new ArrayList<>();
        for (String id : List.of("new", "planned-1", "planned-2", "planned-3")) {
            Map<Integer, BuildTask.Option> options = Map.of(0, new BuildTask.Option(1, 1, false));
            drills.add(new BuildTask.Candidate(id, id, 1, "supine", Set.of(), Map.of(), Set.of(), false, options));
        }
        Objective objective = ORDERS.get(0);
        Model model = new Model(new BuildTask(List.of(phase), drills, 0, Set.of(), Set.of(), 0, List.of()));
        EveryChoice every =
                new EveryChoice(model.phases.get(0), objective, model.families, new Tally(Long.MAX_VALUE, () -> false));
        Choice withNew = Choice.of(model.number("new").orElseThrow());
        long two = objective.one(Level.CHANGES, 2);

        List<Choice> found = new ArrayList<>();
        long others =
                every.below(PhaseMemo.ANY, 0, withNew, Choice.EMPTY, 0, two, (choice, value) -> found.add(choice));

        assertThat(found).isEmpty();
        assertThat(others).isEqualTo(two);
    }

    private static BuildTask onePhase(BuildTask task, int phase) {
        List<BuildTask.Candidate> candidates = new ArrayList<>();
        for (BuildTask.Candidate c : task.candidates()) {
            Map<Integer, BuildTask.Option> options = new TreeMap<>();
            if (c.options().containsKey(phase)) {
                options.put(0, c.options().get(phase));
            }
            candidates.add(new BuildTask.Candidate(
                    c.id(), c.family(), 1, c.position(), c.equipment(), c.strengths(), Set.of(), false, options));
        }
        return new BuildTask(List.of(task.phases().get(phase)), candidates, 0, Set.of(), Set.of(), 0, List.of());
    }

    private void ask(BuildTask task, Objective objective, long seed) {
        Random random = new Random(seed);
        Model model = new Model(task);
        PhaseModel phase = model.phases.get(0);
        Map<Choice, Long> all = new HashMap<>();
        BruteForce.best(
                task,
                objective,
                (program, value) -> all.put(
                        Choice.of(program.get(0).stream()
                                .mapToInt(id -> model.number(id).orElseThrow())
                                .toArray()),
                        value));
        long[] sorted = all.values().stream().mapToLong(v -> v).sorted().toArray();
        long best = sorted.length == 0 ? 0 : sorted[0];
        EveryChoice every = new EveryChoice(phase, objective, model.families, new Tally(Long.MAX_VALUE, () -> false));
        for (int k = 0; k < 40; k++) {
            long positions = random.nextInt(3) == 0 ? PhaseMemo.ANY : random.nextLong();
            long required = random.nextBoolean() ? 0 : used(phase, any(all, random)) & positions;
            Choice forced = any(all, random).only(d -> random.nextInt(4) == 0);
            Choice forbidden = any(all, random).only(d -> random.nextInt(4) == 0);
            Map<Choice, Long> possible = new HashMap<>(all);
            possible.keySet()
                    .removeIf(c -> !c.hasAll(forced)
                            || !c.hasNone(forbidden)
                            || (used(phase, c) & ~positions) != 0
                            || (required & ~used(phase, c)) != 0);
            long[] values =
                    possible.values().stream().mapToLong(v -> v).sorted().toArray();
            long least = random.nextBoolean() || values.length == 0 ? best : values[0];
            // A value that none of these has may leave nothing below: then all that is learnt is what was left out.
            long[] limits = k % 3 == 0 || values.length == 0 ? sorted : values;
            long below = limits.length == 0 ? best + 1 : limits[random.nextInt(limits.length)] + random.nextInt(3);
            Map<Choice, Long> found = new HashMap<>();
            long others = every.below(positions, required, forced, forbidden, least, below, (choice, value) -> {
                assertThat(found.put(choice, value))
                        .as("seed %d, twice %s", seed, choice)
                        .isNull();
                return true;
            });
            asked++;
            taken += found.size();
            long next = Arrays.stream(values).filter(v -> v >= below).min().orElse(Long.MAX_VALUE);
            beyond += next < Long.MAX_VALUE ? 1 : 0;
            possible.values().removeIf(v -> v >= below);
            assertThat(found).as("seed %d, question %d", seed, k).isEqualTo(possible);
            assertThat(others).as("seed %d, question %d", seed, k).isBetween(Math.min(below, next), next);
        }
    }

    private static Choice any(Map<Choice, Long> all, Random random) {
        List<Choice> sorted = new ArrayList<>(all.keySet());
        sorted.sort(Choice::compareByName);
        return sorted.isEmpty() ? Choice.EMPTY : sorted.get(random.nextInt(sorted.size()));
    }

    private static long used(PhaseModel phase, Choice choice) {
        long used = 0;
        for (int drill : choice.toArray()) {
            used |= phase.positionOf(drill);
        }
        return used;
    }
}
