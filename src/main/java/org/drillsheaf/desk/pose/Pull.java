package org.drillsheaf.desk.pose;

import java.util.List;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Posture;
import org.drillsheaf.figure.body.Proportions;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.View;

/**
 * Turns one or two joints until a point of the body lies, in one view, as near as it can to where it is pulled; never past a
 * limit. A few damped Newton steps over the projected distance, with slopes taken by one degree.
 *
 * @param both whether the other side goes along
 */
record Pull(
        Posture start, Proportions lengths, String point, List<Motion> motions, Side side, boolean both, View view) {
    private static final int STEPS = 12;
    /** Keeps a joint still whose turning hardly moves the point in this view. Statures a degree. */
    private static final double DAMPING = 4e-4;
    /** No joint jumps further in one step, degrees. */
    private static final double LARGEST_STEP = 30;

    /** The angles with the joints turned; whole degrees are made of them when they are written. */
    JointAngles towards(double across, double upward) {
        JointAngles angles = start.angles();
        for (int step = 0; step < STEPS; step++) {
            double[] miss = miss(angles, across, upward);
            double[][] slopes = new double[motions.size()][];
            for (int i = 0; i < slopes.length; i++) {
                double[] moved = miss(with(angles, i, angle(angles, i) + 1), across, upward);
                slopes[i] = new double[] {moved[0] - miss[0], moved[1] - miss[1]};
            }
            double[] turns = solve(slopes, miss);
            JointAngles next = angles;
            for (int i = 0; i < turns.length; i++) {
                double turn = Math.max(-LARGEST_STEP, Math.min(LARGEST_STEP, turns[i]));
                JointLimits.Limit limit = JointLimits.of(motions.get(i));
                next = with(next, i, Math.max(limit.least(), Math.min(limit.most(), angle(angles, i) + turn)));
            }
            if (length(miss(next, across, upward)) >= length(miss) - 1e-7) {
                return angles;
            }
            angles = next;
        }
        return angles;
    }

    /** Least squares for one or two unknowns. */
    private static double[] solve(double[][] slopes, double[] miss) {
        double damping = DAMPING * DAMPING;
        if (slopes.length == 1) {
            double[] s = slopes[0];
            return new double[] {-(s[0] * miss[0] + s[1] * miss[1]) / (s[0] * s[0] + s[1] * s[1] + damping)};
        }
        double[] s = slopes[0];
        double[] t = slopes[1];
        double ss = s[0] * s[0] + s[1] * s[1] + damping;
        double tt = t[0] * t[0] + t[1] * t[1] + damping;
        double st = s[0] * t[0] + s[1] * t[1];
        double sm = s[0] * miss[0] + s[1] * miss[1];
        double tm = t[0] * miss[0] + t[1] * miss[1];
        double determinant = ss * tt - st * st;
        return new double[] {-(sm * tt - tm * st) / determinant, -(tm * ss - sm * st) / determinant};
    }

    private double angle(JointAngles angles, int motion) {
        return angles.get(motions.get(motion), side);
    }

    private JointAngles with(JointAngles angles, int motion, double degrees) {
        return both && motions.get(motion).isPaired()
                ? angles.with(motions.get(motion), degrees)
                : angles.with(motions.get(motion), side, degrees);
    }

    private double[] miss(JointAngles angles, double across, double upward) {
        Vec3 at = Skeleton.of(start.withAngles(angles), lengths).point(point);
        return new double[] {view.across(at) - across, view.upward(at) - upward};
    }

    private static double length(double[] miss) {
        return Math.hypot(miss[0], miss[1]);
    }
}
