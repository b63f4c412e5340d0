package org.drillsheaf.figure.statics;

import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.figure.body.BodyPart;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.PlacedProp;
import org.drillsheaf.figure.pose.Plane;
import org.drillsheaf.figure.pose.PropKind;
import org.drillsheaf.figure.pose.SolvedPose;

/**
 * Whether a pose could be held at rest by what carries it from below: the floor, a seat, a bed, a step. Assumptions: the
 * body is rigid, all carrying surfaces are level and firm, walls and hands give no help. A pose that is not stable here
 * needs another contact (a wall, a hand), which is then what the picture has to show.
 *
 * @param centre centre of mass, statures
 * @param support hull of the skin near level surfaces
 * @param margin how far the centre lies inside the hull, statures; negative outside
 */
public record Balance(Vec3 centre, SupportPolygon support, double margin) {
    /** Skin nearer to a surface than this carries, statures; standing and kneeling. */
    private static final double FIRM = .006;
    /** Soft tissue under a lying or sitting body spreads the contact, statures (2 %). */
    private static final double SOFT = .02;

    public static Balance of(SolvedPose pose) {
        boolean soft =
                pose.pose().root().isLying() || pose.pose().root() == org.drillsheaf.figure.pose.RootPosture.SEATED;
        double near = soft ? SOFT : FIRM;
        List<SupportPolygon.Corner> points = new ArrayList<>();
        for (BodyPart part : pose.body().parts()) {
            part.solid().samples(0, 1, p -> {
                if (isCarried(pose, p, near)) {
                    points.add(new SupportPolygon.Corner(p.x(), p.z()));
                }
            });
        }
        Vec3 centre = CentreOfMass.of(pose.skeleton());
        SupportPolygon support = SupportPolygon.around(points);
        return new Balance(centre, support, support.margin(centre.x(), centre.z()));
    }

    private static boolean isCarried(SolvedPose pose, Vec3 p, double near) {
        if (p.y() < near) {
            return true;
        }
        for (PlacedProp prop : pose.props()) {
            if (prop.kind() == PropKind.WALL || prop.kind() == PropKind.FLOOR) {
                continue;
            }
            for (Plane plane : prop.planes().values()) {
                boolean level = plane.normal().y() > .9;
                if (level && Math.abs(plane.height(p)) < Math.max(near, .012) && isAbove(prop, p)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean isAbove(PlacedProp prop, Vec3 p) {
        return prop.solids().stream().anyMatch(s -> s.distance(p) < SOFT);
    }

    /** Whether the centre of mass lies over what carries the body. */
    public boolean isStable() {
        return margin > 0;
    }
}
