package org.drillsheaf.figure.body;

/** A rotation as three unit axes: where the frame's own x, y and z point in the world. */
public record Rotation(Vec3 axisX, Vec3 axisY, Vec3 axisZ) {
    public static final Rotation NONE = new Rotation(Vec3.X, Vec3.Y, Vec3.Z);

    public static Rotation aboutX(double degrees) {
        double c = cos(degrees);
        double s = sin(degrees);
        return new Rotation(Vec3.X, new Vec3(0, c, s), new Vec3(0, -s, c));
    }

    public static Rotation aboutY(double degrees) {
        double c = cos(degrees);
        double s = sin(degrees);
        return new Rotation(new Vec3(c, 0, -s), Vec3.Y, new Vec3(s, 0, c));
    }

    public static Rotation aboutZ(double degrees) {
        double c = cos(degrees);
        double s = sin(degrees);
        return new Rotation(new Vec3(c, s, 0), new Vec3(-s, c, 0), Vec3.Z);
    }

    /** This rotation followed, in its own frame, by the others in their order. */
    public Rotation then(Rotation... others) {
        Rotation result = this;
        for (Rotation other : others) {
            result = new Rotation(result.apply(other.axisX), result.apply(other.axisY), result.apply(other.axisZ));
        }
        return result;
    }

    /** From frame coordinates to the world. */
    public Vec3 apply(Vec3 local) {
        return apply(local.x(), local.y(), local.z());
    }

    public Vec3 apply(double x, double y, double z) {
        return new Vec3(
                axisX.x() * x + axisY.x() * y + axisZ.x() * z,
                axisX.y() * x + axisY.y() * y + axisZ.y() * z,
                axisX.z() * x + axisY.z() * y + axisZ.z() * z);
    }

    /** From the world to frame coordinates. */
    public Vec3 toLocal(Vec3 world) {
        return new Vec3(axisX.dot(world), axisY.dot(world), axisZ.dot(world));
    }

    /** The rotation of the mirror image (left and right exchanged). */
    public Rotation mirrored() {
        return new Rotation(axisX.mirrored(), axisY.mirrored(), axisZ.mirrored().times(-1));
    }

    static double sin(double degrees) {
        return StrictMath.sin(StrictMath.toRadians(degrees));
    }

    static double cos(double degrees) {
        return StrictMath.cos(StrictMath.toRadians(degrees));
    }
}
