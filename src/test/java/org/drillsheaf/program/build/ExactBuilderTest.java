package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ExactBuilderTest {
    private static final Objective OBJECTIVE = new Objective(List.of(Level.values()));
    private final ExactBuilder builder = new ExactBuilder(OBJECTIVE, ExactBuilder.USUAL_STEPS);

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
            assertThat(builder.fits(task, ExactBuilder.USUAL_STEPS))
                    .as("seed %d", seed)
                    .hasValue(expected.isPresent());
            for (long steps = 1; steps < 1_000; steps *= 4) {
                assertThat(builder.fits(task, steps).orElse(expected.isPresent()))
                        .as("seed %d, at most %d steps", seed, steps)
                        .isEqualTo(expected.isPresent());
            }
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
        ExactBuilder otherBuilder = new ExactBuilder(other, ExactBuilder.USUAL_STEPS);
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
        BuildTask task = RandomTasks.large(2, 100);
        Answer best = builder.solve(task);
        assertThat(best.kind()).isEqualTo(Answer.Kind.BEST);
        assertThat(best.tiesSettled()).isTrue();
        Set<Answer.Kind> kinds = EnumSet.noneOf(Answer.Kind.class);
        for (long steps = 1; steps < 10_000_000; steps *= 4) {
            Answer cut = new ExactBuilder(OBJECTIVE, steps).solve(task);
            kinds.add(cut.kind());

            assertThat(cut.kind()).isNotEqualTo(Answer.Kind.NOTHING_FITS);
            if (cut.found()) {
                assertThat(cut.bound()).as("after %d steps", steps).isLessThanOrEqualTo(best.value());
                assertThat(cut.value()).as("after %d steps", steps).isGreaterThanOrEqualTo(best.value());
            }
            if (cut.kind() == Answer.Kind.BEST) {
                assertThat(cut.value()).isEqualTo(best.value());
            }
        }
        assertThat(kinds).contains(Answer.Kind.NOT_DECIDED, Answer.Kind.BEST);
    }

    /** Wherever a search ends, what it says about the best that is possible is true. */
    @Test
    void noBoundOfASearchThatEndedEarlyLiesAboveTheBest() {
        int cuts = 0;
        for (long seed = 20; seed < 24; seed++) {
            BuildTask task = RandomTasks.large(seed, 45);
            Answer best = builder.value(task);
            for (double steps = 100; steps < 500_000; steps *= 1.2) {
                Answer cut = new ExactBuilder(OBJECTIVE, (long) steps).value(task);
                if (cut.kind() == Answer.Kind.BEST_FOUND) {
                    cuts++;
                    assertThat(cut.bound())
                            .as("seed %d after %.0f steps", seed, steps)
                            .isLessThanOrEqualTo(best.value());
                } else if (best.kind() == Answer.Kind.BEST && cut.kind() == Answer.Kind.BEST) {
                    assertThat(cut.value()).isEqualTo(best.value());
                    break;
                }
            }
        }
        assertThat(cuts).isGreaterThan(20);
    }

    @Test
    void aSearchThatIsStoppedGivesTheBestItHasFoundAndSaysSo() {
        BuildTask task = RandomTasks.large(2, 300);
        Answer best = builder.value(task);
        Set<Answer.Kind> kinds = EnumSet.noneOf(Answer.Kind.class);
        for (int looks = 0; looks < 4_000; looks = looks * 2 + 1) {
            AtomicInteger left = new AtomicInteger(looks);
            Answer stopped =
                    builder.stoppedBy(() -> left.getAndDecrement() <= 0).value(task);
            kinds.add(stopped.kind());

            assertThat(stopped.kind()).isNotEqualTo(Answer.Kind.NOTHING_FITS);
            assertThat(stopped.stopped()).isEqualTo(stopped.kind() != Answer.Kind.BEST);
            if (stopped.found()) {
                assertThat(stopped.bound()).as("after %d looks", looks).isLessThanOrEqualTo(best.value());
                assertThat(stopped.value()).as("after %d looks", looks).isGreaterThanOrEqualTo(best.value());
            }
        }
        assertThat(kinds).contains(Answer.Kind.NOT_DECIDED);
    }
}
