package org.drillsheaf.figure.pose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.Motion;

/**
 * Poses are written for the average body. Where a build with more flesh, or less, would lie deeper in the floor, a prop or
 * itself than is allowed, the body gives way: each such place becomes a one-sided equation beside the contacts, and the
 * joint above the part may turn.
 */
final class FleshRoom {
    /** Making room in one place may take it in another. */
    static final int MOST_ROUNDS = 4;

    /** A contact may be missed by this for the sake of room, statures: 1 cm at 1.75 m. */
    static final double MOST_MISSED = .006;

    static final FleshRoom NOT_NEEDED = new FleshRoom(Map.of());

    /** Depth that is aimed at, as a share of the allowed one. */
    private static final double AIM = .85;
    /** Weight against a contact: a sole 2 mm off the floor is not seen, a shin 10 mm in it is. */
    private static final double WEIGHT = 3;

    /** A part and what it must not lie too deep in. */
    private record Place(String part, String into) {}

    private final Map<Place, Double> allowed;

    private FleshRoom(Map<Place, Double> allowed) {
        this.allowed = allowed;
    }

    /** With the places of these penetrations too. */
    FleshRoom and(List<Penetration> tooDeep) {
        Map<Place, Double> all = new LinkedHashMap<>(allowed);
        tooDeep.forEach(p -> all.put(new Place(p.part(), p.into()), p.allowed()));
        return new FleshRoom(all);
    }

    /** How much room each place lacks, weighted; 0 where there is enough. */
    List<Double> lacking(Body body, Scene scene) {
        if (allowed.isEmpty()) {
            return List.of();
        }
        List<PlacedProp> props = scene.place(body);
        List<Double> lacking = new ArrayList<>();
        allowed.forEach((place, most) -> lacking.add(
                WEIGHT * Math.max(0, Penetrations.depth(body, props, place.part, place.into) - AIM * most)));
        return lacking;
    }

    /** The pose as it was solved, with the joints that may give way among its unknowns. */
    Pose yielding(SolvedPose solved) {
        List<Unknown> unknowns = new ArrayList<>(solved.pose().solve());
        addUnlessKnown(unknowns, new Unknown.Root(Unknown.Axis.Y));
        if (solved.props().stream().anyMatch(this::pushesAside)) {
            addUnlessKnown(unknowns, new Unknown.Root(Unknown.Axis.X));
        }
        for (Place place : allowed.keySet()) {
            joint(place.part).ifPresent(angle -> addUnlessKnown(unknowns, angle));
            joint(place.into).ifPresent(angle -> addUnlessKnown(unknowns, angle));
        }
        return solved.pose().withAngles(solved.skeleton().posture().angles()).withSolve(List.copyOf(unknowns));
    }

    /** From a floor or a seat the body rises; on it, it must not slide away. */
    private boolean pushesAside(PlacedProp prop) {
        boolean upright =
                switch (prop.kind()) {
                    case WALL, CUSHION, PILLOW, BALL, TOWEL -> true;
                    default -> false;
                };
        return upright && allowed.keySet().stream().anyMatch(place -> place.into.equals(prop.id()));
    }

    private static void addUnlessKnown(List<Unknown> unknowns, Unknown more) {
        boolean known = unknowns.stream()
                .anyMatch(u -> u.equals(more)
                        || u instanceof Unknown.Angle angle
                                && more instanceof Unknown.Angle wanted
                                && angle.motion() == wanted.motion()
                                && angle.side().isEmpty());
        if (!known) {
            unknowns.add(more);
        }
    }

    /** The joint by which a part of a limb gets out of the way. */
    private static Optional<Unknown.Angle> joint(String part) {
        if (!part.endsWith(".R") && !part.endsWith(".L")) {
            return Optional.empty();
        }
        Optional<Motion> motion =
                switch (part.substring(0, part.length() - 2)) {
                    case "thigh", "glute" -> Optional.of(Motion.HIP_FLEX);
                    case "shank", "kneecap" -> Optional.of(Motion.KNEE_FLEX);
                    case "foot" -> Optional.of(Motion.HIP_INT);
                    case "upper-arm" -> Optional.of(Motion.SHOULDER_ABD);
                    case "forearm" -> Optional.of(Motion.ELBOW_FLEX);
                    case "palm", "fingers", "thumb" -> Optional.of(Motion.WRIST_FLEX);
                    default -> Optional.empty();
                };
        Side side = part.endsWith(".R") ? Side.RIGHT : Side.LEFT;
        return motion.map(m -> new Unknown.Angle(m, Optional.of(side)));
    }
}
