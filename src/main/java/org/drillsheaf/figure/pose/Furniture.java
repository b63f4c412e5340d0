package org.drillsheaf.figure.pose;

import java.util.List;
import java.util.Map;
import org.drillsheaf.figure.body.PropSolid;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.RoundedBox;
import org.drillsheaf.figure.body.Vec3;

/** The solids and surfaces of tables, beds, counters, chairs and stools. */
final class Furniture {
    private Furniture() {}

    static void table(Prop prop, List<PropSolid> solids, Map<String, Plane> planes) {
        double top = prop.size("top");
        solids.add(PropShapes.slab(prop, top, .040, .006));
        planes.put(prop.id(), PropShapes.top(top));
        if (prop.size("legs") > 0) {
            double half = (top - .04) / 2;
            for (double x : new double[] {prop.size("from") + .06, prop.size("to") - .10}) {
                for (int side = -1; side <= 1; side += 2) {
                    double z = prop.size("z") + side * (prop.size("halfwidth") - .04);
                    solids.add(box(x, half, z, .014, half, .014, .003));
                }
            }
        }
    }

    static void bed(Prop prop, List<PropSolid> solids, Map<String, Plane> planes) {
        double top = prop.size("top");
        double mattress = Math.min(.11, top * .5);
        solids.add(PropShapes.slab(prop, top, mattress, .018));
        double base = top - mattress;
        double middle = (prop.size("from") + prop.size("to")) / 2;
        double half = Math.abs(prop.size("to") - prop.size("from")) / 2;
        solids.add(box(middle, base - .03, prop.size("z"), half - .006, .03, prop.size("halfwidth") - .006, .004));
        double leg = (base - .06) / 2;
        for (int end = -1; end <= 1; end += 2) {
            for (int side = -1; side <= 1; side += 2) {
                solids.add(box(
                        middle + end * (half - .04),
                        leg,
                        prop.size("z") + side * (prop.size("halfwidth") - .04),
                        .016,
                        leg,
                        .016,
                        .003));
            }
        }
        planes.put(prop.id(), PropShapes.top(top));
    }

    static void counter(Prop prop, List<PropSolid> solids, Map<String, Plane> planes) {
        double top = prop.size("top");
        solids.add(PropShapes.slab(prop, top, .024, .004));
        double from = prop.size("from") + .02;
        double to = prop.size("to");
        double half = (top - .024) / 2;
        solids.add(
                box((from + to) / 2, half, prop.size("z"), (to - from) / 2, half, prop.size("halfwidth") - .01, .003));
        planes.put(prop.id(), PropShapes.top(top));
        planes.put(prop.id() + "-edge", new Plane(new Vec3(prop.size("from"), 0, 0), Vec3.X.times(-1)));
    }

    /** A chair that faces +x or −x. Surfaces: {@code seat}, also by the chair's own name, and {@code <id>-back}. */
    static void chair(Prop prop, List<PropSolid> solids, Map<String, Plane> planes) {
        double seat = prop.size("seat");
        double depth = prop.size("depth");
        double width = prop.size("width");
        double x = prop.size("x");
        double z = prop.size("z");
        double ahead = prop.facing().x() < 0 ? -1 : 1;
        double back = prop.size("back");
        solids.add(box(x, seat - .013, z, depth / 2, .013, width, .006));
        for (int end = -1; end <= 1; end += 2) {
            double height = end < 0 ? back : seat - .02;
            double at = x + ahead * (end * (depth / 2 - .012) - (end < 0 ? .008 : 0));
            for (int side = -1; side <= 1; side += 2) {
                solids.add(box(at, height / 2, z + side * (width - .012), .0095, height / 2, .0095, .004));
            }
        }
        double rail = x - ahead * (depth / 2 - .004);
        solids.add(box(rail, back - .035, z, .0085, .032, width - .012, .005));
        solids.add(box(rail, back - .125, z, .0075, .018, width - .012, .005));
        planes.put(prop.id().equals("chair") ? "seat" : prop.id() + "-seat", PropShapes.top(seat));
        planes.put(prop.id(), PropShapes.top(seat));
        planes.put(prop.id() + "-back", new Plane(new Vec3(rail + ahead * .0085, 0, 0), Vec3.X.times(ahead)));
        planes.put(prop.id() + "-top", PropShapes.top(back));
    }

    static void stool(Prop prop, List<PropSolid> solids, Map<String, Plane> planes) {
        double top = prop.size("top");
        double halfDepth = prop.size("depth") / 2;
        double width = prop.size("width");
        solids.add(box(prop.size("x"), top - .013, prop.size("z"), halfDepth, .013, width, .006));
        double leg = (top - .026) / 2;
        for (int end = -1; end <= 1; end += 2) {
            for (int side = -1; side <= 1; side += 2) {
                solids.add(box(
                        prop.size("x") + end * (halfDepth - .014),
                        leg,
                        prop.size("z") + side * (width - .014),
                        .011,
                        leg,
                        .011,
                        .003));
            }
        }
        planes.put(prop.id(), PropShapes.top(top));
    }

    private static RoundedBox box(double x, double y, double z, double hx, double hy, double hz, double rounding) {
        return new RoundedBox(new Vec3(x, y, z), new Vec3(hx, hy, hz), Rotation.NONE, rounding);
    }
}
