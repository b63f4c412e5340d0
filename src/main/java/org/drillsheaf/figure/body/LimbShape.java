package org.drillsheaf.figure.body;

import org.drillsheaf.Side;

/** What the arm and the leg of one side have in common. */
abstract class LimbShape {
    final Body.Flesh flesh;
    final Skeleton bones;
    final Side side;
    final BodyGroup group;
    /** 1 on the right, −1 on the left. */
    final double s;
    /** End of the names of its parts. */
    final String end;

    LimbShape(Body.Flesh flesh, Side side, BodyGroup group) {
        this.flesh = flesh;
        this.bones = flesh.skeleton;
        this.side = side;
        this.group = group;
        s = side == Side.RIGHT ? 1 : -1;
        end = "." + Skeleton.letter(side);
    }

    /** A segment that hangs from its origin along the frame's −y. */
    Loft hanging(Vec3 from, Rotation frame, double length, SectionProfile profile) {
        return new Loft(
                from, frame.axisX(), frame.axisY().times(-1), frame.axisZ().times(s), length, profile);
    }
}
