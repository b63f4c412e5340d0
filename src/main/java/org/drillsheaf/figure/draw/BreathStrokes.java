package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.Page.Spot;

/** Three strokes of air at the mouth; a small head tells whether it flows out or in. */
final class BreathStrokes {
    private static final double STROKE = 0.45;
    private static final double SPREAD = 0.34;
    private static final double START = 1.6;
    private static final double LONG = 6.2;
    private static final double SHORT = 5.0;
    private static final double HEAD = 1.1;
    /** Turns of the strokes about the mouth that are tried, radians. */
    private static final double[] TURNS = {0, .2, -.2, .4, -.4, .6, -.6, .8, -.8};

    /** Spots of the body under the strokes that one radian of turn is worth. */
    private static final double PER_TURN = 6;
    /** The face must be seen this much from the side. */
    private static final double LEAST_SEEN = 0.35;

    private BreathStrokes() {}

    /** Strokes and the places along the middle one. */
    record Breath(List<DrawnPath> paths, List<Spot> spine) {}

    static Optional<Breath> strokes(Page page, Vec3 mouth, Vec3 ahead, boolean out) {
        Spot from = page.spot(mouth);
        Spot to = page.spot(mouth.plus(ahead.unit().times(0.1)));
        double length = from.distanceTo(to);
        if (length < LEAST_SEEN * 0.1 * page.mmPerStature()) {
            return Optional.empty();
        }
        double straightX = (to.x() - from.x()) / length;
        double straightY = (to.y() - from.y()) / length;
        double turn = clearTurn(page, from, straightX, straightY);
        double dx = straightX * StrictMath.cos(turn) - straightY * StrictMath.sin(turn);
        double dy = straightX * StrictMath.sin(turn) + straightY * StrictMath.cos(turn);
        PathShape.Builder path = new PathShape.Builder();
        for (int i = -1; i <= 1; i++) {
            double cos = StrictMath.cos(i * SPREAD);
            double sin = StrictMath.sin(i * SPREAD);
            stroke(path, from, dx * cos - dy * sin, dx * sin + dy * cos, i, out);
        }
        PathShape shape = path.build();
        List<Spot> spine = new ArrayList<>();
        for (double at = START; at <= LONG; at += 1.5) {
            spine.add(from.plus(dx * at, dy * at));
        }
        page.take(shape.box().grown(0.4));
        return Optional.of(new Breath(
                List.of(
                        DrawnPath.stroked(DrawnPath.Role.MARK, shape, Palette.PAPER, STROKE + 0.7),
                        DrawnPath.stroked(DrawnPath.Role.MARK, shape, Palette.ACCENT, STROKE)),
                spine));
    }

    /** The smallest turn about the mouth, radians, that keeps the strokes off arms and legs as well as any does. */
    private static double clearTurn(Page page, Spot mouth, double dx, double dy) {
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double turn : TURNS) {
            double cost = Math.abs(turn) * PER_TURN;
            for (int i = -1; i <= 1; i++) {
                double angle = turn + i * SPREAD;
                double x = dx * StrictMath.cos(angle) - dy * StrictMath.sin(angle);
                double y = dx * StrictMath.sin(angle) + dy * StrictMath.cos(angle);
                for (double at = START + 1; at <= LONG; at += .4) {
                    cost += page.isBody(mouth.plus(x * at, y * at)) ? 1 : 0;
                }
            }
            if (cost < least - 1e-9) {
                least = cost;
                best = turn;
            }
        }
        return best;
    }

    private static void stroke(PathShape.Builder path, Spot mouth, double dx, double dy, int index, boolean out) {
        double reach = index == 0 ? LONG : SHORT;
        double bow = 0.45 * index;
        Spot near = mouth.plus(dx * START, dy * START);
        Spot far = mouth.plus(dx * reach, dy * reach);
        double middle = (START + reach) / 2;
        Spot bend = mouth.plus(dx * middle - dy * bow, dy * middle + dx * bow);
        path.moveTo(near.x(), near.y());
        path.curveTo(bend.x(), bend.y(), bend.x(), bend.y(), far.x(), far.y());
        if (index == 0) {
            double sign = out ? 1 : -1;
            Spot tip = out ? far : near;
            path.moveTo(tip.x() - sign * dx * HEAD - dy * HEAD * 0.7, tip.y() - sign * dy * HEAD + dx * HEAD * 0.7);
            path.lineTo(tip.x(), tip.y());
            path.lineTo(tip.x() - sign * dx * HEAD + dy * HEAD * 0.7, tip.y() - sign * dy * HEAD - dx * HEAD * 0.7);
        }
    }
}
