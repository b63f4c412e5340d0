package org.drillsheaf.program;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.drillsheaf.program.build.Answer;
import org.drillsheaf.program.build.ExactBuilder;
import org.drillsheaf.program.build.Level;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.program.build.Valuation;
import org.junit.jupiter.api.Test;

/** Far more drills than a house has. */
class LargeCatalogueTest {
    /** Half of what is usually allowed. */
    private static final long STEPS = ExactBuilder.USUAL_STEPS / 2;

    @Test
    void outOfTenThousandDrillsTheBestProgramIsProvedWithinFewSteps() {
        Objective objective = new Objective(List.of(Level.values()));

        Answer answer = new ExactBuilder(objective, STEPS).value(GrownCatalogue.task(10_000, 0));

        assertThat(answer.kind()).isEqualTo(Answer.Kind.BEST);
        Valuation value = Valuation.unpacked(answer.value(), objective);
        assertThat(value.coverage()).isZero();
        assertThat(value.minutes()).isZero();
        assertThat(value.positions()).isZero();
    }
}
