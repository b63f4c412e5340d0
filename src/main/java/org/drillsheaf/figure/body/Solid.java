package org.drillsheaf.figure.body;

/**
 * A closed shape in space. Implementations hold no scratch fields and allocate nothing in {@link #distance}, so that
 * many rays may ask at once.
 */
public sealed interface Solid permits FleshSolid, PropSolid {

    /** Estimated distance to the surface in statures, negative inside; its sign and its zero are exact. */
    double distance(double x, double y, double z);

    /** A capsule that holds the whole solid. */
    Capsule bounds();

    /**
     * Where a point lies along and around the solid.
     *
     * @param into receives [0] the share of the axis (0 at its start, 1 at its end, beyond at the caps) and [1] the
     *     angle in degrees: 0 front, 90 outside (right for the trunk), 180 back, negative inside
     */
    void local(double x, double y, double z, double[] into);

    /** The point of the surface at a share of the axis and an angle in degrees, counted as in {@link #local}. */
    Vec3 surface(double share, double degrees);

    default double distance(Vec3 point) {
        return distance(point.x(), point.y(), point.z());
    }
}
