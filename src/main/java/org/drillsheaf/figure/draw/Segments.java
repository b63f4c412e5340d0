package org.drillsheaf.figure.draw;

/** Plane geometry of straight pieces. */
final class Segments {
    private Segments() {}

    /** Distance of a point from the piece between two points. */
    static double distance(double x, double y, double ax, double ay, double bx, double by) {
        double dx = bx - ax;
        double dy = by - ay;
        double square = dx * dx + dy * dy;
        double t = square < 1e-12 ? 0 : clamp(((x - ax) * dx + (y - ay) * dy) / square, 0, 1);
        return length(x - ax - t * dx, y - ay - t * dy);
    }

    static double length(double dx, double dy) {
        return Math.sqrt(dx * dx + dy * dy);
    }

    static double clamp(double value, double least, double most) {
        return value < least ? least : value > most ? most : value;
    }

    /** Smooth rise from 0 at {@code from} to 1 at {@code to}. */
    static double smoothRise(double from, double to, double value) {
        double t = clamp((value - from) / (to - from), 0, 1);
        return t * t * (3 - 2 * t);
    }
}
