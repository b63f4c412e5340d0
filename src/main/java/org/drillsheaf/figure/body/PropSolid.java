package org.drillsheaf.figure.body;

/** A solid that props are made of. */
public sealed interface PropSolid extends Solid permits RoundedBox, Ball, Cylinder, Tube {

    /**
     * Number of the face that a surface point belongs to, so that edges between faces can be drawn. Boxes: 0 and 1 = −
     * and + along their own x, 2 and 3 along y, 4 and 5 along z; cylinders: 0 = round side, 1 = ends; else 0.
     */
    int face(double x, double y, double z);

    /** Left and right exchanged. */
    PropSolid mirrored();
}
