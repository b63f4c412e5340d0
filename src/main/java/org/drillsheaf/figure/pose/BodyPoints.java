package org.drillsheaf.figure.pose;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.PartNames;
import org.drillsheaf.figure.body.Vec3;

/**
 * Points of a body by name: joints ({@code knee.R}), pairs ({@code knees}: midway), and points of the skin
 * ({@code trunk@0.42,180}: part, share of its axis, degrees around it).
 */
public final class BodyPoints {
    private static final Map<String, String> PAIRS = Map.ofEntries(
            Map.entry("hips", "hip"),
            Map.entry("knees", "knee"),
            Map.entry("ankles", "ankle"),
            Map.entry("heels", "heel"),
            Map.entry("toes", "toe"),
            Map.entry("balls", "ball"),
            Map.entry("shoulders", "shoulder"),
            Map.entry("elbows", "elbow"),
            Map.entry("wrists", "wrist"),
            Map.entry("hands", "palm"),
            Map.entry("palms", "palm"),
            Map.entry("knuckles", "knuckle"),
            Map.entry("tips", "tip"));

    private BodyPoints() {}

    /** The point, or empty when there is none of that name. */
    public static Optional<Vec3> find(Body body, String name) {
        Optional<Vec3> joint = body.skeleton().find(name);
        if (joint.isPresent()) {
            return joint;
        }
        String pair = PAIRS.get(name);
        if (pair != null) {
            return Optional.of(
                    body.skeleton().point(pair + ".R").towards(body.skeleton().point(pair + ".L"), .5));
        }
        int at = name.indexOf('@');
        if (at < 0) {
            return Optional.empty();
        }
        String[] numbers = name.substring(at + 1).split(",", -1);
        if (numbers.length != 2) {
            return Optional.empty();
        }
        try {
            double share = Double.parseDouble(numbers[0].strip());
            double degrees = Double.parseDouble(numbers[1].strip());
            if (!Double.isFinite(share) || !Double.isFinite(degrees)) {
                return Optional.empty();
            }
            return body.part(PartNames.canonical(name.substring(0, at)))
                    .map(part -> part.solid().surface(share, degrees));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** A point that is known to exist: names are checked when a pose is read. */
    static Vec3 of(Body body, String name) {
        return find(body, name).orElseThrow(() -> new IllegalArgumentException("no point " + name));
    }

    /** Middle of several points. */
    static Vec3 middle(Body body, List<String> names) {
        Vec3 sum = Vec3.ZERO;
        for (String name : names) {
            sum = sum.plus(of(body, name));
        }
        return sum.times(1.0 / names.size());
    }
}
