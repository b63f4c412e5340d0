package org.drillsheaf.figure.draw;

/**
 * One entry of a display list: a path that is filled (even-odd), stroked with round caps and joins, or both.
 *
 * @param role what it is in the picture; for whoever wants to pick or count, no writer needs it
 * @param fill colour as 0xRRGGBB, {@link #NONE} for no fill
 * @param fillOpacity 0 to 1
 * @param stroke colour as 0xRRGGBB, {@link #NONE} for no stroke
 * @param strokeWidth millimetres on paper
 */
public record DrawnPath(Role role, PathShape shape, int fill, double fillOpacity, int stroke, double strokeWidth) {
    public static final int NONE = -1;

    /** Part of the picture a path belongs to, in the order in which they are painted. */
    public enum Role {
        PROP,
        GHOST,
        BODY,
        SHADE,
        FEEL,
        HATCH,
        HALO,
        LINE,
        PROP_LINE,
        MARK,
        DIMENSION,
        KEY,
        LABEL
    }

    static DrawnPath filled(Role role, PathShape shape, int colour) {
        return new DrawnPath(role, shape, colour, 1, NONE, 0);
    }

    static DrawnPath stroked(Role role, PathShape shape, int colour, double width) {
        return new DrawnPath(role, shape, NONE, 1, colour, width);
    }

    DrawnPath moved(double dx, double dy) {
        return new DrawnPath(role, shape.moved(dx, dy), fill, fillOpacity, stroke, strokeWidth);
    }

    /** Box of everything that gets ink. */
    Box box() {
        return shape.box().grown(stroke == NONE ? 0 : strokeWidth / 2);
    }
}
