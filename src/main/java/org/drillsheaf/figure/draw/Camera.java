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
        double azimuth = StrictMath.toRadians(view.azimuthDegrees());
        double elevation = StrictMath.toRadians(view.elevationDegrees());
        double sinA = StrictMath.sin(azimuth);
        double cosA = StrictMath.cos(azimuth);
        double sinE = StrictMath.sin(elevation);
        double cosE = StrictMath.cos(elevation);
        return new Camera(cosA, 0, -sinA, -sinA * sinE, cosE, -cosA * sinE, sinA * cosE, sinE, cosA * cosE);
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
