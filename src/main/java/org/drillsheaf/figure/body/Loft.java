package org.drillsheaf.figure.body;

import java.util.function.Consumer;

/** A limb: sections strung on a straight axis. */
public final class Loft implements FleshSolid {
    private final Vec3 origin;
    private final Rotation frame;
    private final double length;
    private final SectionProfile profile;
    private final double ox;
    private final double oy;
    private final double oz;
    private final double xx;
    private final double xy;
    private final double xz;
    private final double yx;
    private final double yy;
    private final double yz;
    private final double zx;
    private final double zy;
    private final double zz;

    /**
     * @param origin start of the axis
     * @param front unit vector to the front of the section; {@code along} the axis; {@code outside} to its outer side
     * @param length length of the axis, statures
     */
    Loft(Vec3 origin, Vec3 front, Vec3 along, Vec3 outside, double length, SectionProfile profile) {
        this.origin = origin;
        this.frame = new Rotation(front, along, outside);
        this.length = length;
        this.profile = profile;
        ox = origin.x();
        oy = origin.y();
        oz = origin.z();
        xx = front.x();
        xy = front.y();
        xz = front.z();
        yx = along.x();
        yy = along.y();
        yz = along.z();
        zx = outside.x();
        zy = outside.y();
        zz = outside.z();
    }

    @Override
    public double distance(double x, double y, double z) {
        double px = x - ox;
        double py = y - oy;
        double pz = z - oz;
        double along = px * yx + py * yy + pz * yz;
        double beyond = along < 0 ? along : along > length ? along - length : 0;
        return profile.distance(along / length, px * xx + py * xy + pz * xz, beyond, px * zx + py * zy + pz * zz);
    }

    @Override
    public Capsule bounds() {
        return new Capsule(origin, axis(1), profile.widest);
    }

    @Override
    public void local(double x, double y, double z, double[] into) {
        double px = x - ox;
        double py = y - oy;
        double pz = z - oz;
        into[0] = (px * yx + py * yy + pz * yz) / length;
        into[1] = StrictMath.toDegrees(StrictMath.atan2(px * zx + py * zy + pz * zz, px * xx + py * xy + pz * xz));
    }

    @Override
    public Vec3 surface(double share, double degrees) {
        double radius = profile.radius(share, degrees);
        return axis(share)
                .plus(frame.axisX().times(Rotation.cos(degrees) * radius))
                .plus(frame.axisZ().times(Rotation.sin(degrees) * radius));
    }

    @Override
    public double lowest(Vec3 direction, double fromShare, double toShare) {
        double dx = direction.dot(frame.axisX());
        double dy = direction.dot(frame.axisY());
        double dz = direction.dot(frame.axisZ());
        double[] table = profile.samples;
        double lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < table.length; i += 4) {
            if (table[i] >= fromShare && table[i] <= toShare) {
                double reach = dy * (table[i] * length + table[i + 1]) + dx * table[i + 2] + dz * table[i + 3];
                lowest = Math.min(lowest, reach);
            }
        }
        return lowest + direction.dot(origin);
    }

    @Override
    public void samples(double fromShare, double toShare, Consumer<Vec3> to) {
        double[] table = profile.samples;
        for (int i = 0; i < table.length; i += 4) {
            if (table[i] >= fromShare && table[i] <= toShare) {
                to.accept(origin.plus(frame.apply(table[i + 2], table[i] * length + table[i + 1], table[i + 3])));
            }
        }
    }

    /** A point of the axis. */
    Vec3 axis(double share) {
        return origin.plus(frame.axisY().times(share * length));
    }
}
