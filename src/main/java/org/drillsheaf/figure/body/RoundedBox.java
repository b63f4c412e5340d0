package org.drillsheaf.figure.body;

/**
 * A box with rounded edges: walls, tables, blocks, cushions.
 *
 * @param half half-lengths along the frame's axes, statures
 * @param rounding radius of the edges, less than the shortest half-length
 */
public record RoundedBox(Vec3 centre, Vec3 half, Rotation frame, double rounding) implements PropSolid {

    private double along(Vec3 axis, double x, double y, double z) {
        return (x - centre.x()) * axis.x() + (y - centre.y()) * axis.y() + (z - centre.z()) * axis.z();
    }

    @Override
    public double distance(double x, double y, double z) {
        double a = Math.abs(along(frame.axisX(), x, y, z)) - half.x() + rounding;
        double b = Math.abs(along(frame.axisY(), x, y, z)) - half.y() + rounding;
        double c = Math.abs(along(frame.axisZ(), x, y, z)) - half.z() + rounding;
        double oa = Math.max(a, 0);
        double ob = Math.max(b, 0);
        double oc = Math.max(c, 0);
        return Math.sqrt(oa * oa + ob * ob + oc * oc) + Math.min(Math.max(a, Math.max(b, c)), 0) - rounding;
    }

    @Override
    public Capsule bounds() {
        return new Capsule(centre, centre, half.length());
    }

    @Override
    public int face(double x, double y, double z) {
        double a = along(frame.axisX(), x, y, z);
        double b = along(frame.axisY(), x, y, z);
        double c = along(frame.axisZ(), x, y, z);
        double da = Math.abs(a) - half.x();
        double db = Math.abs(b) - half.y();
        double dc = Math.abs(c) - half.z();
        if (da >= db && da >= dc) {
            return a > 0 ? 1 : 0;
        }
        return db >= dc ? (b > 0 ? 3 : 2) : (c > 0 ? 5 : 4);
    }

    /** Direction away from a face, by the number that {@link #face} gives. */
    public Vec3 normal(int face) {
        Vec3 axis = face < 2 ? frame.axisX() : face < 4 ? frame.axisY() : frame.axisZ();
        return axis.times(face % 2 == 0 ? -1 : 1);
    }

    @Override
    public void local(double x, double y, double z, double[] into) {
        into[0] = (along(frame.axisY(), x, y, z) / half.y() + 1) / 2;
        into[1] = StrictMath.toDegrees(StrictMath.atan2(along(frame.axisZ(), x, y, z), along(frame.axisX(), x, y, z)));
    }

    /** Share 0 is the bottom and 1 the top; the angle goes around: 0 = own +x, 90 = own +z. */
    @Override
    public Vec3 surface(double share, double degrees) {
        double cos = Rotation.cos(degrees);
        double sin = Rotation.sin(degrees);
        double reach = Math.min(
                Math.abs(cos) < 1e-9 ? 1e9 : half.x() / Math.abs(cos),
                Math.abs(sin) < 1e-9 ? 1e9 : half.z() / Math.abs(sin));
        return centre.plus(frame.apply(cos * reach, (2 * share - 1) * half.y(), sin * reach));
    }

    @Override
    public RoundedBox mirrored() {
        return new RoundedBox(centre.mirrored(), half, frame.mirrored(), rounding);
    }
}
