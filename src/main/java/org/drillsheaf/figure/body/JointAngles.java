package org.drillsheaf.figure.body;

import java.util.Arrays;
import org.drillsheaf.Side;

/** A value in degrees for every {@link Motion} and side; immutable. Unset ones are 0. */
public final class JointAngles {
    /** The straight figure: everything 0. */
    public static final JointAngles STRAIGHT = new JointAngles(emptyValues());

    private final double[] values;

    private JointAngles(double[] values) {
        this.values = values;
    }

    private static double[] emptyValues() {
        double[] values = new double[2 * Motion.values().length];
        Arrays.fill(values, Double.NaN);
        return values;
    }

    private static int index(Motion motion, Side side) {
        return 2 * motion.ordinal() + (motion.isPaired() && side == Side.LEFT ? 1 : 0);
    }

    /** Degrees; 0 when nobody set it. For unpaired motions the side does not matter. */
    public double get(Motion motion, Side side) {
        double value = values[index(motion, side)];
        return Double.isNaN(value) ? 0 : value;
    }

    /** Degrees of a motion of the middle of the body (pelvis, spine, neck, head). */
    public double get(Motion motion) {
        return get(motion, Side.RIGHT);
    }

    public boolean isSet(Motion motion, Side side) {
        return !Double.isNaN(values[index(motion, side)]);
    }

    public JointAngles with(Motion motion, Side side, double degrees) {
        double[] changed = values.clone();
        changed[index(motion, side)] = degrees;
        return new JointAngles(changed);
    }

    /** Both sides; for unpaired motions the one value. */
    public JointAngles with(Motion motion, double degrees) {
        return with(motion, Side.RIGHT, degrees).with(motion, Side.LEFT, degrees);
    }

    /** Takes a value back, so that it is unset again. */
    public JointAngles without(Motion motion, Side side) {
        return with(motion, side, Double.NaN);
    }

    /** Left and right exchanged. */
    public JointAngles mirrored() {
        double[] changed = values.clone();
        for (Motion motion : Motion.values()) {
            int right = index(motion, Side.RIGHT);
            int left = index(motion, Side.LEFT);
            changed[right] = motion.turnsAroundInMirror() ? -values[left] : values[left];
            if (motion.isPaired()) {
                changed[left] = values[right];
            }
        }
        return new JointAngles(changed);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof JointAngles angles && Arrays.equals(values, angles.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }
}
