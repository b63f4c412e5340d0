package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.drillsheaf.Problem;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PoseSolverTest {

    static Stream<String> poses() {
        return Poses.names().stream();
    }

    @ParameterizedTest
    @MethodSource("poses")
    void everyContactOfTheModelPosesIsMet(String name) {
        SolvedPose pose = Poses.solved(name);

        assertThat(pose.residual()).isLessThan(PoseSolver.MET);
        assertThat(pose.problems()).noneMatch(p -> p.severity() == Problem.Severity.ERROR);
    }

    @ParameterizedTest
    @MethodSource("poses")
    void theSamePoseSolvesToTheSameBits(String name) {
        SolvedPose first = Poses.solved(name);
        SolvedPose second = Poses.solved(name);

        assertThat(second.skeleton().posture()).isEqualTo(first.skeleton().posture());
        assertThat(second.point("tip.R")).isEqualTo(first.point("tip.R"));
    }

    @Test
    void aTouchingSoleLiesJustInTheFloor() {
        SolvedPose pose = Poses.solved("stand");

        assertThat(pose.point("heel.R").y()).isCloseTo(-.006, within(.001));
        assertThat(pose.angle("ankle", Side.RIGHT, "dorsi")).isCloseTo(0, within(.1));
    }

    @Test
    void anAngleThatHadToMoveIsToldWithBothNumbers() {
        SolvedPose pose = PoseSolver.solve(
                Poses.of(
                        """
                joints: {hip: {flex: 40}, knee: {flex: 0}}
                contacts:
                  - {touch: feet, plane: floor}
                  - {place: ankle.R, to: hip.R, offset: [0, -0.491, 0]}
                solve: [root.y, hip.flex]
                """));

        assertThat(pose.angle(Motion.HIP_FLEX, Side.RIGHT)).isCloseTo(0, within(.5));
        assertThat(pose.problems())
                .extracting(Problem::what)
                .containsExactly("The contacts moved hip.flex from 40.0 to 0.0°");
    }

    @Test
    void aWrittenAnkleThatAFlatFootBendsFartherIsTold() {
        String bent =
                """
                joints: {hip: {flex: 30}, knee: {flex: 60}, ankle.R: {dorsi: %d}}
                contacts: [{touch: feet, plane: floor}, {flat: feet, plane: floor}]
                solve: [root.y]
                """;

        assertThat(PoseSolver.solve(Poses.of(bent.formatted(0))).problems())
                .extracting(Problem::what)
                .containsExactly("The contacts moved ankle.R.dorsi from 0.0 to 30.0°");
        assertThat(PoseSolver.solve(Poses.of(bent.formatted(27))).problems()).isEmpty();
    }

    @Test
    void aContactOutOfReachNamesTheJointAtItsLimit() {
        SolvedPose pose = PoseSolver.solve(
                Poses.of(
                        """
                contacts:
                  - {place: toe.R, to: shoulder.R, offset: [0, 0.05, 0]}
                solve: [hip.R.flex]
                """));

        assertThat(pose.problems())
                .anyMatch(p -> p.severity() == Problem.Severity.ERROR
                        && p.what().startsWith("The place of toe.R misses by")
                        && p.what().contains("hip.R.flex, 145°, is at its limit"));
    }

    @Test
    void aFlatFootThatNoAnkleAllowsIsRefused() {
        SolvedPose pose = PoseSolver.solve(
                Poses.of(
                        """
                joints: {hip: {flex: 40}, knee: {flex: 110}}
                contacts:
                  - {flat: feet, plane: floor}
                  - {touch: feet, plane: floor}
                solve: [root.y]
                """));

        assertThat(pose.problems())
                .extracting(Problem::what)
                .contains("The right ankle dorsi comes to 70°, beyond its limit of 45°");
    }

    @Test
    void withoutUnknownsThePoseStaysAsWritten() {
        SolvedPose pose = PoseSolver.solve(Poses.of("joints: {knee.R: {flex: 90}}\n"));

        assertThat(pose.moved()).isEmpty();
        assertThat(pose.angle("knee", Side.RIGHT, "flex")).isEqualTo(90);
        assertThat(pose.angle("knee", Side.LEFT, "flex")).isZero();
    }
}
