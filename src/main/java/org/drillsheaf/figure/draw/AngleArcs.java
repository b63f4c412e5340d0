package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.Page.Spot;

/**
 * Arcs that print a joint's clinical angle, 0 = straight, as a goniometer reads it: one arm goes on where the nearer segment
 * points, the other lies along the farther one. Left out where the view does not show the angle.
 */
final class AngleArcs {
    private static final double ARC_STROKE = 0.42;
    private static final double ARM_STROKE = 0.25;
    private static final double ARM_BEYOND = 1.6;
    private static final double DASH = 0.9;
    private static final double GAP = 0.7;
    private static final double MOST_DISTORTED_DEGREES = 10;

    private final Page page;
    private final LabelPainter labels;

    AngleArcs(Page page, LabelPainter labels) {
        this.page = page;
        this.labels = labels;
    }

    /**
     * @param centre the joint
     * @param straight direction of the farther segment at 0 degrees
     * @param segment direction of the farther segment
     * @param degrees the clinical value to print
     * @param radius millimetres
     */
    List<DrawnPath> arc(Vec3 centre, Vec3 straight, Vec3 segment, double degrees, double radius) {
        Spot middle = page.spot(centre);
        Optional<Double> from = bearing(middle, centre, straight);
        Optional<Double> to = bearing(middle, centre, segment);
        if (from.isEmpty() || to.isEmpty()) {
            return List.of();
        }
        double turn = Math.IEEEremainder(to.get() - from.get(), 2 * Math.PI);
        double shown = Math.abs(StrictMath.toDegrees(turn));
        if (Math.abs(shown - Math.abs(degrees)) > MOST_DISTORTED_DEGREES) {
            return List.of();
        }
        List<DrawnPath> paths = new ArrayList<>();
        PathShape arc = Circles.arc(middle.x(), middle.y(), radius, from.get(), turn);
        paths.add(DrawnPath.stroked(DrawnPath.Role.MARK, arc, Palette.PAPER, 1.1));
        PathShape.Builder arms = new PathShape.Builder();
        dashes(arms, middle, from.get(), radius + ARM_BEYOND);
        dashes(arms, middle, to.get(), radius + ARM_BEYOND);
        paths.add(DrawnPath.stroked(DrawnPath.Role.MARK, arms.build(), Palette.ACCENT, ARM_STROKE));
        paths.add(DrawnPath.stroked(DrawnPath.Role.MARK, arc, Palette.ACCENT, ARC_STROKE));
        paths.add(DrawnPath.filled(DrawnPath.Role.MARK, Circles.circle(middle.x(), middle.y(), 0.5), Palette.ACCENT));
        page.take(arc.box().grown(0.3));
        double half = from.get() + turn / 2;
        Spot beside = middle.plus((radius + 3.2) * StrictMath.cos(half), (radius + 3.2) * StrictMath.sin(half));
        paths.addAll(labels.labelAt(
                String.format(Locale.ROOT, "%d°", Math.round(degrees)).replace('-', '−'), beside));
        return paths;
    }

    private Optional<Double> bearing(Spot middle, Vec3 centre, Vec3 direction) {
        Spot end = page.spot(centre.plus(direction.unit().times(0.1)));
        double dx = end.x() - middle.x();
        double dy = end.y() - middle.y();
        return Segments.length(dx, dy) < 0.02 * page.mmPerStature()
                ? Optional.empty()
                : Optional.of(StrictMath.atan2(dy, dx));
    }

    private static void dashes(PathShape.Builder path, Spot from, double bearing, double length) {
        double dx = StrictMath.cos(bearing);
        double dy = StrictMath.sin(bearing);
        for (double at = 0; at < length; at += DASH + GAP) {
            double end = Math.min(length, at + DASH);
            path.moveTo(from.x() + dx * at, from.y() + dy * at);
            path.lineTo(from.x() + dx * end, from.y() + dy * end);
        }
    }
}
