package org.drillsheaf.figure.draw;

import java.util.Arrays;

/**
 * Turns a dense row of points into few cubic curves that stay within a tolerance.
 *
 * <p>Source of the method: Philip J. Schneider, An algorithm for automatically fitting digitized curves, in Graphics Gems,
 * Academic Press 1990.
 */
final class CurveFit {
    /** Directions are taken over this length, in the unit of the points: millimetres. */
    private static final double TANGENT_REACH = 0.45;
    /** From this turn on a point is a corner. */
    private static final double CORNER_COSINE = 0.64;

    private static final int IMPROVEMENTS = 3;
    /** An error up to this many tolerances is worth a better spacing before the row is cut in two. */
    private static final double WORTH_IMPROVING = 4;

    private final double[] points;
    private final double[] spacing;
    private final double tolerance;
    private final PathShape.Builder path;

    private CurveFit(double[] points, double tolerance, PathShape.Builder path) {
        this.points = points;
        this.tolerance = tolerance;
        this.path = path;
        spacing = new double[points.length / 2];
    }

    /** Appends curves through the points (x and y in turn) to a path that already stands at the first of them. */
    static void continueThrough(PathShape.Builder path, double[] points, double tolerance) {
        CurveFit fit = new CurveFit(points, tolerance, path);
        int last = points.length / 2 - 1;
        if (last < 1) {
            return;
        }
        fit.fit(0, last, fit.direction(0, fit.reach(0, 1, last)), fit.direction(last, fit.reach(last, -1, 0)));
    }

    /** A whole line. */
    static void line(PathShape.Builder path, double[] points, double tolerance) {
        path.moveTo(points[0], points[1]);
        continueThrough(path, points, tolerance);
    }

    /** A closed ring; the first point is not repeated at the end. */
    static void ring(PathShape.Builder path, double[] points, double tolerance) {
        double[] around = Arrays.copyOf(points, points.length + 2);
        around[points.length] = points[0];
        around[points.length + 1] = points[1];
        path.moveTo(points[0], points[1]);
        CurveFit fit = new CurveFit(around, tolerance, path);
        int last = around.length / 2 - 1;
        double[] seam = fit.direction(fit.reach(last, -1, 0), fit.reach(0, 1, last));
        fit.fit(0, last, seam, new double[] {-seam[0], -seam[1]});
        path.close();
    }

    private void fit(int first, int last, double[] startTangent, double[] endTangent) {
        if (last - first < 2 || isStraight(first, last)) {
            path.lineTo(points[2 * last], points[2 * last + 1]);
            return;
        }
        space(first, last);
        double[] curve = bestCurve(first, last, startTangent, endTangent);
        int worst = worst(first, last, curve);
        double error = error(worst, curve);
        for (int i = 0; i < IMPROVEMENTS && error > tolerance && error < tolerance * WORTH_IMPROVING; i++) {
            respace(first, last, curve);
            curve = bestCurve(first, last, startTangent, endTangent);
            worst = worst(first, last, curve);
            error = error(worst, curve);
        }
        if (error <= tolerance) {
            path.curveTo(curve[2], curve[3], curve[4], curve[5], curve[6], curve[7]);
            return;
        }
        int middle = Math.min(last - 1, Math.max(first + 1, worst));
        int before = reach(middle, -1, first);
        int after = reach(middle, 1, last);
        double[] in = direction(middle, before);
        double[] out = direction(middle, after);
        if (-(in[0] * out[0] + in[1] * out[1]) > CORNER_COSINE) {
            out = direction(before, after);
            in = new double[] {-out[0], -out[1]};
        }
        fit(first, middle, startTangent, in);
        fit(middle, last, out, endTangent);
    }

    /** The first point that is far enough to give a direction, not beyond {@code end}. */
    private int reach(int from, int step, int end) {
        int at = from;
        while (at != end
                && Segments.length(points[2 * at] - points[2 * from], points[2 * at + 1] - points[2 * from + 1])
                        < TANGENT_REACH) {
            at += step;
        }
        return at;
    }

    private boolean isStraight(int first, int last) {
        double ax = points[2 * first];
        double ay = points[2 * first + 1];
        double bx = points[2 * last];
        double by = points[2 * last + 1];
        for (int i = first + 1; i < last; i++) {
            if (Segments.distance(points[2 * i], points[2 * i + 1], ax, ay, bx, by) > tolerance * 0.4) {
                return false;
            }
        }
        return true;
    }

    private double[] direction(int from, int to) {
        return unit(points[2 * to] - points[2 * from], points[2 * to + 1] - points[2 * from + 1]);
    }

    private static double[] unit(double dx, double dy) {
        double length = Segments.length(dx, dy);
        return length < 1e-12 ? new double[] {0, 0} : new double[] {dx / length, dy / length};
    }

    /** Parameters in proportion to the length along the row. */
    private void space(int first, int last) {
        spacing[first] = 0;
        for (int i = first + 1; i <= last; i++) {
            spacing[i] = spacing[i - 1]
                    + Segments.length(points[2 * i] - points[2 * i - 2], points[2 * i + 1] - points[2 * i - 1]);
        }
        double whole = Math.max(1e-12, spacing[last]);
        for (int i = first + 1; i <= last; i++) {
            spacing[i] /= whole;
        }
    }

    /** Least squares for the two inner control points, which lie on the given tangents. */
    private double[] bestCurve(int first, int last, double[] start, double[] end) {
        double ax = points[2 * first];
        double ay = points[2 * first + 1];
        double dx = points[2 * last];
        double dy = points[2 * last + 1];
        double c00 = 0;
        double c01 = 0;
        double c11 = 0;
        double x0 = 0;
        double x1 = 0;
        double dots = start[0] * end[0] + start[1] * end[1];
        for (int i = first; i <= last; i++) {
            double t = spacing[i];
            double s = 1 - t;
            double b0 = s * s * s;
            double b1 = 3 * t * s * s;
            double b2 = 3 * t * t * s;
            double b3 = t * t * t;
            c00 += b1 * b1;
            c01 += b1 * b2 * dots;
            c11 += b2 * b2;
            double rx = points[2 * i] - ax * (b0 + b1) - dx * (b2 + b3);
            double ry = points[2 * i + 1] - ay * (b0 + b1) - dy * (b2 + b3);
            x0 += b1 * (start[0] * rx + start[1] * ry);
            x1 += b2 * (end[0] * rx + end[1] * ry);
        }
        double determinant = c00 * c11 - c01 * c01;
        double chord = Segments.length(dx - ax, dy - ay);
        double alpha = Math.abs(determinant) < 1e-12 ? 0 : (x0 * c11 - x1 * c01) / determinant;
        double beta = Math.abs(determinant) < 1e-12 ? 0 : (c00 * x1 - c01 * x0) / determinant;
        boolean poor = alpha < chord * 1e-3 || beta < chord * 1e-3 || alpha > 3 * chord || beta > 3 * chord;
        if (poor) {
            alpha = chord / 3;
            beta = chord / 3;
        }
        return new double[] {
            ax, ay, ax + start[0] * alpha, ay + start[1] * alpha, dx + end[0] * beta, dy + end[1] * beta, dx, dy
        };
    }

    private int worst(int first, int last, double[] curve) {
        int worst = (first + last) / 2;
        double most = -1;
        for (int i = first + 1; i < last; i++) {
            double error = error(i, curve);
            if (error > most) {
                most = error;
                worst = i;
            }
        }
        return worst;
    }

    private double error(int i, double[] curve) {
        double t = spacing[i];
        return Segments.length(at(curve, t, 0) - points[2 * i], at(curve, t, 1) - points[2 * i + 1]);
    }

    private static double at(double[] c, double t, int axis) {
        double s = 1 - t;
        return s * s * s * c[axis]
                + 3 * t * s * s * c[2 + axis]
                + 3 * t * t * s * c[4 + axis]
                + t * t * t * c[6 + axis];
    }

    /** One Newton step each towards the nearest point of the curve. */
    private void respace(int first, int last, double[] c) {
        for (int i = first + 1; i < last; i++) {
            double t = spacing[i];
            double s = 1 - t;
            double ex = at(c, t, 0) - points[2 * i];
            double ey = at(c, t, 1) - points[2 * i + 1];
            double vx = 3 * (s * s * (c[2] - c[0]) + 2 * s * t * (c[4] - c[2]) + t * t * (c[6] - c[4]));
            double vy = 3 * (s * s * (c[3] - c[1]) + 2 * s * t * (c[5] - c[3]) + t * t * (c[7] - c[5]));
            double wx = 6 * (s * (c[4] - 2 * c[2] + c[0]) + t * (c[6] - 2 * c[4] + c[2]));
            double wy = 6 * (s * (c[5] - 2 * c[3] + c[1]) + t * (c[7] - 2 * c[5] + c[3]));
            double slope = vx * vx + vy * vy + ex * wx + ey * wy;
            if (Math.abs(slope) > 1e-12) {
                spacing[i] = Segments.clamp(t - (ex * vx + ey * vy) / slope, 0, 1);
            }
        }
    }
}
