package org.drillsheaf.figure.pose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Posture;
import org.drillsheaf.figure.body.Proportions;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/** What holds for every pose. */
class PosePropertiesTest {
    private static final List<Motion> MEASURED = List.of(
            Motion.HIP_FLEX,
            Motion.HIP_ABD,
            Motion.HIP_INT,
            Motion.KNEE_FLEX,
            Motion.ELBOW_FLEX,
            Motion.ANKLE_DORSI,
            Motion.ANKLE_INV,
            Motion.SHOULDER_ABD);

    @Provide
    Arbitrary<JointAngles> angles() {
        return Arbitraries.doubles()
                .between(.05, .95)
                .list()
                .ofSize(2 * Motion.values().length)
                .map(PosePropertiesTest::within);
    }

    /** A share of each joint's range; the two other ways to write a shoulder stay unused. */
    private static JointAngles within(List<Double> shares) {
        JointAngles angles = JointAngles.STRAIGHT;
        int next = 0;
        for (Motion motion : Motion.values()) {
            JointLimits.Limit limit = JointLimits.of(motion);
            for (Side side : Side.values()) {
                double share = shares.get(next++);
                double degrees = limit.least() + share * (limit.most() - limit.least());
                boolean isOtherShoulder = motion == Motion.SHOULDER_ELEV
                        || motion == Motion.SHOULDER_PLANE
                        || motion == Motion.SHOULDER_FROM_TRUNK;
                // beyond 85° the order of a ball joint's angles is no longer unique, and elbows bend one way only
                double kept = motion == Motion.SHOULDER_ABD ? Math.max(-60, Math.min(85, degrees)) : degrees;
                kept = motion == Motion.ELBOW_FLEX ? Math.max(0, kept) : kept;
                if (!isOtherShoulder) {
                    angles = angles.with(motion, side, kept);
                }
            }
        }
        return angles;
    }

    private static Skeleton skeleton(JointAngles angles) {
        Posture posture = new Posture(new Vec3(.2, .5, -.1), Rotation.aboutY(33), angles, Map.of());
        return Skeleton.of(posture, Proportions.STANDARD);
    }

    @Property(tries = 300)
    void anglesMeasuredBackFromJointPointsAreThoseThatPlacedThem(@ForAll("angles") JointAngles angles) {
        Skeleton body = skeleton(angles);

        for (Side side : Side.values()) {
            for (Motion motion : MEASURED) {
                assertThat(MeasuredAngles.of(body, motion, side))
                        .as(motion + " " + side)
                        .isCloseTo(angles.get(motion, side), org.assertj.core.api.Assertions.within(.1));
            }
        }
    }

    @Property(tries = 200)
    void aLiftFromTheTrunkIsMeasuredFromTheTrunkLine(
            @ForAll("angles") JointAngles angles, @ForAll @DoubleRange(min = -40, max = 160) double lift) {
        JointAngles written = angles.with(Motion.SHOULDER_FROM_TRUNK, lift);
        Skeleton body = skeleton(written);

        for (Side side : Side.values()) {
            double measured = MeasuredAngles.of(body, Motion.SHOULDER_FROM_TRUNK, side);
            double off = Math.IEEEremainder(measured - lift, 360);
            assertThat(off).isCloseTo(0, org.assertj.core.api.Assertions.within(.1));
        }
    }

    @Property(tries = 200)
    void theMirroredPoseHasMirroredPoints(@ForAll("angles") JointAngles angles) {
        Skeleton body = skeleton(angles);
        Skeleton other = Skeleton.of(body.posture().mirrored(), Proportions.STANDARD);

        for (String name : body.pointNames()) {
            Vec3 mirrored = other.point(MirroredNames.of(name));
            assertThat(mirrored.distanceTo(body.point(name).mirrored()))
                    .as(name)
                    .isLessThan(1e-9);
        }
        assertThat(other.posture().mirrored().angles()).isEqualTo(angles);
    }

    @Property(tries = 100)
    void boneLengthsNeverChange(@ForAll("angles") JointAngles angles) {
        Skeleton body = skeleton(angles);

        for (Side side : Side.values()) {
            assertThat(body.point("hip", side).distanceTo(body.point("knee", side)))
                    .isCloseTo(.245, org.assertj.core.api.Assertions.within(1e-9));
            assertThat(body.point("knee", side).distanceTo(body.point("ankle", side)))
                    .isCloseTo(.246, org.assertj.core.api.Assertions.within(1e-9));
            assertThat(body.point("elbow", side).distanceTo(body.point("wrist", side)))
                    .isCloseTo(.146, org.assertj.core.api.Assertions.within(1e-9));
        }
    }

    @Property(tries = 60)
    void theSkinOfTheMirroredBodyIsTheMirroredSkin(
            @ForAll("angles") JointAngles angles, @ForAll @DoubleRange(min = -180, max = 180) double degrees) {
        Skeleton skeleton = skeleton(angles);
        Body body = Body.of(skeleton, BodyBuild.AVERAGE);
        Body other = Body.of(Skeleton.of(skeleton.posture().mirrored(), Proportions.STANDARD), BodyBuild.AVERAGE);

        for (String part : List.of("trunk", "thigh.R", "forearm.L", "glute.R", "foot.L")) {
            String point = part + "@0.4," + degrees;
            Vec3 here = BodyPoints.of(body, point);
            Vec3 there = BodyPoints.of(other, MirroredNames.of(point));
            assertThat(there.distanceTo(here.mirrored())).as(point).isLessThan(1e-9);
        }
    }

    @Property(tries = 50)
    void distancesScaleWithStature(
            @ForAll @DoubleRange(min = .02, max = .6) double statures,
            @ForAll @DoubleRange(min = 120, max = 200) double stature) {
        PersonalDistance small = PersonalDistance.of("d", statures, stature);
        PersonalDistance tall = PersonalDistance.of("d", statures, 1.3 * stature);

        assertThat((double) tall.centimetres())
                .isCloseTo(1.3 * small.centimetres(), org.assertj.core.api.Assertions.within(1.2));
        assertThat(small.least()).isLessThan(small.most());
    }
}
