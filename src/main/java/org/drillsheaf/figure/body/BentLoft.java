package org.drillsheaf.figure.body;

import java.util.function.Consumer;

/** A loft that is bent at one place: two lofts that melt into each other there, counted as one from end to end. */
final class BentLoft implements FleshSolid {
    /** Width of the smooth union at the bend, statures. */
    private static final double MELT = .004;

    private final Loft first;
    private final Loft second;
    private final double bend;
    private final Capsule bounds;

    /**
     * @param second begins where {@code first} ends
     * @param bend share of the whole axis at which the bend lies
     */
    BentLoft(Loft first, Loft second, double bend) {
        this.first = first;
        this.second = second;
        this.bend = bend;
        Capsule root = first.bounds();
        Capsule end = second.bounds();
        Vec3 middle = root.from().towards(end.to(), .5);
        double off = middle.distanceTo(root.to());
        bounds = new Capsule(root.from(), end.to(), Math.max(root.radius(), end.radius()) + off);
    }

    @Override
    public double distance(double x, double y, double z) {
        double a = first.distance(x, y, z);
        double b = second.distance(x, y, z);
        double near = Math.max(0, MELT - Math.abs(a - b)) / MELT;
        return Math.min(a, b) - near * near * MELT / 4;
    }

    @Override
    public Capsule bounds() {
        return bounds;
    }

    @Override
    public void local(double x, double y, double z, double[] into) {
        if (first.distance(x, y, z) <= second.distance(x, y, z)) {
            first.local(x, y, z, into);
            into[0] *= bend;
        } else {
            second.local(x, y, z, into);
            into[0] = bend + into[0] * (1 - bend);
        }
    }

    @Override
    public Vec3 surface(double share, double degrees) {
        return share <= bend
                ? first.surface(share / bend, degrees)
                : second.surface((share - bend) / (1 - bend), degrees);
    }

    @Override
    public double lowest(Vec3 direction, double fromShare, double toShare) {
        return Math.min(
                first.lowest(direction, fromShare / bend, toShare / bend),
                second.lowest(direction, (fromShare - bend) / (1 - bend), (toShare - bend) / (1 - bend)));
    }

    @Override
    public void samples(double fromShare, double toShare, Consumer<Vec3> to) {
        first.samples(fromShare / bend, toShare / bend, to);
        second.samples((fromShare - bend) / (1 - bend), (toShare - bend) / (1 - bend), to);
    }
}
