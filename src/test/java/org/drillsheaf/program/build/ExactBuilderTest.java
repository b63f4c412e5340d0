package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ExactBuilderTest {
    private static final Objective OBJECTIVE = new Objective(List.of(Level.values()));
    private final ExactBuilder builder = new ExactBuilder(OBJECTIVE, ExactBuilder.USUAL_NODES);

    @Test
    void equalsTryingEverythingOnFiveHundredSmallCatalogues() {
        int fitting = 0;
        for (long seed = 0; seed < 500; seed++) {
            BuildTask task = RandomTasks.small(seed);
            Optional<BruteForce.Found> expected = BruteForce.best(task, OBJECTIVE);
            Answer answer = builder.solve(task);
            assertThat(answer.kind())
                    .as("seed %d", seed)
                    .isEqualTo(expected.isPresent() ? Answer.Kind.BEST : Answer.Kind.NOTHING_FITS);
            if (expected.isPresent()) {
                fitting++;
                assertThat(Valuation.unpacked(answer.value(), OBJECTIVE))
                        .as("seed %d", seed)
                        .isEqualTo(Valuation.unpacked(expected.get().value(), OBJECTIVE));
                assertThat(answer.drills())
                        .as("seed %d", seed)
                        .isEqualTo(expected.get().drills());
            }
        }
        assertThat(fitting).as("tasks that have an answer").isBetween(100, 450);
    }

    @Test
    void equalsTryingEverythingInAnotherOrderOfTheLevels() {
        Objective other = new Objective(
                List.of(Level.COVERAGE, Level.POSITIONS, Level.EQUIPMENT, Level.MINUTES, Level.REPEATS, Level.CHANGES));
        ExactBuilder otherBuilder = new ExactBuilder(other, ExactBuilder.USUAL_NODES);
        for (long seed = 1_000; seed < 1_100; seed++) {
            BuildTask task = RandomTasks.small(seed);
            Optional<BruteForce.Found> expected = BruteForce.best(task, other);
            Answer answer = otherBuilder.solve(task);
            assertThat(answer.found()).as("seed %d", seed).isEqualTo(expected.isPresent());
            if (expected.isPresent()) {
                assertThat(answer.value())
                        .as("seed %d", seed)
                        .isEqualTo(expected.get().value());
            }
        }
    }

    @Test
    void orderOfTheCatalogueDoesNotMatter() {
        for (long seed = 0; seed < 5; seed++) {
            BuildTask task = RandomTasks.large(seed, 60);
            List<BuildTask.Candidate> shuffled = new ArrayList<>(task.candidates());
            Collections.shuffle(shuffled, new Random(seed));
            BuildTask other = new BuildTask(
                    task.phases(),
                    shuffled,
                    task.carried(),
                    task.taught(),
                    task.before(),
                    task.carriedBefore(),
                    task.wants());

            assertThat(builder.solve(other)).isEqualTo(builder.solve(task));
        }
    }

    @Test
    void anAnswerCutShortSaysHowFarFromTheBoundItIs() {
        ExactBuilder hasty = new ExactBuilder(OBJECTIVE, 3);
        BuildTask task = RandomTasks.large(2, 100);

        Answer cut = hasty.solve(task);
        Answer best = builder.solve(task);

        assertThat(best.kind()).isEqualTo(Answer.Kind.BEST);
        assertThat(cut.kind()).isIn(Answer.Kind.BEST_FOUND, Answer.Kind.NOT_DECIDED);
        if (cut.found()) {
            assertThat(cut.bound()).isLessThanOrEqualTo(best.value());
            assertThat(cut.value()).isGreaterThanOrEqualTo(best.value());
        }
    }
}
