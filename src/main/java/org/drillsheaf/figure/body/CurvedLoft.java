package org.drillsheaf.figure.body;

import java.util.List;
import java.util.function.Consumer;

/** The trunk: sections strung on a bent spine, so that it bends without ripples. */
public final class CurvedLoft implements FleshSolid {
    /** Twelve numbers a slice: centre and the three axes of its frame. */
    private static final int ROW = 12;

    private final double[] slices;
    private final int count;
    private final double length;
    private final SectionProfile profile;
    private final Capsule bounds;

    /**
     * @param centres middles of the slices, evenly spaced along the spine, at least two
     * @param frames their frames: x to the front, y along the spine, z to the right
     */
    CurvedLoft(List<Vec3> centres, List<Rotation> frames, double length, SectionProfile profile) {
        count = centres.size();
        slices = new double[count * ROW];
        for (int i = 0; i < count; i++) {
            put(i * ROW, centres.get(i));
            put(i * ROW + 3, frames.get(i).axisX());
            put(i * ROW + 6, frames.get(i).axisY());
            put(i * ROW + 9, frames.get(i).axisZ());
        }
        this.length = length;
        this.profile = profile;
        Vec3 from = centres.get(0);
        Vec3 to = centres.get(count - 1);
        Capsule chord = new Capsule(from, to, 0);
        double bulge = 0;
        for (Vec3 c : centres) {
            bulge = Math.max(bulge, chord.distance(c.x(), c.y(), c.z()));
        }
        bounds = new Capsule(from, to, bulge + profile.widest);
    }

    private void put(int at, Vec3 v) {
        slices[at] = v.x();
        slices[at + 1] = v.y();
        slices[at + 2] = v.z();
    }

    /** Height of a point above the plane of a slice. */
    private double above(int slice, double x, double y, double z) {
        int o = slice * ROW;
        return (x - slices[o]) * slices[o + 6]
                + (y - slices[o + 1]) * slices[o + 7]
                + (z - slices[o + 2]) * slices[o + 8];
    }

    private int sliceBelow(double x, double y, double z) {
        int low = 0;
        int high = count - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (above(middle, x, y, z) >= 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Offset from the interpolated slice along its axis number 1 (front) or 3 (right). */
    private double across(int i, double w, int axis, double x, double y, double z) {
        int o = i * ROW;
        int n = o + ROW;
        double v = 1 - w;
        int a = o + 3 * axis;
        int b = n + 3 * axis;
        return (x - slices[o] * v - slices[n] * w) * (slices[a] * v + slices[b] * w)
                + (y - slices[o + 1] * v - slices[n + 1] * w) * (slices[a + 1] * v + slices[b + 1] * w)
                + (z - slices[o + 2] * v - slices[n + 2] * w) * (slices[a + 2] * v + slices[b + 2] * w);
    }

    @Override
    public double distance(double x, double y, double z) {
        int i = sliceBelow(x, y, z);
        double a = above(i, x, y, z);
        double b = above(i + 1, x, y, z);
        double w = a < 0 ? 0 : b >= 0 ? 1 : a / (a - b);
        double beyond = a < 0 ? a : b >= 0 ? b : 0;
        return profile.distance((i + w) / (count - 1), across(i, w, 1, x, y, z), beyond, across(i, w, 3, x, y, z));
    }

    @Override
    public Capsule bounds() {
        return bounds;
    }

    @Override
    public void local(double x, double y, double z, double[] into) {
        int i = sliceBelow(x, y, z);
        double a = above(i, x, y, z);
        double b = above(i + 1, x, y, z);
        double w = a < 0 ? 0 : b >= 0 ? 1 : a / (a - b);
        double beyond = a < 0 ? a : b >= 0 ? b : 0;
        into[0] = (i + w) / (count - 1) + beyond / length;
        into[1] = StrictMath.toDegrees(StrictMath.atan2(across(i, w, 3, x, y, z), across(i, w, 1, x, y, z)));
    }

    @Override
    public Vec3 surface(double share, double degrees) {
        double radius = profile.radius(share, degrees);
        return between(share, 0)
                .plus(between(share, 3).times(Rotation.cos(degrees) * radius))
                .plus(between(share, 9).times(Rotation.sin(degrees) * radius));
    }

    @Override
    public double lowest(Vec3 direction, double fromShare, double toShare) {
        double[] lowest = {Double.POSITIVE_INFINITY};
        samples(fromShare, toShare, p -> lowest[0] = Math.min(lowest[0], p.dot(direction)));
        return lowest[0];
    }

    @Override
    public void samples(double fromShare, double toShare, Consumer<Vec3> to) {
        double[] table = profile.samples;
        Vec3 centre = Vec3.ZERO;
        Vec3 along = Vec3.Y;
        Vec3 front = Vec3.X;
        Vec3 right = Vec3.Z;
        double last = Double.NaN;
        for (int i = 0; i < table.length; i += 4) {
            double share = table[i];
            if (share < fromShare || share > toShare) {
                continue;
            }
            if (share != last) {
                centre = between(share, 0);
                front = between(share, 3);
                along = between(share, 6);
                right = between(share, 9);
                last = share;
            }
            to.accept(centre.plus(along.times(table[i + 1]))
                    .plus(front.times(table[i + 2]))
                    .plus(right.times(table[i + 3])));
        }
    }

    private Vec3 between(double share, int column) {
        double at = Math.min(1, Math.max(0, share)) * (count - 1);
        int i = Math.min(count - 2, (int) at);
        return vector(i * ROW + column).towards(vector((i + 1) * ROW + column), at - i);
    }

    private Vec3 vector(int at) {
        return new Vec3(slices[at], slices[at + 1], slices[at + 2]);
    }
}
