package org.drillsheaf.figure.pose;

import org.drillsheaf.figure.body.Vec3;

/**
 * A flat surface that a body can rest on or lean against.
 *
 * @param normal unit vector out of the surface, towards the body
 */
public record Plane(Vec3 point, Vec3 normal) {

    /** Height of a point above the surface, statures; negative behind it. */
    public double height(Vec3 p) {
        return p.minus(point).dot(normal);
    }

    Plane mirrored() {
        return new Plane(point.mirrored(), normal.mirrored());
    }
}
