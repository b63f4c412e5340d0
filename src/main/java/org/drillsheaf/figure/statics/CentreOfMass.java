package org.drillsheaf.figure.statics;

import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;

/**
 * The centre of mass of a placed body. Limbs: published fractions between their joint centres. Trunk parts: placed on the
 * spine links so that the neutral standing figure has its centre at .565 H (our own placement; the published fractions
 * need landmarks that the drawn spine does not have).
 */
public final class CentreOfMass {
    /** Shares of the thorax on its three links, from below. */
    private static final double[] THORAX_LINKS = {.30, .38, .32};

    private CentreOfMass() {}

    /** In the coordinates of the pose, statures. */
    public static Vec3 of(Skeleton body) {
        Vec3 sum = Vec3.ZERO;
        double mass = 0;
        for (PointMass part : parts(body)) {
            sum = sum.plus(part.at().times(part.mass()));
            mass += part.mass();
        }
        return sum.times(1 / mass);
    }

    static List<PointMass> parts(Skeleton body) {
        List<PointMass> parts = new ArrayList<>();
        for (Side side : Side.values()) {
            parts.add(between(SegmentMass.THIGH, body.point("hip", side), body.point("knee", side)));
            parts.add(between(SegmentMass.SHANK, body.point("knee", side), body.point("ankle", side)));
            parts.add(between(SegmentMass.FOOT, body.point("heel", side), body.point("toe", side)));
            parts.add(between(SegmentMass.UPPER_ARM, body.point("shoulder", side), body.point("elbow", side)));
            parts.add(between(SegmentMass.FOREARM, body.point("elbow", side), body.point("wrist", side)));
            parts.add(between(SegmentMass.HAND, body.point("wrist", side), body.point("tip", side)));
        }
        parts.add(at(SegmentMass.HEAD_AND_NECK.mass(), body, "head", .004, .012));
        parts.add(at(SegmentMass.PELVIS.mass(), body, "pelvis", -.002, .022));
        parts.add(at(SegmentMass.ABDOMEN.mass(), body, "lum2", .006, 0));
        for (int i = 0; i < THORAX_LINKS.length; i++) {
            parts.add(at(SegmentMass.THORAX.mass() * THORAX_LINKS[i], body, "tho" + (i + 1), .004, .027));
        }
        return parts;
    }

    private static PointMass between(SegmentMass segment, Vec3 proximal, Vec3 distal) {
        return new PointMass(segment.mass(), proximal.towards(distal, segment.centre()));
    }

    private static PointMass at(double mass, Skeleton body, String name, double forward, double up) {
        return new PointMass(mass, body.point(name).plus(body.frame(name).apply(forward, up, 0)));
    }
}
