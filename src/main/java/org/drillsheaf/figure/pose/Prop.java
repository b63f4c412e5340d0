package org.drillsheaf.figure.pose;

import java.util.List;
import java.util.Map;
import org.drillsheaf.figure.body.Vec3;

/**
 * A thing in the scene as the author wrote it.
 *
 * @param id name by which contacts mean it; its kind unless the author gave another
 * @param sizes the written sizes over the kind's own, statures
 * @param facing unit vector of the side it turns to the body: walls and chairs
 * @param line where it is written
 */
public record Prop(PropKind kind, String id, Map<String, Double> sizes, Vec3 facing, Place place, int line) {

    /** Where it is. */
    public sealed interface Place {
        /** Its own sizes say it (furniture). */
        record InRoom() implements Place {}

        /** Its middle is at a point of the room. */
        record At(Vec3 point, Vec3 axis) implements Place {}

        /** Its middle is at a body point (or midway between several), moved in the frame of the right thigh. */
        record OnBody(List<String> points, Vec3 offset, Vec3 axis) implements Place {}

        /** It runs from one end to the other. */
        record Between(End from, End to) implements Place {}
    }

    /** An end of a band, stick or rail. */
    public sealed interface End {
        record InRoom(Vec3 point) implements End {}

        record OnBody(String point) implements End {}
    }

    /** A size in statures. */
    public double size(String name) {
        Double written = sizes.get(name);
        Double own = kind.sizes().get(name);
        return written != null ? written : own != null ? own : 0;
    }

    boolean has(String name) {
        return sizes.containsKey(name);
    }

    /** Whether it moves with the body. */
    boolean isAttached() {
        return place instanceof Place.OnBody
                || place instanceof Place.Between between
                        && (between.from() instanceof End.OnBody || between.to() instanceof End.OnBody);
    }
}
