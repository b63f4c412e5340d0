package org.drillsheaf.figure.body;

import org.drillsheaf.Side;

/**
 * How the fingers lie when a hand holds something; degrees, chosen by eye. The same fingers can be written by hand:
 * these are only their usual places.
 */
public enum HandShape {
    /** Fingers straight: flat on a surface, or reaching. */
    OPEN(0, 0, 0),
    /** Fingers a little bent, as on the ribs or round a cushion. */
    RESTING(8, 10, 0),
    /** Fingers bent over a limb or an edge, the thumb away from them. */
    CUPPED(30, 26, 0),
    /** Fingers closed round a rod, a band or a strap, the thumb over them. */
    FIST(76, 96, 100);

    private final double curl;
    private final double fold;
    private final double thumb;

    HandShape(double curl, double fold, double thumb) {
        this.curl = curl;
        this.fold = fold;
        this.thumb = thumb;
    }

    /** The angles with those of one hand in this shape. */
    public JointAngles of(JointAngles angles, Side side) {
        return angles.with(Motion.HAND_CURL, side, curl)
                .with(Motion.HAND_FOLD, side, fold)
                .with(Motion.HAND_THUMB, side, thumb);
    }
}
