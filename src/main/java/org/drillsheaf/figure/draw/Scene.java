package org.drillsheaf.figure.draw;

import java.util.List;
import org.drillsheaf.figure.body.Blend;
import org.drillsheaf.figure.body.BodyPart;
import org.drillsheaf.figure.body.PropSolid;
import org.drillsheaf.figure.body.Solid;
import org.drillsheaf.figure.body.Vec3;

/**
 * Everything that can be hit by a ray, flattened for speed: solids of the body first, then props, and the soft joins between
 * solids of the body. Groups number what is drawn as one thing: the trunk with the head, each limb, each prop.
 */
final class Scene {
    static final int NOTHING = 0;
    static final int TRUNK = 1;
    static final int RIGHT_ARM = 2;
    static final int LEFT_ARM = 3;
    static final int RIGHT_LEG = 4;
    static final int LEFT_LEG = 5;
    static final int FIRST_PROP = 10;

    /** Joins pull surfaces together over at most this distance, statures. */
    static final double WIDEST_JOIN = 0.045;

    final Solid[] solids;
    final int[] groups;
    final Blend[] joins;
    final int bodyCount;
    final Surfaces surfaces;

    Scene(List<BodyPart> body, List<Blend> joins, List<PropSolid> props, Surfaces surfaces) {
        bodyCount = body.size();
        solids = new Solid[bodyCount + props.size()];
        groups = new int[solids.length];
        for (int i = 0; i < bodyCount; i++) {
            solids[i] = body.get(i).solid();
            groups[i] = switch (body.get(i).group()) {
                case TRUNK -> TRUNK;
                case RIGHT_ARM -> RIGHT_ARM;
                case LEFT_ARM -> LEFT_ARM;
                case RIGHT_LEG -> RIGHT_LEG;
                case LEFT_LEG -> LEFT_LEG;
            };
        }
        for (int i = 0; i < props.size(); i++) {
            solids[bodyCount + i] = props.get(i);
            groups[bodyCount + i] = FIRST_PROP + i;
        }
        this.joins = joins.toArray(Blend[]::new);
        this.surfaces = surfaces;
    }

    /** What a point on a surface belongs to; safe for several threads. */
    interface Surfaces {
        /** Garment of a body solid or face of a prop, see {@link Parts}. */
        short part(int solid, double x, double y, double z);

        /** Above 0 inside a muscle that is to be felt. */
        float muscle(int solid, double x, double y, double z);
    }

    static boolean isBody(int group) {
        return group > NOTHING && group < FIRST_PROP;
    }

    /** Distance to the body at a point; slow, for single points. */
    double bodyDistance(Vec3 point) {
        double[] distances = new double[bodyCount];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bodyCount; i++) {
            distances[i] = solids[i].distance(point.x(), point.y(), point.z());
            least = Math.min(least, distances[i]);
        }
        double result = least;
        for (Blend join : joins) {
            result = Math.min(
                    result,
                    joined(join, distances[join.first()], distances[join.second()], point.x(), point.y(), point.z()));
        }
        return result;
    }

    /** Distance to two solids that melt into each other: a polynomial smooth minimum. */
    static double joined(Blend join, double first, double second, double x, double y, double z) {
        double gap = Math.abs(first - second);
        double nearer = Math.min(first, second);
        if (gap >= join.strength()) {
            return nearer;
        }
        double k = join.strengthAt(x, y, z);
        return gap >= k ? nearer : nearer - (k - gap) * (k - gap) / (4 * k);
    }

    boolean isBodySolid(int solid) {
        return solid < bodyCount;
    }

    /** Solid of a prop's group. */
    PropSolid prop(int group) {
        return (PropSolid) solids[bodyCount + group - FIRST_PROP];
    }
}
