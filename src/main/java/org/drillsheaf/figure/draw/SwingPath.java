package org.drillsheaf.figure.draw;

import java.util.Optional;
import org.drillsheaf.figure.draw.Page.Spot;

/** The way a point takes about a joint, as a curved arrow that stays clear of both of its ends. */
final class SwingPath {
    private static final double INSET_DEGREES = 8;
    /** Shortest arrow worth drawing, millimetres. */
    private static final double SHORTEST = 3.5;

    private SwingPath() {}

    /** @param radiusShare distance of the arrow from the joint as a share of the point's own */
    static Optional<Arrows.Bend> of(Spot about, Spot from, Spot to, double radiusShare) {
        double fromAngle = StrictMath.atan2(from.y() - about.y(), from.x() - about.x());
        double toAngle = StrictMath.atan2(to.y() - about.y(), to.x() - about.x());
        double turn = Math.IEEEremainder(toAngle - fromAngle, 2 * Math.PI);
        double inset = Math.min(StrictMath.toRadians(INSET_DEGREES), Math.abs(turn) * 0.15) * Math.signum(turn);
        Arrows.Bend bend = new Arrows.Bend(
                about,
                about.distanceTo(from) * radiusShare,
                about.distanceTo(to) * radiusShare,
                fromAngle + inset,
                turn - 2 * inset);
        return bend.length() < SHORTEST ? Optional.empty() : Optional.of(bend);
    }
}
