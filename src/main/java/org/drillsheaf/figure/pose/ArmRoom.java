package org.drillsheaf.figure.pose;

import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;

/**
 * Poses are written for the average body. The arms of a broader one hang or reach around its flesh, so they are led away
 * from the trunk until they only rest on it.
 */
final class ArmRoom {
    /** Degrees at a time; {@link #MOST_STEPS} of them are as far as arms are led. */
    private static final double STEP = 5;

    static final int MOST_STEPS = 9;

    private ArmRoom() {}

    /** The pose with the arms of these sides led one step away from the trunk. */
    static Pose wider(Pose pose, Set<Side> crowded) {
        JointAngles angles = pose.angles();
        for (Side side : crowded) {
            Motion away = away(pose, side);
            angles = angles.with(away, side, Math.min(JointLimits.of(away).most(), angles.get(away, side) + STEP));
        }
        return pose.withAngles(angles);
    }

    /** A hand that is held in its place by contacts lets the elbow swing out; else the whole arm is lifted aside. */
    private static Motion away(Pose pose, Side side) {
        boolean held = pose.solve().stream()
                .anyMatch(unknown -> unknown instanceof Unknown.Angle angle
                        && angle.motion() == Motion.SHOULDER_ABD
                        && angle.side().map(s -> s == side).orElse(true));
        if (held) {
            return Motion.SHOULDER_INT;
        }
        return pose.angles().isSet(Motion.SHOULDER_ELEV, side) ? Motion.SHOULDER_ELEV : Motion.SHOULDER_ABD;
    }
}
