package org.drillsheaf.figure.body;

/** A sphere; radius in statures. */
public record Ball(Vec3 centre, double radius) implements PropSolid {

    @Override
    public double distance(double x, double y, double z) {
        double dx = x - centre.x();
        double dy = y - centre.y();
        double dz = z - centre.z();
        return Math.sqrt(dx * dx + dy * dy + dz * dz) - radius;
    }

    @Override
    public Capsule bounds() {
        return new Capsule(centre, centre, radius);
    }

    @Override
    public int face(double x, double y, double z) {
        return 0;
    }

    @Override
    public void local(double x, double y, double z, double[] into) {
        into[0] = ((y - centre.y()) / radius + 1) / 2;
        into[1] = StrictMath.toDegrees(StrictMath.atan2(z - centre.z(), x - centre.x()));
    }

    @Override
    public Vec3 surface(double share, double degrees) {
        double height = 2 * Math.min(1, Math.max(0, share)) - 1;
        double width = Math.sqrt(Math.max(0, 1 - height * height)) * radius;
        return centre.plus(new Vec3(Rotation.cos(degrees) * width, height * radius, Rotation.sin(degrees) * width));
    }

    @Override
    public Ball mirrored() {
        return new Ball(centre.mirrored(), radius);
    }
}
