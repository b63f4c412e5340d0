package org.drillsheaf.figure.statics;

import org.drillsheaf.figure.body.Vec3;

/** A part of the body's mass, as if it sat in one point. */
record PointMass(double mass, Vec3 at) {}
