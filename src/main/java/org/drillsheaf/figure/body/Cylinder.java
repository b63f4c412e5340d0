package org.drillsheaf.figure.body;

/**
 * A rod with flat, slightly rounded ends: a rolled towel, a bolster.
 *
 * @param axis unit direction of its length
 * @param half half its length, statures
 */
public record Cylinder(Vec3 centre, Vec3 axis, double radius, double half) implements PropSolid {
    private static final double ROUNDING = .004;

    private double along(double x, double y, double z) {
        return (x - centre.x()) * axis.x() + (y - centre.y()) * axis.y() + (z - centre.z()) * axis.z();
    }

    private double fromAxis(double along, double x, double y, double z) {
        double dx = x - centre.x();
        double dy = y - centre.y();
        double dz = z - centre.z();
        return Math.sqrt(Math.max(0, dx * dx + dy * dy + dz * dz - along * along));
    }

    @Override
    public double distance(double x, double y, double z) {
        double along = along(x, y, z);
        double u = fromAxis(along, x, y, z) - radius + ROUNDING;
        double w = Math.abs(along) - half + ROUNDING;
        double ou = Math.max(u, 0);
        double ow = Math.max(w, 0);
        return Math.sqrt(ou * ou + ow * ow) + Math.min(Math.max(u, w), 0) - ROUNDING;
    }

    @Override
    public Capsule bounds() {
        return new Capsule(centre.plus(axis.times(-half)), centre.plus(axis.times(half)), radius);
    }

    @Override
    public int face(double x, double y, double z) {
        double along = along(x, y, z);
        return Math.abs(along) - half > fromAxis(along, x, y, z) - radius ? 1 : 0;
    }

    /** Axis to the side that counts as angle 0: as near to "up" as the rod allows. */
    private Vec3 zero() {
        Vec3 up = Math.abs(axis.y()) < .9 ? Vec3.Y : Vec3.X;
        return up.without(axis).unit();
    }

    @Override
    public void local(double x, double y, double z, double[] into) {
        Vec3 from = new Vec3(x, y, z).minus(centre);
        into[0] = (along(x, y, z) / half + 1) / 2;
        into[1] = StrictMath.toDegrees(StrictMath.atan2(from.dot(zero().cross(axis)), from.dot(zero())));
    }

    @Override
    public Vec3 surface(double share, double degrees) {
        Vec3 zero = zero();
        return centre.plus(axis.times((2 * share - 1) * half))
                .plus(zero.times(Rotation.cos(degrees) * radius))
                .plus(zero.cross(axis).times(Rotation.sin(degrees) * radius));
    }

    @Override
    public Cylinder mirrored() {
        return new Cylinder(centre.mirrored(), axis.mirrored(), radius, half);
    }
}
