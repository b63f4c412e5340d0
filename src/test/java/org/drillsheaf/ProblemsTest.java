package org.drillsheaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What is wrong is told in the order it was found, each thing once. */
class ProblemsTest {
    private static final Problem ANGLE = Problem.error("drill.yaml", 7, "the knee bends by 10000°", "Write 0 to 150");
    private static final Problem SAME_ON_ANOTHER_LINE =
            Problem.error("drill.yaml", 9, "the knee bends by 10000°", "Write 0 to 150");

    @Test
    void aThingThatTwoReadersFoundIsToldOnce() {
        Problems problems = new Problems();

        problems.add(ANGLE);
        problems.addAll(List.of(SAME_ON_ANOTHER_LINE, ANGLE));

        assertThat(problems.all()).containsExactly(ANGLE, SAME_ON_ANOTHER_LINE);
    }
}
