package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PenetrationsTest {

    @ParameterizedTest
    @ValueSource(
            strings = {"stand", "wall-lean", "supine-feet-on-wall", "half-kneel", "side-lying", "sit-reach", "band-row"
            })
    void modelPosesLieInNothing(String name) {
        assertThat(Penetrations.tooDeep(Poses.solved(name))).isEmpty();
    }

    @Test
    void aHandThroughAWallIsFoundWithItsDepth() {
        SolvedPose pose = PoseSolver.solve(
                Poses.of(
                        """
                joints: {shoulder.R: {flex: 90}}
                props: [{wall: {x: 0.4, faces: -x}}]
                """));
        List<Penetration> found = Penetrations.tooDeep(pose);
        double reach = pose.point("tip.R").x() - .4;

        assertThat(found).anySatisfy(p -> {
            assertThat(p.part()).isEqualTo("fingers.R");
            assertThat(p.into()).isEqualTo("wall");
            assertThat(p.depth()).isCloseTo(reach, within(.002));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {112, 120, 130, 142, 150, 155})
    void calfAndThighPressEachOtherFlatInsteadOfLyingInEachOther(int knee) {
        SolvedPose pose = PoseSolver.solve(Poses.of("joints: {hip: {flex: 100}, knee: {flex: %d}}\n".formatted(knee)));

        assertThat(Penetrations.tooDeep(pose))
                .extracting(Penetration::part, Penetration::into)
                .doesNotContain(tuple("thigh.R", "shank.R"), tuple("thigh.L", "shank.L"));
    }

    @Test
    void aDeclaredContactMayPressDeeperThanAnAccident() {
        String feet =
                "joints: {shoulder: {abd: 8}}\ncontacts: [{touch: feet, plane: floor, press: %s}]\nsolve: [root.y]\n";

        assertThat(Penetrations.tooDeep(PoseSolver.solve(Poses.of(feet.formatted("0.011")))))
                .isEmpty();
        assertThat(Penetrations.tooDeep(PoseSolver.solve(Poses.of(feet.formatted("0.014")))))
                .extracting(Penetration::part)
                .contains("foot.R", "foot.L");
    }

    @Test
    void anArmThroughTheChestIsFound() {
        SolvedPose pose =
                PoseSolver.solve(Poses.of("joints: {elbow.R: {flex: 90}, shoulder.R: {int: 90, abd: -20}}\n"));

        assertThat(Penetrations.tooDeep(pose)).anyMatch(p -> p.part().equals("trunk"));
    }

    @Test
    void theOtherSideLiesInTheSameThings() {
        SolvedPose pose = Poses.solved("table-knee-hug");

        assertThat(Penetrations.of(pose.mirrored())).hasSameSizeAs(Penetrations.of(pose));
        assertThat(Penetrations.tooDeep(pose)).extracting(Penetration::part).containsExactly("shank.R");
        assertThat(Penetrations.tooDeep(pose.mirrored()))
                .extracting(Penetration::part)
                .containsExactly("shank.L");
    }
}
