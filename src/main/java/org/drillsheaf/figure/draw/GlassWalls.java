package org.drillsheaf.figure.draw;

import java.util.List;
import org.drillsheaf.figure.body.RoundedBox;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.FigureScene.SceneProp;

/**
 * Walls and floors that stand between the viewer and the person. They would hide what the picture is for, so they are not traced,
 * as if they were of glass; a dashed outline says where they are.
 */
final class GlassWalls {
    /** Less than this share of the joints behind a wall still shows what the person does. Chosen by eye. */
    private static final double MOST_HIDDEN = 0.5;

    /** Millimetres on paper. */
    private static final double STROKE = 0.23;

    private static final double DASH = 1.6;
    private static final double DASH_AND_GAP = 2.7;

    private GlassWalls() {}

    /** Slabs that hide most of the person. */
    static List<SceneProp> between(FigureScene figure, Camera camera) {
        return figure.props().stream()
                .filter(prop -> prop.look() == PropLook.SLAB
                        && prop.solid() instanceof RoundedBox slab
                        && hidden(figure.body().skeleton(), slab, camera) > MOST_HIDDEN)
                .toList();
    }

    private static double hidden(Skeleton skeleton, RoundedBox slab, Camera camera) {
        Vec3 toward = new Vec3(camera.towardX(), camera.towardY(), camera.towardZ());
        Plate plate = Plate.of(slab);
        return skeleton.pointNames().stream()
                        .filter(name -> plate.isBefore(skeleton.point(name), toward))
                        .count()
                / (double) skeleton.pointNames().size();
    }

    static DrawnPath outline(RoundedBox slab, Page page) {
        PathShape.Builder path = new PathShape.Builder();
        List<Vec3> corners = Plate.of(slab).corners();
        for (int i = 0; i < corners.size(); i++) {
            dashes(path, page.spot(corners.get(i)), page.spot(corners.get((i + 1) % corners.size())));
        }
        return DrawnPath.stroked(DrawnPath.Role.PROP_LINE, path.build(), Palette.PROP_INK, STROKE);
    }

    /** A dash at each end and evenly between, so that a mirrored edge gets mirrored dashes. */
    private static void dashes(PathShape.Builder path, Page.Spot from, Page.Spot to) {
        double length = from.distanceTo(to);
        if (length < DASH) {
            return;
        }
        long gaps = Math.max(1, Math.round((length - DASH) / DASH_AND_GAP));
        double dx = (to.x() - from.x()) / length;
        double dy = (to.y() - from.y()) / length;
        for (int i = 0; i <= gaps; i++) {
            double at = (length - DASH) * i / gaps;
            path.moveTo(from.x() + dx * at, from.y() + dy * at);
            path.lineTo(from.x() + dx * (at + DASH), from.y() + dy * (at + DASH));
        }
    }

    /** The middle of a slab: a rectangle in space with half its length and half its breadth as vectors. */
    private record Plate(Vec3 middle, Vec3 length, Vec3 breadth, Vec3 normal) {
        static Plate of(RoundedBox slab) {
            Vec3 x = slab.frame().axisX().times(slab.half().x());
            Vec3 y = slab.frame().axisY().times(slab.half().y());
            Vec3 z = slab.frame().axisZ().times(slab.half().z());
            boolean thinX =
                    slab.half().x() <= Math.min(slab.half().y(), slab.half().z());
            boolean thinY = slab.half().y() <= slab.half().z();
            return thinX
                    ? new Plate(slab.centre(), y, z, x.unit())
                    : thinY ? new Plate(slab.centre(), x, z, y.unit()) : new Plate(slab.centre(), x, y, z.unit());
        }

        /** Whether one who looks at a point looks through the plate. */
        boolean isBefore(Vec3 point, Vec3 toward) {
            double steep = toward.dot(normal);
            if (Math.abs(steep) < 1e-6) {
                return false;
            }
            double way = middle.minus(point).dot(normal) / steep;
            Vec3 hit = point.plus(toward.times(way)).minus(middle);
            return way > 0
                    && Math.abs(hit.dot(length)) < length.dot(length)
                    && Math.abs(hit.dot(breadth)) < breadth.dot(breadth);
        }

        List<Vec3> corners() {
            return List.of(
                    middle.plus(length).plus(breadth),
                    middle.plus(length).minus(breadth),
                    middle.minus(length).minus(breadth),
                    middle.minus(length).plus(breadth));
        }
    }
}
