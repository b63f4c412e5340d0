package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;

/** Outlines of arrows, straight and curved. Millimetres on paper, the same at every scale. */
final class Arrows {
    static final double SHAFT = 1.0;
    static final double HEAD = 2.6;
    /** White rim that keeps an arrow clear of what it lies on. */
    static final double RIM = 0.9;

    private static final int CURVE_STEPS = 16;

    private Arrows() {}

    static PathShape straight(Page.Spot tail, Page.Spot tip) {
        double length = tail.distanceTo(tip);
        double dx = (tip.x() - tail.x()) / length;
        double dy = (tip.y() - tail.y()) / length;
        double head = Math.min(HEAD, length * 0.6);
        Page.Spot neck = new Page.Spot(tip.x() - dx * head, tip.y() - dy * head);
        double half = SHAFT / 2;
        double wide = HEAD / 2;
        PathShape.Builder path = new PathShape.Builder();
        path.moveTo(tail.x() - dy * half, tail.y() + dx * half);
        path.lineTo(neck.x() - dy * half, neck.y() + dx * half);
        path.lineTo(neck.x() - dy * wide, neck.y() + dx * wide);
        path.lineTo(tip.x(), tip.y());
        path.lineTo(neck.x() + dy * wide, neck.y() - dx * wide);
        path.lineTo(neck.x() + dy * half, neck.y() - dx * half);
        path.lineTo(tail.x() + dy * half, tail.y() - dx * half);
        return path.close().build();
    }

    /**
     * A way around a centre whose radius may change.
     *
     * @param fromAngle radians on the page, y down
     * @param turn radians, its sign is the direction
     */
    record Bend(Page.Spot centre, double fromRadius, double toRadius, double fromAngle, double turn) {
        Page.Spot at(double share, double aside) {
            double angle = fromAngle + turn * share;
            double radius = fromRadius + (toRadius - fromRadius) * share + aside;
            return centre.plus(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
        }

        double length() {
            return Math.abs(turn) * (fromRadius + toRadius) / 2;
        }
    }

    static PathShape curved(Bend bend) {
        double neck = 1 - Math.min(0.6, HEAD / Math.max(1e-6, bend.length()));
        double half = SHAFT / 2;
        double wide = HEAD / 2;
        double[] outer = side(bend, neck, half, false);
        double[] inner = side(bend, neck, -half, true);
        PathShape.Builder path = new PathShape.Builder();
        CurveFit.line(path, outer, 0.02);
        lineTo(path, bend.at(neck, wide));
        lineTo(path, bend.at(1, 0));
        lineTo(path, bend.at(neck, -wide));
        path.lineTo(inner[0], inner[1]);
        CurveFit.continueThrough(path, inner, 0.02);
        return path.close().build();
    }

    private static void lineTo(PathShape.Builder path, Page.Spot spot) {
        path.lineTo(spot.x(), spot.y());
    }

    private static double[] side(Bend bend, double neck, double aside, boolean backwards) {
        double[] points = new double[2 * (CURVE_STEPS + 1)];
        for (int i = 0; i <= CURVE_STEPS; i++) {
            double share = neck * (backwards ? CURVE_STEPS - i : i) / CURVE_STEPS;
            Page.Spot spot = bend.at(share, aside);
            points[2 * i] = spot.x();
            points[2 * i + 1] = spot.y();
        }
        return points;
    }

    /** The arrow with its white rim. */
    static List<DrawnPath> painted(PathShape arrow) {
        List<DrawnPath> paths = new ArrayList<>();
        paths.add(new DrawnPath(DrawnPath.Role.MARK, arrow, Palette.PAPER, 1, Palette.PAPER, RIM));
        paths.add(DrawnPath.filled(DrawnPath.Role.MARK, arrow, Palette.ACCENT));
        return paths;
    }
}
