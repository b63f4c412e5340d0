package org.drillsheaf.figure.pose;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Skeleton;

/**
 * What each region of a solved body rests on, leans against or holds: by declared contact, or because it lies within
 * 1.5 cm (at 1.75 m) of a prop or the floor.
 */
public final class Touches {
    /** Nearer than this counts as touching, statures; the place of a hand is often written for its knuckle. */
    private static final double NEAR = .0085;

    private static final List<String> WATCHED = List.of(
            "hand.R", "hand.L", "forearm.R", "forearm.L", "foot.R", "foot.L", "knee.R", "knee.L", "trunk", "seat");

    private final Map<String, Set<PropKind>> kinds = new LinkedHashMap<>();

    private Touches() {}

    public static Touches of(SolvedPose pose) {
        Touches touches = new Touches();
        for (String region : WATCHED) {
            Set<PropKind> near = EnumSet.noneOf(PropKind.class);
            for (PlacedProp prop : pose.props()) {
                if (isNear(pose, region, prop)) {
                    near.add(prop.kind());
                }
            }
            Plane floor = PropShapes.top(0);
            Scene.eachSample(pose.body(), region, p -> {
                if (floor.height(p) < NEAR) {
                    near.add(PropKind.FLOOR);
                }
            });
            touches.kinds.put(region, near);
        }
        declared(pose, touches);
        return touches;
    }

    private static boolean isNear(SolvedPose pose, String region, PlacedProp prop) {
        boolean[] near = {false};
        Scene.eachSample(pose.body(), region, p -> {
            if (!near[0]) {
                near[0] = prop.solids().stream().anyMatch(s -> s.distance(p) < NEAR);
            }
        });
        return near[0];
    }

    private static void declared(SolvedPose pose, Touches touches) {
        for (SolvedPose.MetContact met : pose.contacts()) {
            if (met.contact() instanceof Contact.Touch touch) {
                String region = pose.isMirrored() ? MirroredNames.of(touch.region()) : touch.region();
                kindOf(pose, touch.on()).ifPresent(kind -> touches.add(watched(region), kind));
            } else if (met.contact() instanceof Contact.Flat flat) {
                Side side = pose.isMirrored() ? flat.side().opposite() : flat.side();
                kindOf(pose, flat.plane()).ifPresent(kind -> touches.add("foot." + Skeleton.letter(side), kind));
            }
        }
    }

    private static Optional<PropKind> kindOf(SolvedPose pose, String surface) {
        for (PlacedProp prop : pose.props()) {
            if (prop.id().equals(surface) || prop.planes().containsKey(surface)) {
                return Optional.of(prop.kind());
            }
        }
        return surface.equals("floor") ? Optional.of(PropKind.FLOOR) : Optional.empty();
    }

    /** The watched region that a finer one belongs to. */
    private static String watched(String region) {
        int dot = region.lastIndexOf('.');
        String stem = dot < 0 ? region : region.substring(0, dot);
        String end = dot < 0 ? "" : region.substring(dot);
        return switch (stem) {
            case "palm", "fingers", "thumb", "hand" -> "hand" + end;
            case "forearm", "elbow" -> "forearm" + end;
            case "foot", "heel", "toe" -> "foot" + end;
            case "knee", "kneecap", "shin", "shank" -> "knee" + end;
            case "low-back", "upper-back", "sacrum", "back", "belly", "chest", "ribs", "pelvis", "trunk" -> "trunk";
            case "seat", "glute", "hip" -> "seat";
            default -> region;
        };
    }

    private void add(String region, PropKind kind) {
        kinds.computeIfAbsent(region, r -> EnumSet.noneOf(PropKind.class)).add(kind);
    }

    /** The kinds of things that a region touches: hand.R, forearm.R, foot.R, knee.R (and left), trunk, seat. */
    public Set<PropKind> of(String region) {
        return kinds.getOrDefault(region, Set.of());
    }

    boolean any(String region, Set<PropKind> wanted) {
        return of(region).stream().anyMatch(wanted::contains);
    }

    boolean any(String stem, Side side, Set<PropKind> wanted) {
        return any(stem + "." + Skeleton.letter(side), wanted);
    }
}
