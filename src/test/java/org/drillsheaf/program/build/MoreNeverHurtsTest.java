package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** Better means never cost coverage, the first level. */
class MoreNeverHurtsTest {
    private static final Objective OBJECTIVE = new Objective(List.of(Level.values()));
    private final ExactBuilder builder = new ExactBuilder(OBJECTIVE, ExactBuilder.USUAL_STEPS);

    @Property(tries = 150)
    void moreMinutesNeverLowerTheCoverage(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        BuildTask task = RandomTasks.small(seed);
        List<BuildTask.PhaseTask> longer = new ArrayList<>();
        for (BuildTask.PhaseTask p : task.phases()) {
            longer.add(new BuildTask.PhaseTask(
                    p.name(),
                    p.goals(),
                    p.fewest(),
                    p.most(),
                    p.targetMinutes() + 3,
                    p.mostMinutes() + 5,
                    p.strongAtMost(),
                    p.kept()));
        }
        assertNotWorse(task, with(task, longer, task.candidates()));
    }

    @Property(tries = 150)
    void moreEquipmentNeverLowersTheCoverage(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        BuildTask task = RandomTasks.small(seed);
        Random random = new Random(seed);
        String missing = "band wall chair".split(" ")[random.nextInt(3)];
        List<BuildTask.Candidate> without = task.candidates().stream()
                .map(c -> c.equipment().contains(missing) ? onlyARung(c) : c)
                .toList();
        assertNotWorse(with(task, task.phases(), without), task);
    }

    @Property(tries = 150)
    void fewerExclusionsNeverLowerTheCoverageWhileTheRungsStayTheSame(
            @ForAll @LongRange(min = 0, max = 100_000) long seed) {
        BuildTask task = RandomTasks.small(seed);
        Random random = new Random(seed);
        Set<String> levels = new java.util.HashSet<>();
        List<BuildTask.Candidate> fewer = new ArrayList<>();
        for (BuildTask.Candidate c : task.candidates()) {
            // Excluded only where another drill of the same rung stays, so that no rung is skipped.
            boolean rungIsThere = !levels.add(c.family() + c.level());
            if (!rungIsThere || random.nextBoolean()) {
                fewer.add(c);
            }
        }
        assertNotWorse(with(task, task.phases(), fewer), task);
    }

    private static BuildTask.Candidate onlyARung(BuildTask.Candidate c) {
        return new BuildTask.Candidate(
                c.id(),
                c.family(),
                c.level(),
                c.position(),
                c.equipment(),
                c.strengths(),
                c.prerequisites(),
                c.freeEntry(),
                Map.of());
    }

    private static BuildTask with(
            BuildTask task, List<BuildTask.PhaseTask> phases, List<BuildTask.Candidate> candidates) {
        return new BuildTask(
                phases, candidates, task.carried(), task.taught(), task.before(), task.carriedBefore(), task.wants());
    }

    private void assertNotWorse(BuildTask poorer, BuildTask richer) {
        Answer before = builder.value(poorer);
        Answer after = builder.value(richer);
        if (before.found()) {
            assertThat(after.kind()).isEqualTo(Answer.Kind.BEST);
            assertThat(OBJECTIVE.unpack(after.value(), Level.COVERAGE))
                    .isLessThanOrEqualTo(OBJECTIVE.unpack(before.value(), Level.COVERAGE));
        }
    }
}
