package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.drillsheaf.figure.draw.DrawnPath.Role;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarksOnPaperTest {
    private static final FigureDrawer DRAWER = new FigureDrawer();
    private static final SolvedPose WALL_LEAN = ExamplePoses.solved(ExamplePoses.WALL_LEAN);
    private static final SolvedPose LIFT = ExamplePoses.solved(ExamplePoses.SIDE_LYING_LIFT);
    private static final Map<String, String> KEYS = Map.of("reach", "4", "weight", "5", "press", "3", "breath", "6");

    @ParameterizedTest
    @ValueSource(strings = {"side", "front", "q:42,14", "q:-42,14", "top"})
    void keysNeverLieOnTheBody(String view) {
        for (double scale : new double[] {38, 46, 62}) {
            Drawing drawing = DRAWER.draw(
                    WALL_LEAN, View.parse(view).orElseThrow(), DrawingStyle.paper(scale), Annotations.ofKeys(KEYS));
            List<DrawnPath> keys = Ink.of(drawing, Role.KEY);
            assertThat(keys).isNotEmpty();
            for (DrawnPath key : keys) {
                for (double[] piece : Ink.pieces(key.shape())) {
                    assertThat(Ink.isBody(drawing, piece[0], piece[1]))
                            .as("%s at %s mm", view, scale)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void keysOfLargePrintAreLarger() {
        Drawing drawing =
                DRAWER.draw(WALL_LEAN, View.SIDE, DrawingStyle.paper(50).withKeys(8.4, 18), Annotations.ofKeys(KEYS));
        DrawnPath disc = Ink.of(drawing, Role.KEY).get(0);
        assertThat(disc.box().width()).isCloseTo(8.4, within(0.05));
    }

    @Test
    void keysMayBeWrittenInOtherDigits() {
        Annotations arabic = Annotations.ofKeys(Map.of("reach", "٤"));
        Drawing drawing = DRAWER.draw(WALL_LEAN, View.SIDE, DrawingStyle.paper(46), arabic);
        assertThat(Ink.of(drawing, Role.KEY).get(1).shape().isEmpty()).isFalse();
    }

    @Test
    void strokesOfTheHatchStayInsideTheFeltRegion() {
        Drawing drawing = DRAWER.draw(LIFT, new View(-32, 26), DrawingStyle.paper(50), Annotations.NONE);
        var region = Ink.outline(Ink.of(drawing, Role.FEEL).get(0).shape());
        List<double[]> strokes = Ink.pieces(drawing, Role.HATCH);
        assertThat(strokes).isNotEmpty();
        for (double[] s : strokes) {
            for (double share : new double[] {0.1, 0.5, 0.9}) {
                assertThat(region.contains(s[0] + (s[2] - s[0]) * share, s[1] + (s[3] - s[1]) * share))
                        .isTrue();
            }
        }
    }

    @Test
    void breathGivesWayToAnArmThatLiesBeforeTheMouth() {
        SolvedPose armAhead = ExamplePoses.solved(
                """
                joints: {neck: {flex: 20}, head: {nod: 10}, shoulder.R: {flex: 84}}
                marks: [{id: breath, breath: {way: out}}]
                """);
        Drawing drawing = DRAWER.draw(armAhead, View.SIDE, DrawingStyle.paper(60), Annotations.NONE);

        assertThat(Ink.pieces(drawing, Role.MARK))
                .isNotEmpty()
                .noneMatch(piece -> Ink.isBody(drawing, piece[2], piece[3]));
    }

    @Test
    void aSwingNeedsTheStartPose() {
        Drawing drawing = DRAWER.draw(LIFT, View.SIDE, DrawingStyle.paper(50), Annotations.NONE);
        assertThat(drawing.anchors()).containsKey("lift");
    }

    @Test
    void aMarkForOneViewIsDrawnInThatViewOnlyHoweverItsTurnIsWritten() {
        SolvedPose pose = ExamplePoses.solved(
                """
                root: standing
                marks: [{id: up, views: ["q:-42,14"], arrow: {at: head, dir: [0, 1, 0], len: 0.1, gap: 0.1}}]
                """);
        DrawingStyle paper = DrawingStyle.paper(46).with(DrawingStyle.Quality.PREVIEW);

        assertThat(DRAWER.draw(pose, new View(318, 14), paper, Annotations.NONE).anchors())
                .containsKey("up");
        assertThat(DRAWER.draw(pose, View.SIDE, paper, Annotations.NONE).anchors())
                .doesNotContainKey("up");
    }

    @Test
    void theGhostStandsWhereTheMovementBegan() {
        SolvedPose reach = ExamplePoses.sheet(
                        """
                views: [side]
                start: {root: standing}
                move: {from: start, joints: {shoulder: {flex: 170}}, ghost: start}
                """)
                .pose(PoseFrame.MOVE)
                .orElseThrow();
        DrawingStyle paper = DrawingStyle.paper(50);
        Drawing drawing = DRAWER.draw(reach, View.SIDE, paper.withGhost(true), Annotations.NONE);
        Box ghost = Ink.of(drawing, Role.GHOST).get(0).box();
        Box body = drawing.anchors().get("body");

        assertThat(ghost.height()).isCloseTo(50, within(0.5));
        assertThat(ghost.bottom()).isCloseTo(body.bottom(), within(0.2));
        assertThat(body.height()).isGreaterThan(58);
        assertThat(Ink.of(DRAWER.draw(reach, View.SIDE, paper, Annotations.NONE), Role.GHOST))
                .isEmpty();
    }

    @Test
    void aMeasureIsDrawnWhereTheViewShowsItAndLeftOutWhereItDoesNot() {
        Annotations heels = Annotations.NONE.withDimensions(
                List.of(new Annotations.Dimension("heel-back.R", "wall", 'x', "26 cm")));
        Drawing side = DRAWER.draw(WALL_LEAN, View.SIDE, DrawingStyle.paper(46), heels);
        Drawing front = DRAWER.draw(WALL_LEAN, View.FRONT, DrawingStyle.paper(46), heels);
        assertThat(Ink.of(side, Role.DIMENSION)).isNotEmpty();
        assertThat(Ink.of(front, Role.DIMENSION)).isEmpty();
    }

    @Test
    void theBracketIsAsLongAsTheDistanceOnPaper() {
        Annotations heels = Annotations.NONE.withDimensions(
                List.of(new Annotations.Dimension("heel-back.R", "wall", 'x', "26 cm")));
        Drawing side = DRAWER.draw(WALL_LEAN, View.SIDE, DrawingStyle.paper(46), heels);
        DrawnPath bracket = Ink.of(side, Role.DIMENSION).stream()
                .filter(p -> p.strokeWidth() == 0.45)
                .findFirst()
                .orElseThrow();
        double heelFromWall = WALL_LEAN.point("heel-back.R").x() * 46;
        assertThat(bracket.shape().box().width()).isCloseTo(heelFromWall, within(0.03));
    }
}
