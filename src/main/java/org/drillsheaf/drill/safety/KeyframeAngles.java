package org.drillsheaf.drill.safety;

import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.SolvedPose;

/** Angles of one solved keyframe, worst of both sides where a rule asks for one number. Clinical degrees. */
record KeyframeAngles(SolvedPose pose) {
    /** A knee bent less counts as nearly straight. House limit, degrees. */
    private static final double STRAIGHT_KNEE = 30;
    /** A hip bent less counts as nearly straight. House limit, degrees. */
    private static final double STRAIGHT_HIP = 20;
    /** An arm lifted sideways this far counts as out to the side. House limit, degrees. */
    private static final double ARM_OUT = 60;
    /** Turning that the eye does not see, degrees. */
    private static final double NOTHING = 0.5;

    /** The larger of the joint's own bend and the angle by which the thigh leaves the extended shoulder–hip line. */
    double hipFlexion(Side side) {
        return Math.max(angle("hip", side, "flex"), thighFromTrunkLine(side));
    }

    double hipFlexion() {
        return Math.max(0, worst(this::hipFlexion));
    }

    /** How far the thigh passes behind the extended shoulder–hip line. */
    double hipExtension() {
        return Math.max(0, worst(side -> -thighFromTrunkLine(side)));
    }

    double hipIn() {
        return visible(worst(side -> angle("hip", side, "int")));
    }

    double hipOut() {
        return visible(worst(side -> -angle("hip", side, "int")));
    }

    double hipOutWhileStraight() {
        return visible(worst(side -> hipFlexion(side) < STRAIGHT_HIP ? -angle("hip", side, "int") : 0));
    }

    double kneeFlexion(Side side) {
        return angle("knee", side, "flex");
    }

    double legTension() {
        return Math.max(0, worst(side -> kneeFlexion(side) < STRAIGHT_KNEE ? hipFlexion(side) : 0));
    }

    double spineForward() {
        return Math.max(0, angle("spine", "lumbar") + angle("spine", "thoracic"));
    }

    /** Arching of the whole spine or of the low back alone, whichever is more. */
    double spineBack() {
        double lumbar = angle("spine", "lumbar");
        return Math.max(0, Math.max(-lumbar, -lumbar - angle("spine", "thoracic")));
    }

    double spineTurn() {
        return StrictMath.abs(angle("spine", "turn"));
    }

    double neckForward() {
        return Math.max(0, angle("neck", "flex") + angle("head", "nod"));
    }

    double neckTurn() {
        return StrictMath.abs(angle("neck", "turn"));
    }

    /** Angle of the upper arm to the line from shoulder to hip, 0 hanging, 180 straight up. */
    double armUp() {
        return worst(side -> {
            Vec3 shoulder = body().point("shoulder", side);
            Vec3 down = body().point("hip", side).minus(shoulder);
            return down.degreesTo(body().point("elbow", side).minus(shoulder));
        });
    }

    boolean armOutAndTurnedOut() {
        for (Side side : Side.values()) {
            if (angle("shoulder", side, "abd") >= ARM_OUT && angle("shoulder", side, "int") < -NOTHING) {
                return true;
            }
        }
        return false;
    }

    /** Adduction against the pelvis, or a knee or ankle past the body's midline. */
    boolean crossesMidline() {
        Rotation pelvis = body().frame("pelvis");
        Vec3 middle = body().point("pelvis");
        for (Side side : Side.values()) {
            double outward = side == Side.RIGHT ? 1 : -1;
            boolean adducted = angle("hip", side, "abd") < -NOTHING;
            for (String joint : new String[] {"knee", "ankle"}) {
                Vec3 local = pelvis.toLocal(body().point(joint, side).minus(middle));
                adducted |= outward * local.z() < 0;
            }
            if (adducted) {
                return true;
            }
        }
        return false;
    }

    /** Signed: positive in front of the line that goes on from shoulders over hips. */
    private double thighFromTrunkLine(Side side) {
        Rotation pelvis = body().frame("pelvis");
        Vec3 shoulders = body().point("shoulder", Side.RIGHT).towards(body().point("shoulder", Side.LEFT), .5);
        Vec3 line = pelvis.toLocal(body().point("pelvis").minus(shoulders));
        Vec3 thigh = pelvis.toLocal(body().point("knee", side).minus(body().point("hip", side)));
        double turned = sagittal(thigh) - sagittal(line);
        return turned > 180 ? turned - 360 : turned < -180 ? turned + 360 : turned;
    }

    /** Angle of a direction in the plane of front and up: 0 down, 90 forward. */
    private static double sagittal(Vec3 local) {
        return StrictMath.toDegrees(StrictMath.atan2(local.x(), -local.y()));
    }

    private static double visible(double degrees) {
        return degrees > NOTHING ? degrees : 0;
    }

    private Skeleton body() {
        return pose.skeleton();
    }

    private double angle(String joint, String movement) {
        return pose.angle(joint, Side.RIGHT, movement);
    }

    private double angle(String joint, Side side, String movement) {
        return pose.angle(joint, side, movement);
    }

    /** A number of one side. */
    private interface OneSide {
        double of(Side side);
    }

    private static double worst(OneSide number) {
        return Math.max(number.of(Side.LEFT), number.of(Side.RIGHT));
    }
}
