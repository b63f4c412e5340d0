package org.drillsheaf.figure.draw;

import java.util.Arrays;

/** The outline of a line whose width changes, or of a band beside a line. Millimetres. */
final class Ribbon {
    /** Directions are taken over this many points to each side; one alone is too unsteady. */
    private static final int TANGENT_REACH = 4;

    private Ribbon() {}

    /**
     * @param points x and y in turn
     * @param widths at each point
     */
    static void around(PathShape.Builder path, double[] points, double[] widths, double tolerance) {
        int n = widths.length;
        double[] left = new double[2 * n];
        double[] right = new double[2 * n];
        for (int i = 0; i < n; i++) {
            int before = Math.max(0, i - TANGENT_REACH);
            int after = Math.min(n - 1, i + TANGENT_REACH);
            double dx = points[2 * after] - points[2 * before];
            double dy = points[2 * after + 1] - points[2 * before + 1];
            double length = Math.max(1e-9, Segments.length(dx, dy));
            double nx = -dy / length * widths[i] / 2;
            double ny = dx / length * widths[i] / 2;
            left[2 * i] = points[2 * i] + nx;
            left[2 * i + 1] = points[2 * i + 1] + ny;
            right[2 * (n - 1 - i)] = points[2 * i] - nx;
            right[2 * (n - 1 - i) + 1] = points[2 * i + 1] - ny;
        }
        closed(path, left, right, tolerance);
    }

    /** A band between the line and the line moved by {@code offsets} (x and y in turn). */
    static void beside(PathShape.Builder path, double[] points, double[] offsets, double tolerance) {
        int n = points.length / 2;
        double[] back = new double[2 * n];
        for (int i = 0; i < n; i++) {
            back[2 * (n - 1 - i)] = points[2 * i] + offsets[2 * i];
            back[2 * (n - 1 - i) + 1] = points[2 * i + 1] + offsets[2 * i + 1];
        }
        closed(path, Arrays.copyOf(points, 2 * n), back, tolerance);
    }

    private static void closed(PathShape.Builder path, double[] there, double[] back, double tolerance) {
        CurveFit.line(path, there, tolerance);
        path.lineTo(back[0], back[1]);
        CurveFit.continueThrough(path, back, tolerance);
        path.close();
    }
}
