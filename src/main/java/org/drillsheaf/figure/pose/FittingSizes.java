package org.drillsheaf.figure.pose;

import static org.drillsheaf.figure.body.Motion.HIP_FLEX;
import static org.drillsheaf.figure.body.Motion.KNEE_FLEX;

import java.util.List;
import java.util.Map;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.Posture;
import org.drillsheaf.figure.body.Proportions;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/** Sizes of things that fit a client, as fractions of stature, read from the drawn body at rest. */
public final class FittingSizes {
    /** Foot length: Drillis and Contini 1966, in Winter 2009, fig. 4.1. */
    public static final double FOOT = .152;
    /** How deep soft flesh sinks into a floor or a towel, and under weight into a seat; statures (our own). */
    private static final double SINK = .006;

    private static final double SINK_IN_SEAT = .02;

    private FittingSizes() {}

    /**
     * Diameter of the ball that keeps the knees in line with the hips: distance of the hip centres less one breadth of a
     * knee; derived, .038 H (6.5 cm at 172 cm).
     */
    public static double kneeBall() {
        Body body = body(JointAngles.STRAIGHT);
        double halfKnee = outside(body, "thigh.R", 1);
        return 2 * (Proportions.STANDARD.hipHalfBreadth() - halfKnee);
    }

    /** Height of a seat on which the thighs lie level and the soles flat. */
    public static double levelSeat() {
        Body body = body(JointAngles.STRAIGHT.with(HIP_FLEX, 90).with(KNEE_FLEX, 90));
        double seat = lowest(body, List.of("glute.R", "glute.L"));
        return seat - lowest(body, List.of("foot.R", "foot.L")) + SINK_IN_SEAT;
    }

    /** Height of a rolled towel that carries the middle of a thigh of someone lying flat on the back. */
    public static double towelUnderThigh() {
        Posture flat = new Posture(Vec3.ZERO, Rotation.aboutZ(90), JointAngles.STRAIGHT, Map.of());
        Body body = Body.of(Skeleton.of(flat, Proportions.STANDARD), BodyBuild.AVERAGE);
        double ground = lowest(body, List.of("trunk", "glute.R", "glute.L")) + SINK;
        double thigh = body.part("thigh.R").orElseThrow().solid().lowest(Vec3.Y, .45, .7);
        return thigh - ground + SINK;
    }

    /** One comfortable step: a foot length from the toes of one foot to the heel of the other (common practice). */
    public static double step() {
        return FOOT;
    }

    private static Body body(JointAngles angles) {
        Posture posture = new Posture(Vec3.ZERO, Rotation.NONE, angles, Map.of());
        return Body.of(Skeleton.of(posture, Proportions.STANDARD), BodyBuild.AVERAGE);
    }

    private static double outside(Body body, String part, double share) {
        var solid = body.part(part).orElseThrow().solid();
        return solid.surface(share, 90).distanceTo(solid.surface(share, -90)) / 2;
    }

    private static double lowest(Body body, List<String> parts) {
        return parts.stream()
                .mapToDouble(p -> body.part(p).orElseThrow().solid().lowest(Vec3.Y, 0, 1))
                .min()
                .orElseThrow();
    }
}
