package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.drillsheaf.figure.body.BodyBuild;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
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

    @ParameterizedTest
    @EnumSource(BodyBuild.class)
    void bellyThighsAndCalvesLieOnEachOtherWhereTheBodyFoldsFar(BodyBuild build) {
        Map<String, String> folded = Map.of(
                "full squat",
                """
                joints: {pelvis: {tilt: 10}, spine: {lumbar: 20, thoracic: 15}, hip: {flex: 120, abd: 14}, knee: {flex: 140}}
                contacts: [{flat: feet, plane: floor}, {touch: feet, plane: floor}, {place: heel.R, x: 0}]
                solve: [root.x, root.y]
                """,
                "sitting back on the heels, belly on the thighs",
                """
                root: hands-and-knees
                joints:
                  pelvis: {tilt: -26}
                  spine: {lumbar: 28, thoracic: 24}
                  hip: {flex: 126, abd: 6}
                  knee: {flex: 152}
                  ankle: {dorsi: -65}
                contacts: [{touch: knees, plane: floor}, {touch: feet, plane: floor}]
                solve: [root.y, pelvis.tilt, ankle.dorsi]
                """,
                "both knees to the chest",
                """
                root: supine
                joints: {pelvis: {tilt: -22}, spine: {lumbar: 22, thoracic: 8}, hip: {flex: 126, abd: 6}, knee: {flex: 145}}
                contacts: [{touch: trunk, plane: floor}]
                solve: [root.y]
                """);

        folded.forEach((name, pose) -> assertThat(Penetrations.tooDeep(PoseSolver.solve(Poses.of(pose), build)))
                .as(name)
                .filteredOn(p -> List.of("trunk", "thigh.R", "shank.R", "foot.R", "glute.R")
                        .containsAll(List.of(p.part(), p.into())))
                .isEmpty());
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
