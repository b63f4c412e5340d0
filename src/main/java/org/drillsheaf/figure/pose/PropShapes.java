package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillsheaf.figure.body.Ball;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.Cylinder;
import org.drillsheaf.figure.body.PropSolid;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.RoundedBox;
import org.drillsheaf.figure.body.Tube;
import org.drillsheaf.figure.body.Vec3;

/** Turns written props into solids and surfaces. Furniture needs no body; held and propped things do. */
final class PropShapes {
    /** Half-thickness of floor and wall slabs. */
    private static final double SLAB = .009;
    /** Half a door knob or wall hook, 4 cm wide. */
    private static final double KNOB = .012;

    private PropShapes() {}

    static PlacedProp place(Prop prop, Body body) {
        List<PropSolid> solids = new ArrayList<>();
        Map<String, Plane> planes = new LinkedHashMap<>();
        switch (prop.kind()) {
            case FLOOR -> {
                solids.add(slab(prop, 0, 2 * SLAB, .004));
                planes.put(prop.id(), top(0));
            }
            case WALL -> wall(prop, solids, planes);
            case TABLE -> Furniture.table(prop, solids, planes);
            case BED -> Furniture.bed(prop, solids, planes);
            case COUNTER -> Furniture.counter(prop, solids, planes);
            case CHAIR -> Furniture.chair(prop, solids, planes);
            case STOOL -> Furniture.stool(prop, solids, planes);
            case STEP -> {
                solids.add(slab(prop, prop.size("top"), prop.size("top"), .005));
                planes.put(prop.id(), top(prop.size("top")));
            }
            case PAD -> {
                solids.add(slab(prop, prop.size("thick"), prop.size("thick"), .006));
                planes.put(prop.id(), top(prop.size("thick")));
            }
            case BALL -> solids.add(new Ball(middle(prop, body), prop.size("r")));
            case TOWEL -> towel(prop, body, solids, planes);
            case BLOCK, PILLOW, CUSHION, BAG -> soft(prop, body, solids, planes);
            case BAND -> band(prop, body, solids);
            case STICK, RAIL, STRAW -> solids.add(rod(prop, body));
        }
        return new PlacedProp(prop.kind(), prop.id(), solids, planes);
    }

    /** Names of the surfaces that a prop offers. */
    static Set<String> planeNames(Prop prop) {
        return place(prop, BodyWords.MODEL).planes().keySet();
    }

    static Plane top(double height) {
        return new Plane(new Vec3(0, height, 0), Vec3.Y);
    }

    /** A level plate from {@code from} to {@code to} along x whose upper side is at {@code top}. */
    static RoundedBox slab(Prop prop, double top, double thickness, double rounding) {
        double from = prop.size("from");
        double to = prop.size("to");
        return new RoundedBox(
                new Vec3((from + to) / 2, top - thickness / 2, prop.size("z")),
                new Vec3(Math.abs(to - from) / 2, thickness / 2, prop.size("halfwidth")),
                Rotation.NONE,
                rounding);
    }

    private static void wall(Prop prop, List<PropSolid> solids, Map<String, Plane> planes) {
        double middle = (prop.size("height") + prop.size("low")) / 2;
        double half = (prop.size("height") - prop.size("low")) / 2;
        Vec3 facing = prop.facing();
        boolean sideways = Math.abs(facing.z()) > .5;
        Vec3 on = sideways ? new Vec3(0, 0, prop.size("z")) : new Vec3(prop.size("x"), 0, 0);
        planes.put(prop.id(), new Plane(on, facing));
        Vec3 inside = facing.times(-SLAB);
        if (sideways) {
            double from = prop.size("from");
            double to = prop.size("to");
            solids.add(new RoundedBox(
                    new Vec3((from + to) / 2, middle, prop.size("z") + inside.z()),
                    new Vec3((to - from) / 2, half, SLAB),
                    Rotation.NONE,
                    .003));
        } else {
            solids.add(new RoundedBox(
                    new Vec3(prop.size("x") + inside.x(), middle, prop.size("z")),
                    new Vec3(SLAB, half, prop.size("halfwidth")),
                    Rotation.NONE,
                    .003));
        }
    }

    private static Vec3 middle(Prop prop, Body body) {
        if (prop.place() instanceof Prop.Place.At at) {
            return at.point();
        }
        if (prop.place() instanceof Prop.Place.OnBody on) {
            return BodyPoints.middle(body, on.points())
                    .plus(body.skeleton().frame("thigh.R").apply(on.offset()));
        }
        if (prop.place() instanceof Prop.Place.Between between) {
            return end(between.from(), body).towards(end(between.to(), body), .5);
        }
        return Vec3.ZERO;
    }

    private static Vec3 axis(Prop prop) {
        if (prop.place() instanceof Prop.Place.At at) {
            return at.axis();
        }
        return prop.place() instanceof Prop.Place.OnBody on ? on.axis() : Vec3.Z;
    }

    private static void towel(Prop prop, Body body, List<PropSolid> solids, Map<String, Plane> planes) {
        Vec3 middle = middle(prop, body);
        solids.add(new Cylinder(middle, axis(prop), prop.size("r"), prop.size("half")));
        planes.put(prop.id(), top(middle.y() + prop.size("r")));
    }

    /** A box whose own y points along the written axis (up unless written). */
    private static void soft(Prop prop, Body body, List<PropSolid> solids, Map<String, Plane> planes) {
        Vec3 middle = middle(prop, body);
        Vec3 half = new Vec3(prop.size("x"), prop.size("y"), prop.size("z"));
        Vec3 up = axis(prop);
        Vec3 front = (Math.abs(up.x()) < .9 ? Vec3.X : Vec3.Y).without(up).unit();
        Rotation frame = Rotation.aboutZ(prop.size("tilt")).then(new Rotation(front, up, front.cross(up)));
        double least = Math.min(half.x(), Math.min(half.y(), half.z()));
        double rounding = prop.kind() == PropKind.BLOCK ? .006 : .7 * least;
        solids.add(new RoundedBox(middle, half, frame, rounding));
        planes.put(prop.id(), top(middle.y() + half.y()));
    }

    /** A band, with a knob where it is fixed in the room. */
    private static void band(Prop prop, Body body, List<PropSolid> solids) {
        solids.add(rod(prop, body));
        if (prop.place() instanceof Prop.Place.Between between) {
            for (Prop.End end : List.of(between.from(), between.to())) {
                if (end instanceof Prop.End.InRoom room) {
                    solids.add(new Ball(room.point(), KNOB));
                }
            }
        }
    }

    private static Tube rod(Prop prop, Body body) {
        double radius = prop.size("r");
        if (prop.place() instanceof Prop.Place.Between between) {
            Vec3 from = end(between.from(), body);
            Vec3 to = end(between.to(), body);
            Vec3 along = to.minus(from).unit().times(prop.size("overhang"));
            return new Tube(from.minus(along), to.plus(along), radius);
        }
        if (prop.kind() == PropKind.STRAW) {
            Vec3 mouth = body.skeleton().point("mouth");
            Vec3 ahead = body.skeleton().frame("head").apply(.9, -.45, 0);
            return new Tube(mouth, mouth.plus(ahead.times(prop.size("length"))), radius);
        }
        Vec3 middle = middle(prop, body);
        Vec3 half = axis(prop).times(prop.size("half") > 0 ? prop.size("half") : .25);
        return new Tube(middle.minus(half), middle.plus(half), radius);
    }

    private static Vec3 end(Prop.End end, Body body) {
        if (end instanceof Prop.End.InRoom room) {
            return room.point();
        }
        return BodyPoints.of(body, ((Prop.End.OnBody) end).point());
    }
}
