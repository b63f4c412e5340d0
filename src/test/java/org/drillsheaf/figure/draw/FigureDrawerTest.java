package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.drillsheaf.figure.draw.DrawnPath.Role;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.api.Test;

class FigureDrawerTest {
    private static final FigureDrawer DRAWER = new FigureDrawer();
    private static final DrawingStyle PAPER = DrawingStyle.paper(46);
    private static final SolvedPose WALL_LEAN = ExamplePoses.solved(ExamplePoses.WALL_LEAN);
    private static final Map<String, String> KEYS = Map.of("reach", "4", "weight", "5", "press", "3", "breath", "6");

    @Test
    void samePoseGivesTheSameBytesTwice() {
        String first = DrawingSvg.write(DRAWER.draw(WALL_LEAN, View.SIDE, PAPER, Annotations.ofKeys(KEYS)));
        String second = DrawingSvg.write(new FigureDrawer()
                .draw(ExamplePoses.solved(ExamplePoses.WALL_LEAN), View.SIDE, PAPER, Annotations.ofKeys(KEYS)));
        assertThat(second).isEqualTo(first);
    }

    @Test
    void aFullTurnOfTheCameraChangesNothing() {
        Drawing once = DRAWER.draw(WALL_LEAN, new View(42, 14), PAPER, Annotations.NONE);
        Drawing around = DRAWER.draw(WALL_LEAN, new View(42 - 720, 14), PAPER, Annotations.NONE);
        assertThat(DrawingSvg.write(around)).isEqualTo(DrawingSvg.write(once));
    }

    @Test
    void everyMarkWithAKeyIsAnchoredByItsId() {
        Drawing drawing = DRAWER.draw(WALL_LEAN, View.SIDE, PAPER, Annotations.ofKeys(KEYS));
        assertThat(drawing.anchors()).containsKeys("reach", "weight", "press", "breath", "floor", "body");
        assertThat(roles(drawing, Role.KEY)).hasSize(2 * KEYS.size());
    }

    @Test
    void paperShowsNoDegreesAndNoWords() {
        Drawing paper = DRAWER.draw(WALL_LEAN, View.SIDE, PAPER, Annotations.NONE);
        Drawing author = DRAWER.draw(WALL_LEAN, View.SIDE, DrawingStyle.author(46), Annotations.NONE);
        assertThat(roles(paper, Role.LABEL)).isEmpty();
        assertThat(roles(author, Role.LABEL)).isNotEmpty();
    }

    @Test
    void aWallBetweenViewerAndPersonIsADashedOutlineBeforeTheWholePerson() {
        Drawing back = DRAWER.draw(WALL_LEAN, View.BACK, PAPER, Annotations.NONE);
        double stands = DRAWER.draw(WALL_LEAN, View.FRONT, PAPER, Annotations.NONE)
                .anchors()
                .get("body")
                .height();
        assertThat(back.anchors().get("body").height()).isCloseTo(stands, within(0.5));
        Box outline = back.paths().stream()
                .filter(path ->
                        path.role() == Role.PROP_LINE && path.shape().box().height() > stands)
                .findFirst()
                .orElseThrow()
                .shape()
                .box();
        assertThat(outline.height()).isCloseTo(0.998 * 46, within(0.1)); // down to the lower side of the floor;
        assertThat(outline.left()).isLessThan(back.anchors().get("body").left());
        assertThat(outline.right()).isGreaterThan(back.anchors().get("body").right());
    }

    @Test
    void pictureOfAClientPageStaysUnderTwentyFiveKilobytes() {
        Drawing drawing = DRAWER.draw(WALL_LEAN, new View(42, 14), PAPER, Annotations.ofKeys(KEYS));
        assertThat(DrawingSvg.write(drawing)).hasSizeLessThan(25_000);
    }

    private static List<DrawnPath> roles(Drawing drawing, Role role) {
        return drawing.paths().stream().filter(path -> path.role() == role).toList();
    }
}
