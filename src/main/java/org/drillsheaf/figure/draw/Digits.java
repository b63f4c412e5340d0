package org.drillsheaf.figure.draw;

import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Vec3;

/** Divides the front of a foot into toes, or the fingers of a hand into single ones, for thin lines between them. */
final class Digits {
    private static final double[] TOES = {-.32, .06, .38, .68};
    private static final double[] FINGERS = {-.48, .0, .5};
    /** Where the lines between the toes begin, forward of the toes' joints, and how much earlier the little toe begins. */
    private static final double FIRST_TOE = .012;

    private static final double TOE_SLANT = .010;
    private static final double TOE_TIPS = .0415;
    private static final double BALL_HALF_WIDTH = .0262;
    private static final double TIP_HALF_WIDTH = .0195;
    private static final double SOLE = -.0075;
    private static final double FINGER_START = .008;
    /** Farther than this to the palm's side lie only the folded ends of the fingers. */
    private static final double FOLDED = .014;

    private static final double FINGER_HALF_WIDTH = .0190;

    private final Rotation frame;
    private final Vec3 origin;
    /** 1 on the right side, -1 on the left. */
    private final double outside;

    Digits(Rotation frame, Vec3 origin, double outside) {
        this.frame = frame;
        this.origin = origin;
        this.outside = outside;
    }

    private double along(Vec3 axis, double x, double y, double z) {
        return axis.x() * (x - origin.x()) + axis.y() * (y - origin.y()) + axis.z() * (z - origin.z());
    }

    /** Part of a point on a foot; the origin is the toes' joints. */
    short toe(double x, double y, double z) {
        double forward = along(frame.axisX(), x, y, z);
        if (along(frame.axisY(), x, y, z) < SOLE) {
            return Parts.SKIN;
        }
        double share = Segments.clamp((forward - FIRST_TOE) / (TOE_TIPS - FIRST_TOE), 0, 1);
        double width = BALL_HALF_WIDTH + (TIP_HALF_WIDTH - BALL_HALF_WIDTH) * share;
        double across = outside * along(frame.axisZ(), x, y, z) / width;
        return forward < FIRST_TOE - TOE_SLANT * across ? Parts.SKIN : Parts.digit(band(TOES, across));
    }

    /** Part of a point on the fingers of a hand whose origin is the row of knuckles. */
    short finger(double x, double y, double z) {
        double out = -along(frame.axisY(), x, y, z);
        double across = along(frame.axisX(), x, y, z) / FINGER_HALF_WIDTH;
        double palmwards = -outside * along(frame.axisZ(), x, y, z);
        return out < FINGER_START && palmwards < FOLDED ? Parts.SKIN : Parts.digit(band(FINGERS, across));
    }

    private static int band(double[] borders, double value) {
        int band = 0;
        while (band < borders.length && value > borders[band]) {
            band++;
        }
        return band;
    }
}
