package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Blend;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyGroup;
import org.drillsheaf.figure.body.BodyPart;
import org.drillsheaf.figure.body.Capsule;
import org.drillsheaf.figure.body.PropSolid;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/** Finds where a solved body lies inside the floor, a wall, a prop or itself, by samples of its surface. */
public final class Penetrations {
    /** Shallower than this is not worth a word, statures. */
    private static final double WORTH = .0005;
    /** Below the top of a plate this is under it, not in it; statures: 7 cm at 1.75 m. */
    private static final double PLATE = .04;
    /** Just under the top of a plate. */
    private static final double RIM = .006;
    /** Parts of one limb that can meet when it folds. */
    private static final Set<String> FOLDS_IN_LIMB = Set.of(
            pair("thigh", "shank"), pair("upper-arm", "palm"), pair("upper-arm", "fingers"), pair("glute", "foot"));
    /** Flesh that may press on flesh. */
    private static final Set<String> FOLDS = Set.of(
            pair("thigh", "shank"),
            pair("thigh", "trunk"),
            pair("glute", "foot"),
            pair("glute", "shank"),
            pair("upper-arm", "trunk"),
            pair("forearm", "trunk"),
            pair("thigh", "thigh"),
            pair("glute", "thigh"));

    private final SolvedPose pose;
    private final Body body;
    private final DeclaredContacts declared;
    private final List<Penetration> found = new ArrayList<>();

    private Penetrations(SolvedPose pose) {
        this.pose = pose;
        this.body = pose.body();
        this.declared = DeclaredContacts.of(pose);
    }

    /** All penetrations, deep or shallow, in the order of the parts. */
    public static List<Penetration> of(SolvedPose pose) {
        Penetrations search = new Penetrations(pose);
        for (BodyPart part : search.body.parts()) {
            search.intoScene(part);
            search.intoBody(part);
        }
        return List.copyOf(search.found);
    }

    /** Those that are too deep for a picture. */
    public static List<Penetration> tooDeep(SolvedPose pose) {
        return of(pose).stream().filter(Penetration::isTooDeep).toList();
    }

    /** How deep a part of a body lies in the floor, in a prop or in another part, by name; statures. */
    static double depth(Body body, List<PlacedProp> props, String part, String into) {
        BodyPart sunk = body.part(part).orElseThrow();
        if (into.equals(DeclaredContacts.FLOOR)) {
            return intoFloor(sunk);
        }
        for (PlacedProp prop : props) {
            if (prop.id().equals(into)) {
                return intoProp(sunk, prop);
            }
        }
        return between(body, sunk, body.part(into).orElseThrow());
    }

    /** The sides whose arm lies too deep in the trunk. */
    static Set<Side> armsInTrunk(SolvedPose pose) {
        Body body = pose.body();
        BodyPart trunk = body.part("trunk").orElseThrow();
        Penetrations search = new Penetrations(pose);
        Set<Side> crowded = EnumSet.noneOf(Side.class);
        for (Side side : Side.values()) {
            for (String part : List.of("upper-arm.", "forearm.")) {
                search.intoOther(body.part(part + Skeleton.letter(side)).orElseThrow(), trunk);
            }
            if (search.found.stream().anyMatch(Penetration::isTooDeep)) {
                crowded.add(side);
            }
            search.found.clear();
        }
        return crowded;
    }

    private void add(BodyPart part, String into, double depth, boolean contact) {
        if (depth > WORTH) {
            found.add(new Penetration(part.name(), into, depth, contact));
        }
    }

    private void intoScene(BodyPart part) {
        add(part, DeclaredContacts.FLOOR, intoFloor(part), declared.between(part.name(), DeclaredContacts.FLOOR));
        for (PlacedProp prop : pose.props()) {
            if (prop.kind() == PropKind.FLOOR || isHeld(prop)) {
                continue;
            }
            boolean contact = isSoft(prop)
                    || declared.between(part.name(), prop.id())
                    || prop.planes().keySet().stream().anyMatch(name -> declared.between(part.name(), name));
            add(part, prop.id(), intoProp(part, prop), contact);
        }
    }

    private static double intoFloor(BodyPart part) {
        return -part.solid().lowest(Vec3.Y, 0, 1);
    }

    private static double intoProp(BodyPart part, PlacedProp prop) {
        return switch (prop.kind()) {
            case WALL -> intoWall(part, prop);
            case CHAIR, STOOL, TABLE -> Math.max(intoSolids(part, prop.solids()), intoPlate(part, prop));
            default -> intoSolids(part, prop.solids());
        };
    }

    /** A seat is thin too; who sinks through more than half of it is still inside. */
    private static double intoPlate(BodyPart part, PlacedProp prop) {
        double top = prop.planes().values().iterator().next().point().y();
        PropSolid plate = prop.solids().get(0);
        double[] depth = {0};
        part.solid().samples(0, 1, p -> {
            double below = top - p.y();
            if (below > depth[0] && below < PLATE && plate.distance(new Vec3(p.x(), top - RIM, p.z())) < 0) {
                depth[0] = below;
            }
        });
        return depth[0];
    }

    /** A wall is a thin slab in the picture but thick in truth. */
    private static double intoWall(BodyPart part, PlacedProp prop) {
        Plane plane = prop.planes().values().iterator().next();
        return plane.point().dot(plane.normal()) - part.solid().lowest(plane.normal(), 0, 1);
    }

    private static double intoSolids(BodyPart part, List<PropSolid> solids) {
        double[] depth = {0};
        for (PropSolid solid : solids) {
            part.solid().samples(0, 1, p -> depth[0] = Math.max(depth[0], -solid.distance(p)));
        }
        return depth[0];
    }

    private static boolean isHeld(PlacedProp prop) {
        return switch (prop.kind()) {
            case BAND, STICK, STRAW, BAG, RAIL -> true;
            default -> false;
        };
    }

    private static boolean isSoft(PlacedProp prop) {
        return switch (prop.kind()) {
            case PILLOW, CUSHION, BALL, TOWEL, PAD -> true;
            default -> false;
        };
    }

    /** Each pair once: the deeper of "samples of one in the other" and the reverse. */
    private void intoBody(BodyPart part) {
        int from = body.indexOf(part.name()) + 1;
        for (BodyPart other : body.parts().subList(from, body.parts().size())) {
            intoOther(part, other);
        }
    }

    private void intoOther(BodyPart part, BodyPart other) {
        if (mayOverlap(part, other) || areApart(part, other)) {
            return;
        }
        double depth = between(body, part, other);
        add(part, other.name(), depth, declared.between(part.name(), other.name()) || isFold(part, other));
    }

    private static double between(Body body, BodyPart part, BodyPart other) {
        List<Blend> joints = joints(body, part, other);
        return Math.max(depth(part, other, joints), depth(other, part, joints));
    }

    /** Deepest sample of one part inside another, away from the joints where they melt together. */
    private static double depth(BodyPart part, BodyPart other, List<Blend> joints) {
        double[] depth = {0};
        part.solid().samples(0, 1, p -> {
            double inside = -other.solid().distance(p);
            if (inside > depth[0] && joints.stream().noneMatch(b -> b.strengthAt(p.x(), p.y(), p.z()) > 0)) {
                depth[0] = inside;
            }
        });
        return depth[0];
    }

    /** Neighbours that always share room: trunk and head pieces, the pieces of a hand, of a foot, of a buttock. */
    private boolean mayOverlap(BodyPart a, BodyPart b) {
        if (a == b || a.group() == BodyGroup.TRUNK && b.group() == BodyGroup.TRUNK) {
            return true;
        }
        String first = stem(a);
        String second = stem(b);
        if (a.group() == b.group()) {
            return !FOLDS_IN_LIMB.contains(pair(first, second));
        }
        boolean hip = isHip(first) && (second.equals("trunk") || isHip(second));
        boolean otherHip = isHip(second) && first.equals("trunk");
        return hip && !first.equals("thigh") || otherHip && !second.equals("thigh") || isGirdle(a, b) || isGirdle(b, a);
    }

    private static boolean isHip(String stem) {
        return stem.equals("glute") || stem.equals("thigh");
    }

    private static boolean isGirdle(BodyPart a, BodyPart b) {
        return stem(a).equals("trapezius") && stem(b).equals("upper-arm");
    }

    private static String stem(BodyPart part) {
        int dot = part.name().lastIndexOf('.');
        return dot < 0 ? part.name() : part.name().substring(0, dot);
    }

    /** Flesh that presses on flesh where a joint bends far. */
    private static boolean isFold(BodyPart a, BodyPart b) {
        return FOLDS.contains(pair(stem(a), stem(b)));
    }

    private static String pair(String a, String b) {
        return a.compareTo(b) < 0 ? a + "|" + b : b + "|" + a;
    }

    /** Whether two parts are so far apart that no sample need be asked. */
    private static boolean areApart(BodyPart a, BodyPart b) {
        Capsule first = a.solid().bounds();
        Vec3 middle = first.from().towards(first.to(), .5);
        double reach = first.from().distanceTo(middle) + first.radius();
        return b.solid().bounds().distance(middle.x(), middle.y(), middle.z()) > reach;
    }

    private static List<Blend> joints(Body body, BodyPart a, BodyPart b) {
        int first = body.indexOf(a.name());
        int second = body.indexOf(b.name());
        return body.blends().stream()
                .filter(j -> j.first() == first && j.second() == second || j.first() == second && j.second() == first)
                .toList();
    }
}
