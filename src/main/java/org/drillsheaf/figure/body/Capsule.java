package org.drillsheaf.figure.body;

/** A round-ended rod that holds a whole solid; for quick "cannot be here" answers. */
public record Capsule(Vec3 from, Vec3 to, double radius) {

    /** Never more than the true distance from a point to the solid inside. */
    public double distance(double x, double y, double z) {
        double ax = to.x() - from.x();
        double ay = to.y() - from.y();
        double az = to.z() - from.z();
        double px = x - from.x();
        double py = y - from.y();
        double pz = z - from.z();
        double square = ax * ax + ay * ay + az * az;
        double share = square < 1e-18 ? 0 : Math.min(1, Math.max(0, (px * ax + py * ay + pz * az) / square));
        double dx = px - ax * share;
        double dy = py - ay * share;
        double dz = pz - az * share;
        return Math.sqrt(dx * dx + dy * dy + dz * dz) - radius;
    }
}
