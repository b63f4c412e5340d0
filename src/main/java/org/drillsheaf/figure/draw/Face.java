package org.drillsheaf.figure.draw;

/**
 * Hairline and features, in coordinates of the head: forward, up and aside from the base of the skull, statures. A plain face
 * that tells where the person looks: eye, raised brow, small upturned mouth.
 */
final class Face {
    /** Forward and up, from the nape to the forehead. */
    private static final double[] HAIRLINE = {
        -.070, -.026, -.044, -.016, -.028, .000, -.016, .016, -.004, .024, .006, .022, .013, .024, .018, .040, .026,
        .054, .040, .064, .056, .072, .07, .075
    };

    private static final double FRONT_OF_FACE = .03;

    private Face() {}

    static boolean isHair(double front, double up) {
        return up > hairline(front);
    }

    static boolean isFeature(double front, double up, double aside) {
        return front > FRONT_OF_FACE && (isEye(up, aside) || isBrow(up, aside) || isMouth(up, aside));
    }

    private static boolean isEye(double up, double aside) {
        double x = (aside - .0182) / .0044;
        double y = (up - .0245) / .0042;
        return x * x + y * y < 1;
    }

    private static boolean isBrow(double up, double aside) {
        double x = (aside - .0188) / .0082;
        double y = (up - .0385 - .0026 * (1 - x * x)) / .0010;
        return x * x < 1 && y * y < 1;
    }

    private static boolean isMouth(double up, double aside) {
        double x = aside / .0125;
        double y = (up + .0098 - .0034 * x * x) / .0011;
        return x * x < 1 && y * y < 1;
    }

    /** Catmull-Rom through the knots. */
    private static double hairline(double front) {
        double[] k = HAIRLINE;
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
