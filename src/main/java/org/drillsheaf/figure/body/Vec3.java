package org.drillsheaf.figure.body;

/**
 * A point or direction. Axes of the world: x forward, y up, z to the right of a standing figure; one unit is one
 * stature.
 */
public record Vec3(double x, double y, double z) {
    public static final Vec3 ZERO = new Vec3(0, 0, 0);
    public static final Vec3 X = new Vec3(1, 0, 0);
    public static final Vec3 Y = new Vec3(0, 1, 0);
    public static final Vec3 Z = new Vec3(0, 0, 1);

    public Vec3 plus(Vec3 other) {
        return new Vec3(x + other.x, y + other.y, z + other.z);
    }

    public Vec3 minus(Vec3 other) {
        return new Vec3(x - other.x, y - other.y, z - other.z);
    }

    public Vec3 times(double factor) {
        return new Vec3(x * factor, y * factor, z * factor);
    }

    public double dot(Vec3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vec3 cross(Vec3 other) {
        return new Vec3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    public double distanceTo(Vec3 other) {
        return minus(other).length();
    }

    /** The same direction with length one; a vector of length zero stays as it is. */
    public Vec3 unit() {
        double length = length();
        return length < 1e-12 ? this : times(1 / length);
    }

    /** The point at {@code share} of the way to the other one. */
    public Vec3 towards(Vec3 other, double share) {
        return times(1 - share).plus(other.times(share));
    }

    /** This vector without its part along a unit vector. */
    public Vec3 without(Vec3 unit) {
        return minus(unit.times(dot(unit)));
    }

    /** Angle to another direction, degrees from 0 to 180. */
    public double degreesTo(Vec3 other) {
        return StrictMath.toDegrees(StrictMath.atan2(cross(other).length(), dot(other)));
    }

    /** Left and right exchanged. */
    public Vec3 mirrored() {
        return new Vec3(x, y, -z);
    }
}
