package org.drillsheaf.figure.body;

import java.util.function.Consumer;

/** An egg shape with its own axes. */
public final class Ellipsoid implements FleshSolid {
    private final Vec3 centre;
    private final Rotation frame;
    private final Vec3 radii;
    private final double side;
    private final double[] axes = new double[9];

    /**
     * @param radii half-lengths along the frame's axes, statures
     * @param side 1 for a right or middle part, −1 for a left one: the sign of "outside"
     */
    Ellipsoid(Vec3 centre, Rotation frame, Vec3 radii, double side) {
        this.centre = centre;
        this.frame = frame;
        this.radii = radii;
        this.side = side;
        Vec3[] columns = {frame.axisX(), frame.axisY(), frame.axisZ()};
        for (int i = 0; i < 3; i++) {
            axes[3 * i] = columns[i].x();
            axes[3 * i + 1] = columns[i].y();
            axes[3 * i + 2] = columns[i].z();
        }
    }

    private double along(int axis, double x, double y, double z) {
        return (x - centre.x()) * axes[3 * axis]
                + (y - centre.y()) * axes[3 * axis + 1]
                + (z - centre.z()) * axes[3 * axis + 2];
    }

    @Override
    public double distance(double x, double y, double z) {
        double u = along(0, x, y, z) / radii.x();
        double v = along(1, x, y, z) / radii.y();
        double w = along(2, x, y, z) / radii.z();
        double k0 = Math.sqrt(u * u + v * v + w * w);
        double a = u / radii.x();
        double b = v / radii.y();
        double c = w / radii.z();
        double k1 = Math.sqrt(a * a + b * b + c * c);
        return k1 < 1e-9 ? -Math.min(radii.x(), Math.min(radii.y(), radii.z())) : k0 * (k0 - 1) / k1;
    }

    @Override
    public Capsule bounds() {
        return new Capsule(centre, centre, Math.max(radii.x(), Math.max(radii.y(), radii.z())));
    }

    /** The axis runs from the lowest point (0) to the highest (1) along the frame's own y. */
    @Override
    public void local(double x, double y, double z, double[] into) {
        into[0] = (along(1, x, y, z) / radii.y() + 1) / 2;
        into[1] = StrictMath.toDegrees(StrictMath.atan2(side * along(2, x, y, z), along(0, x, y, z)));
    }

    @Override
    public Vec3 surface(double share, double degrees) {
        double height = 2 * Math.min(1, Math.max(0, share)) - 1;
        double width = Math.sqrt(Math.max(0, 1 - height * height));
        double cos = Rotation.cos(degrees);
        double sin = Rotation.sin(degrees);
        double u = cos / radii.x();
        double v = sin / radii.z();
        double radius = width / Math.sqrt(u * u + v * v);
        return centre.plus(frame.apply(cos * radius, height * radii.y(), side * sin * radius));
    }

    /** Exact; the shares do not matter. */
    @Override
    public double lowest(Vec3 direction, double fromShare, double toShare) {
        Vec3 local = frame.toLocal(direction);
        double a = local.x() * radii.x();
        double b = local.y() * radii.y();
        double c = local.z() * radii.z();
        return direction.dot(centre) - Math.sqrt(a * a + b * b + c * c);
    }

    @Override
    public void samples(double fromShare, double toShare, Consumer<Vec3> to) {
        for (int ring = 0; ring <= 12; ring++) {
            double share = (1 - Rotation.cos(ring * 15.0)) / 2;
            if (share >= fromShare && share <= toShare) {
                for (int degrees = 0; degrees < 360; degrees += 15) {
                    to.accept(surface(share, degrees));
                }
            }
        }
    }
}
