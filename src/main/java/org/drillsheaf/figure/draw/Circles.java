package org.drillsheaf.figure.draw;

/** Circles and arcs as cubic curves. */
final class Circles {
    private Circles() {}

    static PathShape circle(double x, double y, double radius) {
        PathShape.Builder path = new PathShape.Builder();
        path.moveTo(x + radius, y);
        appendArc(path, x, y, radius, 0, 2 * Math.PI);
        return path.close().build();
    }

    /** @param from radians, y down; {@code turn} likewise, its sign is the direction */
    static PathShape arc(double x, double y, double radius, double from, double turn) {
        PathShape.Builder path = new PathShape.Builder();
        path.moveTo(x + radius * StrictMath.cos(from), y + radius * StrictMath.sin(from));
        appendArc(path, x, y, radius, from, turn);
        return path.build();
    }

    private static void appendArc(PathShape.Builder path, double x, double y, double radius, double from, double turn) {
        int pieces = Math.max(1, (int) Math.ceil(Math.abs(turn) / (Math.PI / 2) - 1e-9));
        double step = turn / pieces;
        double handle = radius * 4 / 3 * StrictMath.tan(step / 4);
        for (int i = 0; i < pieces; i++) {
            double a = from + step * i;
            double b = a + step;
            double ax = StrictMath.cos(a);
            double ay = StrictMath.sin(a);
            double bx = StrictMath.cos(b);
            double by = StrictMath.sin(b);
            path.curveTo(
                    x + radius * ax - handle * ay,
                    y + radius * ay + handle * ax,
                    x + radius * bx + handle * by,
                    y + radius * by - handle * bx,
                    x + radius * bx,
                    y + radius * by);
        }
    }
}
