package org.drillsheaf.figure.body;

import org.drillsheaf.Side;

/** What overlaps as one piece in a picture. */
public enum BodyGroup {
    /** Trunk, neck and head. */
    TRUNK,
    RIGHT_ARM,
    LEFT_ARM,
    RIGHT_LEG,
    LEFT_LEG;

    static BodyGroup arm(Side side) {
        return side == Side.RIGHT ? RIGHT_ARM : LEFT_ARM;
    }

    static BodyGroup leg(Side side) {
        return side == Side.RIGHT ? RIGHT_LEG : LEFT_LEG;
    }
}
