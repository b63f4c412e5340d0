package org.drillsheaf.figure.body;

/** A thin round rod between two points: band, stick, rail, straw. Radius in statures. */
public record Tube(Vec3 from, Vec3 to, double radius) implements PropSolid {

    @Override
    public double distance(double x, double y, double z) {
        double ax = to.x() - from.x();
        double ay = to.y() - from.y();
        double az = to.z() - from.z();
        double px = x - from.x();
        double py = y - from.y();
        double pz = z - from.z();
        double square = Math.max(1e-18, ax * ax + ay * ay + az * az);
        double share = Math.min(1, Math.max(0, (px * ax + py * ay + pz * az) / square));
        double dx = px - ax * share;
        double dy = py - ay * share;
        double dz = pz - az * share;
        return Math.sqrt(dx * dx + dy * dy + dz * dz) - radius;
    }

    @Override
    public Capsule bounds() {
        return new Capsule(from, to, radius);
    }

    @Override
    public int face(double x, double y, double z) {
        return 0;
    }

    private Vec3 axis() {
        return to.minus(from).unit();
    }

    private Vec3 zero() {
        Vec3 up = Math.abs(axis().y()) < .9 ? Vec3.Y : Vec3.X;
        return up.without(axis()).unit();
    }

    @Override
    public void local(double x, double y, double z, double[] into) {
        Vec3 p = new Vec3(x, y, z).minus(from);
        into[0] = p.dot(axis()) / Math.max(1e-9, from.distanceTo(to));
        into[1] = StrictMath.toDegrees(StrictMath.atan2(p.dot(zero().cross(axis())), p.dot(zero())));
    }

    @Override
    public Vec3 surface(double share, double degrees) {
        return from.towards(to, share)
                .plus(zero().times(Rotation.cos(degrees) * radius))
                .plus(zero().cross(axis()).times(Rotation.sin(degrees) * radius));
    }

    @Override
    public Tube mirrored() {
        return new Tube(from.mirrored(), to.mirrored(), radius);
    }
}
