package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PoseMeasuresTest {

    @Test
    void standingFreelyIsBothFeetFreeAndNothingElse() {
        PoseMeasures m = PoseMeasures.of(Poses.solved("stand"));

        assertThat(m.stand()).isEqualTo(2);
        assertThat(m.hipAcross()).isFalse();
        assertThat(m.kneeLoad()).isZero();
        assertThat(m.onFloor()).isFalse();
        assertThat(m.wristLoad()).isZero();
        assertThat(m.nothingEndsTheDepth()).isTrue();
    }

    @Test
    void aRoundedLeanBendsTheHipAgainstTheTrunkLineMoreThanAgainstThePelvis() {
        SolvedPose pose = Poses.solved("wall-lean");
        PoseMeasures m = PoseMeasures.of(pose);

        assertThat(m.hipFlexion())
                .isGreaterThan(40)
                .isGreaterThan(pose.angle("hip", org.drillsheaf.Side.RIGHT, "flex"));
        assertThat(m.spineForward()).isCloseTo(48, within(.01));
        assertThat(m.kneeLoad()).isCloseTo(26, within(.01));
        assertThat(m.legTension()).isEqualTo(m.hipFlexion());
        assertThat(m.armUp()).isCloseTo(50, within(4.));
        assertThat(m.stand()).isEqualTo(1);
    }

    @Test
    void onTheBackWithTheFeetOnAWallTheFeetAreHigh() {
        PoseMeasures m = PoseMeasures.of(Poses.solved("supine-feet-on-wall"));

        assertThat(m.flatBack()).isTrue();
        assertThat(m.feetHigh()).isTrue();
        assertThat(m.onFloor()).isTrue();
        assertThat(m.stand()).isZero();
        assertThat(m.kneeLoad()).isZero();
    }

    @Test
    void onATableIsNotOnTheFloor() {
        PoseMeasures m = PoseMeasures.of(Poses.solved("table-knee-hug"));

        assertThat(m.onFloor()).isFalse();
        assertThat(m.flatBack()).isTrue();
        assertThat(m.hipFlexion()).isGreaterThanOrEqualTo(112);
    }

    @Test
    void handsAndKneesCarryTheTrunk() {
        PoseMeasures m = PoseMeasures.of(Poses.solved("hands-knees"));

        assertThat(m.wristLoad()).isEqualTo(2);
        assertThat(m.kneeContact()).isTrue();
        assertThat(m.onFloor()).isTrue();
        assertThat(m.faceDown()).isFalse();
        assertThat(m.spineForward()).isCloseTo(68, within(.01));
        assertThat(m.headLow()).isTrue();
    }

    @Test
    void lyingOnTheSideIsOnTheSideAndTheArmCarriesNothing() {
        PoseMeasures m = PoseMeasures.of(Poses.solved("side-lying"));

        assertThat(m.onSide()).isTrue();
        assertThat(m.flatBack()).isFalse();
        assertThat(m.shoulderLoad()).isZero();
    }

    @Test
    void aForearmPropOnTheSideCarriesTheShoulder() {
        PoseMeasures m = PoseMeasures.of(
                PoseSolver.solve(
                        Poses.of(
                                """
                root: side-lying-left
                joints:
                  spine: {side: -20}
                  hip: {flex: 10}
                  knee: {flex: 90}
                  shoulder.L: {abd: 75}
                  elbow.L: {flex: 90}
                contacts:
                  - {touch: hip.L, plane: floor}
                  - {touch: forearm.L, plane: floor}
                solve: [root.y, pelvis.list]
                """)));

        assertThat(m.shoulderLoad()).isEqualTo(2);
    }

    @Test
    void oneFootOffTheFloorIsTheHardestStand() {
        PoseMeasures m = PoseMeasures.of(
                PoseSolver.solve(
                        Poses.of(
                                """
                joints: {hip.R: {flex: 50}, knee.R: {flex: 60}}
                contacts: [{flat: foot.L, plane: floor}, {touch: foot.L, plane: floor}]
                solve: [root.y]
                """)));

        assertThat(m.stand()).isEqualTo(3);
        assertThat(m.kneeLoad()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"hip.R: {abd: -4}", "hip.R: {flex: 40, abd: 5, int: 35}, knee.R: {flex: 90}"})
    void aLegThatCrossesTheMiddleIsAcross(String joints) {
        PoseMeasures m = PoseMeasures.of(PoseSolver.solve(Poses.of("joints: {" + joints + "}\n")));

        assertThat(m.hipAcross()).isEqualTo(joints.contains("-4"));
    }

    @Test
    void aPelvisShiftedOverOneFootIsAcross() {
        PoseMeasures m = PoseMeasures.of(
                PoseSolver.solve(
                        Poses.of(
                                """
                contacts:
                  - {flat: feet, plane: floor}
                  - {touch: feet, plane: floor}
                  - {place: heel.R, z: 0.06}
                  - {place: heel.L, z: -0.06}
                  - {place: pelvis, z: 0.03}
                joints: {hip.R: {abd: 0}, hip.L: {abd: 8}, knee: {flex: 4}, hip: {flex: 2}}
                solve: [root.y, root.z, hip.R.abd, hip.L.abd, knee.R.flex, knee.L.flex]
                """)));

        assertThat(m.hipAcross()).isTrue();
    }

    @Test
    void risingFromASeatCountsTheKneesFromTheSeatOn() {
        Problems problems = new Problems();
        PoseSheet sheet = YamlNode.parse(
                        "x.yaml",
                        """
                        start: {root: seated, joints: {knee: {flex: 70}}}
                        move:
                          root: standing
                          joints: {knee: {flex: 5}}
                          contacts: [{flat: feet, plane: floor}, {touch: feet, plane: floor}]
                          solve: [root.y]
                        """,
                        problems)
                .flatMap(n -> PoseSheetReader.read(n, problems))
                .orElseThrow();

        assertThat(PoseMeasures.of(sheet.solve()).kneeLoad()).isEqualTo(70);
    }

    @Test
    void theWorstOfSeveralKeepsEveryMeasureAtItsHighest() {
        PoseMeasures stand = PoseMeasures.of(Poses.solved("stand"));
        PoseMeasures supine = PoseMeasures.of(Poses.solved("supine-feet-on-wall"));
        PoseMeasures worst = PoseMeasures.worst(List.of(stand, supine));

        assertThat(worst.stand()).isEqualTo(2);
        assertThat(worst.feetHigh()).isTrue();
        assertThat(worst.hipFlexion()).isEqualTo(supine.hipFlexion());
    }

    @ParameterizedTest
    @ValueSource(strings = {"side-lying", "half-kneel", "band-row", "table-knee-hug"})
    void theOtherSideMeasuresTheSame(String name) {
        SolvedPose pose = Poses.solved(name);
        PoseMeasures m = PoseMeasures.of(pose);
        PoseMeasures other = PoseMeasures.of(pose.mirrored());

        assertThat(other.hipFlexion()).isCloseTo(m.hipFlexion(), within(1e-9));
        assertThat(other.armUp()).isCloseTo(m.armUp(), within(1e-9));
        assertThat(other.stand()).isEqualTo(m.stand());
        assertThat(other.onSide()).isEqualTo(m.onSide());
        assertThat(other.hipAcross()).isEqualTo(m.hipAcross());
        assertThat(other.wristLoad()).isEqualTo(m.wristLoad());
    }
}
