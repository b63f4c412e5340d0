package org.drillsheaf.figure.draw;

import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.Mark;
import org.drillsheaf.figure.pose.SolvedPose;

/**
 * The two arms of a goniometer laid at a joint, or against the room.
 *
 * @param straight where the farther segment would point at 0 degrees
 * @param segment where it points
 * @param degrees the clinical value of the solved pose
 */
record JointArms(Vec3 centre, Vec3 straight, Vec3 segment, double degrees) {

    /** Empty for a joint that has no arc of its own. */
    static Optional<JointArms> of(SolvedPose pose, Mark.AngleArc mark) {
        return mark.arms().isPresent()
                ? againstTheRoom(pose, mark.at(), mark.arms().get())
                : of(pose, mark.at());
    }

    private static Optional<JointArms> againstTheRoom(SolvedPose pose, String at, Mark.Arms arms) {
        Optional<Vec3> centre = pose.findPoint(at);
        Optional<Vec3> end = pose.findPoint(arms.to());
        return centre.flatMap(c -> end.map(e -> {
            Vec3 segment = e.minus(c);
            double cosine =
                    Math.max(-1, Math.min(1, segment.unit().dot(arms.zero().unit())));
            return new JointArms(
                    c, arms.zero(), segment, arms.counted() * StrictMath.toDegrees(StrictMath.acos(cosine)));
        }));
    }

    private static Optional<JointArms> of(SolvedPose pose, String joint) {
        if (!joint.endsWith(".R") && !joint.endsWith(".L")) {
            return Optional.empty();
        }
        Side side = joint.endsWith(".R") ? Side.RIGHT : Side.LEFT;
        String end = joint.substring(joint.length() - 2);
        String name = joint.substring(0, joint.length() - 2);
        return switch (name) {
            case "knee" -> between(pose, "hip" + end, joint, "ankle" + end, Motion.KNEE_FLEX, side);
            case "elbow" -> between(pose, "shoulder" + end, joint, "wrist" + end, Motion.ELBOW_FLEX, side);
            case "hip" ->
                Optional.of(new JointArms(
                        pose.point(joint),
                        pose.frame("pelvis").axisY().times(-1),
                        pose.point("knee" + end).minus(pose.point(joint)),
                        pose.angle(Motion.HIP_FLEX, side)));
            case "shoulder" ->
                Optional.of(new JointArms(
                        pose.point(joint),
                        pose.point("pelvis").minus(pose.point(joint)),
                        pose.point("elbow" + end).minus(pose.point(joint)),
                        pose.angle(Motion.SHOULDER_FROM_TRUNK, side)));
            case "ankle" ->
                Optional.of(new JointArms(
                        pose.point(joint),
                        pose.frame("shank" + end).axisX(),
                        pose.frame("foot" + end).axisX(),
                        pose.angle(Motion.ANKLE_DORSI, side)));
            default -> Optional.empty();
        };
    }

    private static Optional<JointArms> between(
            SolvedPose pose, String before, String joint, String after, Motion motion, Side side) {
        Vec3 centre = pose.point(joint);
        return Optional.of(new JointArms(
                centre, centre.minus(pose.point(before)), pose.point(after).minus(centre), pose.angle(motion, side)));
    }
}
