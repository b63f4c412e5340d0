package org.drillsheaf.desk.pose;

import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;

/**
 * One movement as it stands in a keyframe.
 *
 * @param side empty for the middle of the body and for pairs that move together
 * @param degrees as a goniometer reads it
 * @param byTouch whether the contacts set it
 */
public record JointRow(Motion motion, Optional<Side> side, double degrees, boolean byTouch) {

    public JointLimits.Limit limit() {
        return JointLimits.of(motion);
    }

    /** Whole degrees, as they are shown and written. */
    public long whole() {
        return Math.round(degrees);
    }

    /** Whether this is the row of the same movement and side. */
    public boolean isSame(JointRow other) {
        return motion == other.motion && side.equals(other.side);
    }
}
