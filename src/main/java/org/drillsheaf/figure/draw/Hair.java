package org.drillsheaf.figure.draw;

/** Where short hair begins, in coordinates of the head: forward and up from the base of the skull, statures. */
final class Hair {
    /** Forward and up, from the nape to the forehead. */
    private static final double[] LINE = {
        -.070, -.026, -.044, -.016, -.028, .000, -.016, .016, -.004, .024, .006, .022, .013, .024, .018, .040, .026,
        .054, .040, .064, .056, .072, .07, .075
    };

    private Hair() {}

    static boolean covers(double front, double up) {
        return up > line(front);
    }

    /** Catmull-Rom through the knots. */
    private static double line(double front) {
        double[] k = LINE;
        int last = k.length / 2 - 2;
        int i = 0;
        while (i < last && front > k[2 * i + 2]) {
            i++;
        }
        double x0 = k[2 * i];
        double y0 = k[2 * i + 1];
        double x1 = k[2 * i + 2];
        double y1 = k[2 * i + 3];
        double span = x1 - x0;
        double slope0 = i > 0 ? (y1 - k[2 * i - 1]) / (x1 - k[2 * i - 2]) : 0;
        double slope1 = i < last ? (k[2 * i + 5] - y0) / (k[2 * i + 4] - x0) : 0;
        double u = Segments.clamp((front - x0) / span, 0, 1);
        double u2 = u * u;
        double u3 = u2 * u;
        return (2 * u3 - 3 * u2 + 1) * y0
                + (u3 - 2 * u2 + u) * span * slope0
                + (-2 * u3 + 3 * u2) * y1
                + (u3 - u2) * span * slope1;
    }
}
