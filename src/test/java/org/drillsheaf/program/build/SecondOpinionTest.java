package org.drillsheaf.program.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;

import com.google.ortools.Loader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The builder against a constraint solver that shares no code and no idea with it. */
class SecondOpinionTest {
    private static final List<Level> ORDER = List.of(Level.values());
    private static final Objective OBJECTIVE = new Objective(ORDER);
    private final ExactBuilder builder = new ExactBuilder(OBJECTIVE, 10 * ExactBuilder.USUAL_STEPS);

    @BeforeAll
    static void theOtherSolverIsThere() {
        try {
            Loader.loadNativeLibraries();
        } catch (UnsatisfiedLinkError | RuntimeException e) {
            abort("the second solver has no native library for this machine: " + e.getMessage());
        }
    }

    @Test
    void bothFindTheSameBestValueLevelByLevel() {
        int fitting = 0;
        for (long seed = 20; seed < 32; seed++) {
            fitting += compare(RandomTasks.large(seed, 45 + 2 * (int) seed), seed) ? 1 : 0;
        }
        assertThat(fitting).isGreaterThanOrEqualTo(6);
    }

    @Test
    void bothAgreeOnSmallTasksWithPinsAndEarlierPrograms() {
        for (long seed = 2_000; seed < 2_060; seed++) {
            compare(RandomTasks.small(seed), seed);
        }
    }

    private boolean compare(BuildTask task, long seed) {
        Answer answer = builder.value(task);
        Optional<Map<Level, Integer>> other = SecondOpinion.best(task, ORDER);
        assertThat(answer.kind())
                .as("seed %d", seed)
                .isEqualTo(other.isPresent() ? Answer.Kind.BEST : Answer.Kind.NOTHING_FITS);
        other.ifPresent(levels -> levels.forEach((level, best) -> assertThat(OBJECTIVE.unpack(answer.value(), level))
                .as("seed %d, %s", seed, level)
                .isEqualTo(best)));
        return other.isPresent();
    }
}
