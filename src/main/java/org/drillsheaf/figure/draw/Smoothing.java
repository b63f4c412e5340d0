package org.drillsheaf.figure.draw;

/** Bell-curve smoothing along a line. */
final class Smoothing {
    private Smoothing() {}

    /** Smooths points (x and y in turn); open ends stay where they are, because the line is mirrored through them. */
    static double[] points(double[] points, boolean closed, double sigma) {
        int n = points.length / 2;
        double[] bell = bell(sigma, 3);
        double[] result = new double[points.length];
        for (int i = 0; i < n; i++) {
            double x = bell[0] * points[2 * i];
            double y = bell[0] * points[2 * i + 1];
            for (int k = 1; k < bell.length; k++) {
                x += bell[k] * (at(points, i - k, 0, closed) + at(points, i + k, 0, closed));
                y += bell[k] * (at(points, i - k, 1, closed) + at(points, i + k, 1, closed));
            }
            result[2 * i] = x;
            result[2 * i + 1] = y;
        }
        return result;
    }

    private static double at(double[] points, int index, int axis, boolean closed) {
        int n = points.length / 2;
        if (closed) {
            return points[2 * Math.floorMod(index, n) + axis];
        }
        if (index < 0) {
            return 2 * points[axis] - points[2 * Math.min(n - 1, -index) + axis];
        }
        if (index >= n) {
            return 2 * points[2 * (n - 1) + axis] - points[2 * Math.max(0, 2 * (n - 1) - index) + axis];
        }
        return points[2 * index + axis];
    }

    /** Smooths values along a line; at open ends only what is there counts. */
    static double[] values(double[] values, int stride, boolean closed, double sigma) {
        int n = values.length / stride;
        double[] bell = bell(sigma, 2.5);
        double[] result = new double[values.length];
        for (int i = 0; i < n; i++) {
            double total = 0;
            for (int k = 1 - bell.length; k < bell.length; k++) {
                int j = closed ? Math.floorMod(i + k, n) : i + k;
                if (j < 0 || j >= n) {
                    continue;
                }
                double weight = bell[Math.abs(k)];
                total += weight;
                for (int s = 0; s < stride; s++) {
                    result[i * stride + s] += weight * values[j * stride + s];
                }
            }
            for (int s = 0; s < stride; s++) {
                result[i * stride + s] /= total;
            }
        }
        return result;
    }

    /** Half of a bell curve whose whole has the sum 1. */
    private static double[] bell(double sigma, double cutoff) {
        int reach = (int) Math.ceil(sigma * cutoff);
        double[] bell = new double[reach + 1];
        double total = 0;
        for (int i = 0; i <= reach; i++) {
            bell[i] = StrictMath.exp(-i * i / (2 * sigma * sigma));
            total += i == 0 ? bell[i] : 2 * bell[i];
        }
        for (int i = 0; i <= reach; i++) {
            bell[i] /= total;
        }
        return bell;
    }
}
