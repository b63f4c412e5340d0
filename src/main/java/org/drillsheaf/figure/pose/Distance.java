package org.drillsheaf.figure.pose;

import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.figure.body.Vec3;

/**
 * A distance that the texts name and that scales with the client's stature.
 *
 * @param name the placeholder in the texts, for example {@code heels-from-wall}
 * @param frame the keyframe it is measured in
 * @param of a point of the body
 * @param from a surface, the middle of a prop, or another point of the body
 * @param along the axis to measure along; empty = straight, or square to the surface
 */
public record Distance(String name, PoseFrame frame, String of, String from, Optional<Unknown.Axis> along, int line) {

    /** The distance in a solved pose, statures; empty when {@code from} is nothing that can be measured from. */
    public Optional<Double> in(SolvedPose pose) {
        Optional<Vec3> point = pose.findPoint(of);
        if (point.isEmpty()) {
            return Optional.empty();
        }
        for (PlacedProp prop : pose.props()) {
            Plane plane = prop.planes().get(from);
            if (plane != null) {
                return Optional.of(Math.abs(plane.height(point.get())));
            }
        }
        if (from.equals("floor")) {
            return Optional.of(Math.abs(point.get().y()));
        }
        for (PlacedProp prop : pose.props()) {
            if (prop.id().equals(from)) {
                var bounds = prop.solids().get(0).bounds();
                return Optional.of(between(point.get(), bounds.from().towards(bounds.to(), .5)));
            }
        }
        return pose.findPoint(from).map(other -> between(point.get(), other));
    }

    private double between(Vec3 a, Vec3 b) {
        Vec3 off = a.minus(b);
        return along.map(axis -> switch (axis) {
                    case X -> Math.abs(off.x());
                    case Y -> Math.abs(off.y());
                    case Z -> Math.abs(off.z());
                })
                .orElse(off.length());
    }

    static Optional<Unknown.Axis> axis(String word) {
        return switch (word.toLowerCase(Locale.ROOT)) {
            case "x" -> Optional.of(Unknown.Axis.X);
            case "y" -> Optional.of(Unknown.Axis.Y);
            case "z" -> Optional.of(Unknown.Axis.Z);
            default -> Optional.empty();
        };
    }
}
