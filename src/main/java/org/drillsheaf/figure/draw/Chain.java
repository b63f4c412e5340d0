package org.drillsheaf.figure.draw;

/**
 * A line of the picture, point by point, in pixels.
 *
 * @param points x and y in turn
 * @param widths line width at each point, millimetres
 * @param far direction to the farther surface at each point, x and y in turn, as long as it is sure (0 to 1)
 * @param startsFree whether the first end meets no other line
 * @param kind class of most of its boundaries, see {@link Edges}
 * @param depth mean depth, towards the viewer
 */
record Chain(
        double[] points,
        double[] widths,
        double[] far,
        boolean closed,
        boolean startsFree,
        boolean endsFree,
        byte kind,
        boolean ofProp,
        double depth) {

    int size() {
        return widths.length;
    }
}
