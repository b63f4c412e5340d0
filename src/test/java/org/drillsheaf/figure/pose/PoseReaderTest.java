package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;

import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.Motion;
import org.junit.jupiter.api.Test;

class PoseReaderTest {
    private final Problems problems = new Problems();

    @Test
    void oneSideOverridesBothWhateverTheOrder() {
        Pose pose = Poses.of("joints:\n  hip.R: {flex: 90}\n  hip: {flex: 10, abd: 4}\n");

        assertThat(pose.angles().get(Motion.HIP_FLEX, Side.RIGHT)).isEqualTo(90);
        assertThat(pose.angles().get(Motion.HIP_FLEX, Side.LEFT)).isEqualTo(10);
        assertThat(pose.angles().get(Motion.HIP_ABD, Side.RIGHT)).isEqualTo(4);
    }

    @Test
    void theRootPostureBringsItsAngles() {
        Pose pose = Poses.of("root: hands-and-knees\n");

        assertThat(pose.angles().get(Motion.HIP_FLEX, Side.LEFT)).isEqualTo(90);
    }

    @Test
    void anUnknownJointIsToldWithItsLineAndTheJointsThereAre() {
        refuse("root: standing\njoints:\n  hipp: {flex: 10}\n", 3, "There is no joint “hipp”");
        assertThat(problems.all().get(0).remedy()).contains("hip, knee, ankle");
    }

    @Test
    void anUnknownMovementIsToldWithThoseOfTheJoint() {
        refuse("joints:\n  knee: {turn: 10}\n", 2, "The knee has no movement “turn”");
    }

    @Test
    void anAngleOfTenThousandDegreesIsRefusedWithTheLimit() {
        refuse("joints:\n  hip.R: {flex: 10000}\n", 2, "hip.R flex is 10000°, beyond what a body can do");
        assertThat(problems.all().get(0).remedy()).isEqualTo("Use degrees from -30 to 145");
    }

    @Test
    void notANumberIsRefused() {
        refuse("joints:\n  hip: {flex: .nan}\n", 2, "hip flex is “.nan”, not a number");
        refuse("contacts:\n  - {place: heel.R, x: .inf}\n", 2, "“x” is “.inf”, not a number");
    }

    @Test
    void aPointPlacedRelativeToItselfIsRefused() {
        refuse(
                """
                contacts:
                  - {place: knee.R, to: hip.R, offset: [0, 0.2, 0]}
                  - {place: hip.R, to: ankle.R}
                  - {place: ankle.R, to: knee.R}
                """,
                2,
                "“knee.R” is placed relative to itself");
    }

    @Test
    void aContactWithAMissingPropIsRefused() {
        refuse("contacts:\n  - {touch: low-back, plane: wall}\n", 2, "There is no surface “wall” in this pose");
    }

    @Test
    void unknownKeysPropsPointsMusclesAndUnknownsAreRefused() {
        refuse("jonts: {}\n", 1, "“jonts” is not known in a pose");
        refuse("props:\n  - trampoline: {}\n", 2, "There is no prop “trampoline”");
        refuse("contacts:\n  - {place: hump, x: 1}\n", 2, "There is no body point “hump”");
        refuse("feel: [wings]\n", 1, "There is no muscle region “wings”");
        refuse("solve:\n  - knee.bend\n", 2, "“knee.bend” is nothing that can be solved for");
        refuse("root: floating\n", 1, "There is no root posture “floating”");
        refuse("ghost: {hip.Q.flex: 3}\n", 1, "“hip.Q.flex” is no angle");
        refuse("ghost: start\n", 1, "The ghost shows no other keyframe of this drill");
    }

    @Test
    void aHandTakesTheShapeForWhatItHolds() {
        Pose pose = Poses.of("hold: {hand.R: band, hand: knee}\n");

        assertThat(pose.angles().get(Motion.HAND_FOLD, Side.RIGHT)).isGreaterThan(90);
        assertThat(pose.angles().get(Motion.HAND_FOLD, Side.LEFT)).isBetween(10., 50.);
    }

    @Test
    void fingersWrittenUnderJointsOverrideTheShapeOfTheHold() {
        Pose pose = Poses.of("hold: {hand: stick}\njoints:\n  hand.L: {curl: 20}\n");

        assertThat(pose.angles().get(Motion.HAND_CURL, Side.LEFT)).isEqualTo(20);
        assertThat(pose.angles().get(Motion.HAND_CURL, Side.RIGHT)).isGreaterThan(60);
    }

    @Test
    void theNextKeyframeMayLetGoWithOneHand() {
        PoseSheet sheet = sheet(
                """
                views: [side]
                start: {root: standing, hold: {hand: rail}}
                move: {from: start, hold: {hand.L: nothing}}
                """);
        Pose move = sheet.pose(PoseFrame.MOVE).orElseThrow();

        assertThat(move.angles().get(Motion.HAND_FOLD, Side.LEFT)).isZero();
        assertThat(move.angles().get(Motion.HAND_FOLD, Side.RIGHT)).isGreaterThan(90);
    }

    @Test
    void anUnknownHandOrAThingNoHandCanHoldIsRefused() {
        refuse("hold: {hand: cloud}\n", 1, "A hand cannot hold “cloud”");
        assertThat(problems.all().get(0).remedy()).contains("knee, thigh");
        refuse("hold: {foot.R: stick}\n", 1, "There is no hand “foot.R”");
        refuse("hold: stick\n", 1, "“hold” names no hand");
    }

    @Test
    void theGhostOfALaterKeyframeIsTheStart() {
        SolvedSheet sheet = sheet(
                        """
                views: [side]
                start: {root: standing, joints: {knee.R: {flex: 10}}}
                move: {from: start, joints: {knee.R: {flex: 80}}, ghost: start}
                """)
                .solve();

        SolvedPose ghost = sheet.pose(PoseFrame.MOVE).orElseThrow().ghost().orElseThrow();
        SolvedPose start = sheet.pose(PoseFrame.START).orElseThrow();
        assertThat(ghost.point("toe.R")).isEqualTo(start.point("toe.R"));
        assertThat(start.ghost()).isEmpty();
    }

    @Test
    void aKeyframeIsLaidOverTheOneItBuildsUpon() {
        PoseSheet sheet = sheet(
                """
                views: [side]
                start: {root: standing, joints: {hip: {flex: 20, abd: 4}}, solve: [root.y]}
                move: {from: start, joints: {hip: {flex: 30}}, solve: [root.x]}
                end: {from: move, joints: {knee: {flex: 5}}}
                """);
        Pose end = sheet.pose(PoseFrame.END).orElseThrow();

        assertThat(end.angles().get(Motion.HIP_FLEX, Side.RIGHT)).isEqualTo(30);
        assertThat(end.angles().get(Motion.HIP_ABD, Side.RIGHT)).isEqualTo(4);
        assertThat(end.solve()).extracting(Unknown::word).containsExactly("root.x");
    }

    @Test
    void keyframesInACircleAreRefused() {
        YamlNode node = YamlNode.parse("pose.yaml", "start: {from: move}\nmove: {from: start}\n", problems)
                .orElseThrow();

        assertThat(PoseSheetReader.read(node, problems)).isEmpty();
        assertThat(problems.all()).anyMatch(p -> p.what().contains("in a circle"));
    }

    private PoseSheet sheet(String yaml) {
        YamlNode node = YamlNode.parse("pose.yaml", yaml, problems).orElseThrow();
        PoseSheet sheet = PoseSheetReader.read(node, problems).orElse(null);
        assertThat(problems.all()).isEmpty();
        return sheet;
    }

    private void refuse(String yaml, int line, String what) {
        Problems found = new Problems();
        YamlNode node = YamlNode.parse("pose.yaml", yaml, found).orElseThrow();

        assertThat(PoseReader.read(node, found)).isEmpty();
        assertThat(found.all())
                .extracting(Problem::line, Problem::what)
                .contains(org.assertj.core.groups.Tuple.tuple(line, what));
        problems.addAll(found.all());
    }
}
