package org.drillsheaf.figure.draw;

/**
 * The axes of the page in space: right, up and towards the viewer, each a unit vector. Parallel projection; coordinates in
 * statures.
 */
record Camera(
        double rightX,
        double rightY,
        double rightZ,
        double upX,
        double upY,
        double upZ,
        double towardX,
        double towardY,
        double towardZ) {

    static Camera of(View view) {
        double sinA = sin(view.azimuthDegrees());
        double cosA = sin(90 - view.azimuthDegrees());
        double sinE = sin(view.elevationDegrees());
        double cosE = sin(90 - view.elevationDegrees());
        return new Camera(cosA, 0, -sinA, -sinA * sinE, cosE, -cosA * sinE, sinA * cosE, sinE, cosA * cosE);
    }

    /** Exactly the same for an angle and its mirror image, so that mirrored pictures are the same to the last digit. */
    private static double sin(double degrees) {
        if (degrees < -90) {
            return -sin(degrees + 180);
        }
        if (degrees > 90) {
            return sin(180 - degrees);
        }
        return degrees < 0 ? -sin(-degrees) : StrictMath.sin(StrictMath.toRadians(degrees));
    }

    double right(double x, double y, double z) {
        return rightX * x + rightY * y + rightZ * z;
    }

    double up(double x, double y, double z) {
        return upX * x + upY * y + upZ * z;
    }

    double toward(double x, double y, double z) {
        return towardX * x + towardY * y + towardZ * z;
    }
}
