package org.drillsheaf.figure.body;

import java.util.function.Consumer;

/** A solid that a body is made of; it can be laid against things. */
public sealed interface FleshSolid extends Solid permits Loft, BentLoft, CurvedLoft, Ellipsoid {

    /**
     * How far the surface reaches against a direction: the least of {@code direction · p} over surface samples between
     * two shares of the axis (the caps belong to the shares 0 and 1).
     */
    double lowest(Vec3 direction, double fromShare, double toShare);

    /** Hands out points spread over the surface between two shares of the axis, always in the same order. */
    void samples(double fromShare, double toShare, Consumer<Vec3> to);
}
