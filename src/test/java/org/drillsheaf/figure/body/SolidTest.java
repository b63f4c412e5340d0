package org.drillsheaf.figure.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillsheaf.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class SolidTest {
    private static final JointAngles BENT = JointAngles.STRAIGHT
            .with(Motion.SPINE_LUMBAR, 20)
            .with(Motion.SPINE_THORACIC, 30)
            .with(Motion.HIP_FLEX, 40)
            .with(Motion.KNEE_FLEX, 60)
            .with(Motion.ELBOW_FLEX, 70)
            .with(Motion.SHOULDER_FLEX, 30);

    private static Body body(BodyBuild build) {
        return Body.of(
                Skeleton.of(new Posture(new Vec3(.1, .5, 0), Rotation.NONE, BENT, Map.of()), Proportions.STANDARD),
                build);
    }

    static Stream<BodyPart> parts() {
        return body(BodyBuild.AVERAGE).parts().stream();
    }

    @ParameterizedTest
    @MethodSource("parts")
    void surfacePointsLieOnTheSurfaceAndAreFoundAgain(BodyPart part) {
        double[] local = new double[2];
        for (double share : new double[] {.1, .3, .5, .8}) {
            for (double degrees : new double[] {10, 75, 130, -100, -40}) {
                Vec3 p = part.solid().surface(share, degrees);
                assertThat(part.solid().distance(p)).isCloseTo(0, within(3e-4));
                part.solid().local(p.x(), p.y(), p.z(), local);
                assertThat(local[0]).isCloseTo(share, within(.04));
                assertThat(local[1]).isCloseTo(degrees, within(6.));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theBoundsHoldTheWholeSolid(BodyPart part) {
        Capsule bounds = part.solid().bounds();

        part.solid().samples(0, 1, p -> assertThat(bounds.distance(p.x(), p.y(), p.z()))
                .isLessThan(1e-6));
    }

    @ParameterizedTest
    @MethodSource("parts")
    void theLowestReachIsThatOfTheLowestSample(BodyPart part) {
        Vec3 direction = new Vec3(.3, .9, -.2).unit();
        double[] lowest = {Double.POSITIVE_INFINITY};
        part.solid().samples(0, 1, p -> lowest[0] = Math.min(lowest[0], p.dot(direction)));

        assertThat(part.solid().lowest(direction, 0, 1)).isCloseTo(lowest[0], within(.001));
    }

    @Test
    void leftAndRightSolidsMirrorEachOther() {
        Body body = body(BodyBuild.AVERAGE);
        for (BodyPart part : body.parts()) {
            if (part.name().endsWith(".R")) {
                String left = part.name().substring(0, part.name().length() - 1) + "L";
                Vec3 p = part.solid().surface(.4, 60);
                Vec3 q = body.part(left).orElseThrow().solid().surface(.4, 60);
                assertThat(q.distanceTo(p.mirrored())).as(part.name()).isLessThan(1e-9);
            }
        }
    }

    @Test
    void aFistClosesRoundItsGripAndLeavesRoomForARod() {
        Body fist = bent(HandShape.FIST.of(JointAngles.STRAIGHT, Side.RIGHT));
        Vec3 grip = fist.skeleton().point("grip.R");

        for (String part : List.of("palm.R", "fingers.R", "thumb.R")) {
            assertThat(fist.part(part).orElseThrow().solid().distance(grip))
                    .as(part)
                    .isBetween(.0025, .03);
        }
        assertThat(fist.skeleton().point("tip.R").distanceTo(grip)).isLessThan(.025);
        assertThat(fist.skeleton().point("tip.L").distanceTo(fist.skeleton().point("grip.L")))
                .isGreaterThan(.05);
    }

    @Test
    void tuckedToesTurnUpFromTheBallWhileTheHeelStays() {
        Body flat = bent(JointAngles.STRAIGHT);
        Body tucked = bent(JointAngles.STRAIGHT.with(Motion.TOES_EXT, 75));

        assertThat(tucked.skeleton().point("toe.L").y())
                .isGreaterThan(flat.skeleton().point("toe.L").y() + .03);
        for (String point : List.of("heel.L", "ball.L", "little-toe.L")) {
            assertThat(tucked.skeleton().point(point)).isEqualTo(flat.skeleton().point(point));
        }
    }

    @Test
    void aBentFootKeepsItsSurfaceAndItsSamplesTogether() {
        FleshSolid foot = bent(JointAngles.STRAIGHT.with(Motion.TOES_EXT, 60))
                .part("foot.R")
                .orElseThrow()
                .solid();

        for (double share : new double[] {.1, .5, .9}) {
            double[] local = new double[2];
            Vec3 sole = foot.surface(share, 180);
            foot.local(sole.x(), sole.y(), sole.z(), local);
            assertThat(local[0]).isCloseTo(share, within(.01));
            assertThat(foot.distance(sole)).isCloseTo(0, within(.002));
        }
        foot.samples(0, 1, p -> assertThat(foot.bounds().distance(p.x(), p.y(), p.z()))
                .isLessThan(1e-6));
    }

    private static Body bent(JointAngles angles) {
        Posture posture = new Posture(new Vec3(0, .53, 0), Rotation.NONE, angles, Map.of());
        return Body.of(Skeleton.of(posture, Proportions.STANDARD), BodyBuild.AVERAGE);
    }

    @Test
    void everyNamedPartIsThere() {
        assertThat(body(BodyBuild.AVERAGE).parts())
                .extracting(BodyPart::name)
                .containsExactlyInAnyOrderElementsOf(PartNames.all());
    }

    @Test
    void shortSpellingsMeanTheSameParts() {
        assertThat(PartNames.canonical("uarmL")).isEqualTo("upper-arm.L");
        assertThat(PartNames.canonical("thighR")).isEqualTo("thigh.R");
        assertThat(PartNames.canonical("cranium")).isEqualTo("skull");
        assertThat(PartNames.canonical("trunk")).isEqualTo("trunk");
    }

    @ParameterizedTest
    @EnumSource(BodyBuild.class)
    void everyBuildHasTheSameBones(BodyBuild build) {
        assertThat(body(build).skeleton().point("knee.R"))
                .isEqualTo(body(BodyBuild.AVERAGE).skeleton().point("knee.R"));
    }

    @Test
    void aLargerBodyIsWiderAtTheWaist() {
        Vec3 average =
                body(BodyBuild.AVERAGE).part("trunk").orElseThrow().solid().surface(.5, 90);
        Vec3 larger = body(BodyBuild.LARGER).part("trunk").orElseThrow().solid().surface(.5, 90);

        assertThat(larger.z() / average.z()).isCloseTo(1.22, within(.01));
    }

    @Test
    void everyMusclePatchLiesOnAPart() {
        for (String id : MuscleRegions.ids()) {
            assertThat(MuscleRegions.patches(id)).as(id).isNotEmpty().allSatisfy(p -> {
                assertThat(PartNames.all()).contains(p.part());
                assertThat(p.strength((p.from() + p.to()) / 2, p.centre())).isEqualTo(1);
                assertThat(p.strength(p.to(), p.centre())).isCloseTo(0, within(1e-9));
            });
        }
        assertThat(MuscleRegions.patches("hamstrings.L"))
                .extracting(MuscleRegions.Patch::part)
                .containsExactly("thigh.L");
        assertThat(MuscleRegions.isKnown("abs.R")).isFalse();
    }

    @Test
    void propSolidsMeasureTrueDistances() {
        RoundedBox box = new RoundedBox(Vec3.ZERO, new Vec3(.1, .2, .3), Rotation.aboutY(90), .01);
        assertThat(box.distance(.4, 0, 0)).isCloseTo(.1, within(1e-9));
        assertThat(box.distance(0, .25, 0)).isCloseTo(.05, within(1e-9));
        assertThat(box.face(0, .21, 0)).isEqualTo(3);
        assertThat(new Ball(Vec3.X, .2).distance(0, 0, 0)).isCloseTo(.8, within(1e-9));
        assertThat(new Tube(Vec3.ZERO, Vec3.X, .1).distance(.5, .3, 0)).isCloseTo(.2, within(1e-9));
        Cylinder rod = new Cylinder(Vec3.ZERO, Vec3.Z, .1, .5);
        assertThat(rod.distance(0, .3, 0)).isCloseTo(.2, within(1e-9));
        assertThat(rod.distance(0, 0, .6)).isCloseTo(.1, within(1e-9));
        assertThat(rod.face(0, 0, .5)).isEqualTo(1);
    }
}
