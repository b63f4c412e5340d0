package org.drillsheaf.figure.pose;

import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/**
 * Reads clinical angles back from the joint points of a placed body, as a goniometer would, without looking at the
 * angles that placed it.
 */
final class MeasuredAngles {
    private MeasuredAngles() {}

    /** Degrees; for motions that joint points do not show (blade, wrist, fingers, spine) the angle that placed them. */
    static double of(Skeleton body, Motion motion, Side side) {
        double s = side == Side.RIGHT ? 1 : -1;
        return switch (motion) {
            case HIP_FLEX -> {
                Vec3 down = pelvis(body).toLocal(thigh(body, side));
                yield degrees(down.x(), -down.y());
            }
            case HIP_ABD -> {
                Vec3 down = pelvis(body).toLocal(thigh(body, side));
                yield degrees(s * down.z(), StrictMath.sqrt(down.x() * down.x() + down.y() * down.y()));
            }
            case HIP_INT -> hipRotation(body, side, s);
            case KNEE_FLEX -> kneeFlexion(body, side);
            case ELBOW_FLEX ->
                segment(body, "shoulder", "elbow", side).degreesTo(segment(body, "elbow", "wrist", side));
            case ANKLE_DORSI -> {
                Vec3 forward = body.frame("shank", side).toLocal(foot(body, side));
                yield degrees(forward.y(), forward.x());
            }
            case ANKLE_INV -> {
                Rotation foot = body.frame("foot", side);
                double dorsi = of(body, Motion.ANKLE_DORSI, side);
                Rotation level = body.frame("shank", side).then(Rotation.aboutZ(dorsi));
                Vec3 up = level.toLocal(foot.axisY());
                yield degrees(s * up.z(), up.y());
            }
            case SHOULDER_FROM_TRUNK -> sagittalLift(body, side) - trunkLine(body, side);
            case SHOULDER_FLEX -> sagittalLift(body, side);
            case SHOULDER_ABD -> {
                Vec3 down = body.frame("thorax").toLocal(segment(body, "shoulder", "elbow", side));
                yield degrees(s * down.z(), StrictMath.sqrt(down.x() * down.x() + down.y() * down.y()));
            }
            default -> body.posture().angles().get(motion, side);
        };
    }

    /** Angle of the upper arm to the line from shoulder to hip of its side, degrees from 0 to 180. */
    static double armToTrunkLine(Skeleton body, Side side) {
        Vec3 trunk = body.point("hip", side).minus(body.point("shoulder", side));
        return trunk.degreesTo(segment(body, "shoulder", "elbow", side));
    }

    private static double degrees(double y, double x) {
        return StrictMath.toDegrees(StrictMath.atan2(y, x));
    }

    private static Vec3 segment(Skeleton body, String from, String to, Side side) {
        return body.point(to, side).minus(body.point(from, side)).unit();
    }

    private static Vec3 thigh(Skeleton body, Side side) {
        return segment(body, "hip", "knee", side);
    }

    private static Vec3 foot(Skeleton body, Side side) {
        return segment(body, "heel", "ball", side);
    }

    /** The pelvis from three of its points: both hips and the base of the spine. */
    private static Rotation pelvis(Skeleton body) {
        Vec3 right = body.point("hip.R").minus(body.point("hip.L")).unit();
        Vec3 spine = body.point("L5").minus(body.point("pelvis")).without(right).unit();
        // the base of the spine lies .006 behind and .065 above the middle of the hips
        double behind = degrees(.006, .065);
        Vec3 forward = spine.cross(right);
        Vec3 up = spine.times(StrictMath.cos(StrictMath.toRadians(behind)))
                .plus(forward.times(StrictMath.sin(StrictMath.toRadians(behind))));
        return new Rotation(up.cross(right), up, right);
    }

    /** From the plane of thigh and shank while the knee is bent; a straight leg shows it by the foot. */
    private static double hipRotation(Skeleton body, Side side, double s) {
        Rotation pelvis = pelvis(body);
        Rotation unturned = pelvis.then(
                Rotation.aboutZ(of(body, Motion.HIP_FLEX, side)), Rotation.aboutX(-s * of(body, Motion.HIP_ABD, side)));
        Vec3 shank = segment(body, "knee", "ankle", side);
        Vec3 across = shank.without(thigh(body, side));
        if (across.length() < .05) {
            return body.posture().angles().get(Motion.HIP_INT, side);
        }
        Vec3 back = unturned.toLocal(across);
        double sign = kneeFlexion(body, side) < 0 ? -1 : 1;
        return s * degrees(sign * back.z(), -sign * back.x());
    }

    private static double kneeFlexion(Skeleton body, Side side) {
        Vec3 shank = body.frame("thigh", side).toLocal(segment(body, "knee", "ankle", side));
        return degrees(-shank.x(), -shank.y());
    }

    /** Forward lift of the upper arm against the upper chest. */
    private static double sagittalLift(Skeleton body, Side side) {
        Vec3 down = body.frame("thorax").toLocal(segment(body, "shoulder", "elbow", side));
        return degrees(down.x(), -down.y());
    }

    /** Forward angle of the line from shoulder to the middle of the hips against the upper chest. */
    private static double trunkLine(Skeleton body, Side side) {
        Vec3 down = body.frame("thorax").toLocal(body.point("pelvis").minus(body.point("shoulder", side)));
        return degrees(down.x(), -down.y());
    }
}
