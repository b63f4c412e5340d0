package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.figure.draw.Page.Spot;

/** Moves straight arrows clear of the body: along themselves first, a little aside if that does not help. */
final class MarkPlaces {
    private static final double STEP = 0.5;
    private static final double FARTHEST = 7;
    private static final double ASIDE = 3;

    private MarkPlaces() {}

    /** An arrow from tail to tip. */
    record Straight(Spot tail, Spot tip) {
        Straight moved(double dx, double dy) {
            return new Straight(tail.plus(dx, dy), tip.plus(dx, dy));
        }
    }

    /** @param away 1 when the arrow leaves its point at the tail, -1 when it comes to its point with the tip */
    static Straight clear(Page page, Straight arrow, int away) {
        double length = arrow.tail.distanceTo(arrow.tip);
        double dx = (arrow.tip.x() - arrow.tail.x()) / length;
        double dy = (arrow.tip.y() - arrow.tail.y()) / length;
        Straight best = arrow;
        double least = Double.POSITIVE_INFINITY;
        for (double aside : List.of(0.0, ASIDE, -ASIDE)) {
            for (double along = 0; along <= FARTHEST; along += STEP) {
                double shift = along * away;
                Straight moved = arrow.moved(dx * shift - dy * aside, dy * shift + dx * aside);
                double cost = cost(page, moved) + 0.25 * along + 0.8 * Math.abs(aside);
                if (cost < least - 1e-9) {
                    least = cost;
                    best = moved;
                }
            }
        }
        return best;
    }

    private static double cost(Page page, Straight arrow) {
        double cost = 0;
        for (Spot spot : outline(arrow)) {
            cost += page.isBody(spot) ? 0.9 : 0;
            cost += page.takenUnder(Box.around(spot.x(), spot.y(), 0.5)) * 0.6;
        }
        return cost;
    }

    private static List<Spot> outline(Straight arrow) {
        List<Spot> spots = new ArrayList<>();
        double length = arrow.tail.distanceTo(arrow.tip);
        double dx = (arrow.tip.x() - arrow.tail.x()) / length;
        double dy = (arrow.tip.y() - arrow.tail.y()) / length;
        int steps = (int) Math.ceil(length / STEP);
        for (int i = 0; i <= steps; i++) {
            double at = length * i / steps;
            double half = at > length - Arrows.HEAD ? (length - at) / 2 + 0.3 : Arrows.SHAFT / 2 + 0.3;
            for (int side = -1; side <= 1; side++) {
                spots.add(arrow.tail.plus(dx * at - dy * half * side, dy * at + dx * half * side));
            }
        }
        return spots;
    }
}
