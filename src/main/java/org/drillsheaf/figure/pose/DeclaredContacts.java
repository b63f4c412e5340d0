package org.drillsheaf.figure.pose;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.BodyPart;
import org.drillsheaf.figure.body.PartNames;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/** Which parts of a body and which things touch on purpose. */
final class DeclaredContacts {
    /** A placed point nearer to something than this rests on it, statures. */
    private static final double BESIDE = .025;

    static final String FLOOR = "floor";
    private static final Map<String, List<String>> NEIGHBOURS = Map.of(
            "glute", List.of("thigh"),
            "palm", List.of("thumb", "fingers"),
            "fingers", List.of("thumb", "palm"),
            "shank", List.of("kneecap", "foot"),
            "kneecap", List.of("shank"),
            "foot", List.of("shank"),
            "forearm", List.of("palm", "upper-arm"),
            "upper-arm", List.of("trapezius"),
            "skull", List.of("face", "nose"),
            "trunk", List.of("glute.R", "glute.L"));

    private final SolvedPose pose;
    private final Body body;
    private final Set<String> pairs = new HashSet<>();

    private DeclaredContacts(SolvedPose pose) {
        this.pose = pose;
        this.body = pose.body();
    }

    static DeclaredContacts of(SolvedPose pose) {
        DeclaredContacts contacts = new DeclaredContacts(pose);
        contacts.noteAll();
        return contacts;
    }

    /** Whether a part touches a thing, or another part, on purpose. */
    boolean between(String part, String other) {
        return pairs.contains(part + "|" + other);
    }

    private String side(String name) {
        return pose.isMirrored() ? MirroredNames.of(name) : name;
    }

    private void noteAll() {
        for (SolvedPose.MetContact met : pose.contacts()) {
            if (met.contact() instanceof Contact.Touch touch) {
                for (String part : partsOf(side(touch.region()))) {
                    noteWithNeighbours(part, touch.on());
                    Regions.singles(touch.on()).forEach(r -> partsOf(side(r)).forEach(other -> note(part, other)));
                }
            } else if (met.contact() instanceof Contact.Flat flat) {
                note(side("foot." + Skeleton.letter(flat.side())), flat.plane());
            } else if (met.contact() instanceof Contact.Place place) {
                // the other hand often follows by the same angles without being placed itself
                notePlace(place.point());
                notePlace(MirroredNames.of(place.point()));
            }
        }
        if (pose.pose().root().isLying()) {
            noteLying();
        }
    }

    /** A hand or elbow that is placed beside a thing, or on another part, touches it. */
    private void notePlace(String name) {
        Vec3 point = pose.point(name);
        for (String part : partsNear(name)) {
            for (PlacedProp prop : pose.props()) {
                if (prop.solids().stream().anyMatch(s -> s.distance(point) < BESIDE)) {
                    note(part, prop.id());
                }
            }
            if (point.y() < BESIDE) {
                note(part, FLOOR);
            }
            for (BodyPart other : body.parts()) {
                if (other.solid().distance(point) < BESIDE) {
                    note(part, other.name());
                }
            }
        }
    }

    /** Who lies rests on the ground with every part that reaches it. */
    private void noteLying() {
        Set<String> beds = new HashSet<>(Set.of(FLOOR));
        pose.props().stream()
                .filter(p -> p.kind() == PropKind.BED || p.kind() == PropKind.TABLE)
                .forEach(p -> beds.add(p.id()));
        body.parts().forEach(part -> beds.forEach(bed -> note(part.name(), bed)));
    }

    /** Flesh next to a region in contact rests there too: the thighs beside the seat, the thumb beside the palm. */
    private void noteWithNeighbours(String part, String on) {
        note(part, on);
        int dot = part.lastIndexOf('.');
        String end = dot < 0 ? "" : part.substring(dot);
        for (String neighbour : NEIGHBOURS.getOrDefault(dot < 0 ? part : part.substring(0, dot), List.of())) {
            note(neighbour + end, on);
        }
    }

    private static List<String> partsOf(String region) {
        return Regions.pieces(region).orElse(List.of()).stream()
                .map(Regions.Piece::part)
                .toList();
    }

    /** The parts that a placed point belongs to: a hand for its knuckle, a forearm for its elbow. */
    private static List<String> partsNear(String point) {
        int dot = point.lastIndexOf('.');
        if (point.contains("@")) {
            return List.of(PartNames.canonical(point.substring(0, point.indexOf('@'))));
        }
        String end = dot < 0 ? "" : point.substring(dot);
        return switch (dot < 0 ? point : point.substring(0, dot)) {
            case "knuckle", "tip", "palm", "wrist" ->
                List.of("palm" + end, "fingers" + end, "thumb" + end, "forearm" + end);
            case "elbow" -> List.of("forearm" + end, "upper-arm" + end);
            case "knee" -> List.of("shank" + end, "kneecap" + end, "thigh" + end);
            case "ankle", "heel", "toe", "ball" -> List.of("foot" + end, "shank" + end);
            case "head", "forehead", "mouth" -> List.of("skull", "face");
            default -> List.of();
        };
    }

    private void note(String a, String b) {
        pairs.add(a + "|" + b);
        pairs.add(b + "|" + a);
    }
}
