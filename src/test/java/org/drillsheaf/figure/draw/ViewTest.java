package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.api.Test;

class ViewTest {

    @Property
    void fullTurnsChangeNothing(
            @ForAll @IntRange(min = -720, max = 720) int azimuth,
            @ForAll @IntRange(min = -90, max = 90) int elevation,
            @ForAll @IntRange(min = -3, max = 3) int turns) {
        View view = new View(azimuth, elevation);
        assertThat(new View(azimuth + 360.0 * turns, elevation)).isEqualTo(view);
        assertThat(View.parse(view.words())).contains(view);
        assertThat(view.mirrored().mirrored()).isEqualTo(view);
    }

    @Test
    void wordsThatAreNoViewAreRefused() {
        assertThat(View.parse("from above")).isEmpty();
        assertThat(View.parse("q:40")).isEmpty();
        assertThat(View.parse("q:40,99")).isEmpty();
    }

    @Test
    void aStepToTheSideIsNotShownFromTheSide() {
        SolvedPose pose = ExamplePoses.solved(
                """
                root: standing
                joints: {hip.R: {abd: 25}}
                marks: [{id: out, arrow: {at: ankle.R, dir: [0, 0, 1], len: 0.1}}]
                """);
        View view = ViewChooser.choose(pose);
        double toward = Camera.of(view).towardZ();
        assertThat(Math.abs(toward)).isLessThan(0.8);
    }

    @Test
    void aReachForwardIsNotShownFromTheFront() {
        View view = ViewChooser.choose(ExamplePoses.solved(ExamplePoses.WALL_LEAN));
        assertThat(Math.abs(Camera.of(view).towardX())).isLessThan(0.8);
    }
}
