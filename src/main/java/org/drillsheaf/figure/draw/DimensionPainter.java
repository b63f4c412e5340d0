package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.Page.Spot;

/** Measures: a bracket with short ends beside the figure and the number next to it. */
final class DimensionPainter {
    private static final double STROKE = 0.45;
    private static final double END = 1.1;
    private static final double POINTS = 11;
    private static final double STEP = 0.5;
    private static final double FARTHEST = 45;
    private static final double CLEARANCE = 1.0;
    private static final double TEXT_GAP = 1.0;
    /** A measure seen shorter than this share of its length is left out, because the view cannot show it. */
    private static final double LEAST_SEEN = 0.8;

    private final Page page;
    private final GlyphOutlines bold;

    DimensionPainter(Page page, GlyphOutlines bold) {
        this.page = page;
        this.bold = bold;
    }

    /** Bracket between two spots with its text. */
    private record Layout(Spot from, Spot to, double nx, double ny, Box textBox, double cost) {}

    /** @return nothing when the view does not show the measure */
    List<DrawnPath> dimension(Vec3 from, Vec3 to, String label) {
        Spot a = page.spot(from);
        Spot b = page.spot(to);
        double seen = a.distanceTo(b);
        if (seen < 0.5 || seen < LEAST_SEEN * from.distanceTo(to) * page.mmPerStature()) {
            return List.of();
        }
        GlyphOutlines.Text text = bold.text(label, POINTS * GlyphOutlines.MM_PER_POINT);
        Layout layout = best(a, b, text);
        page.take(Box.NOTHING
                .with(layout.from.x(), layout.from.y())
                .with(layout.to.x(), layout.to.y())
                .grown(0.8));
        page.take(layout.textBox);
        return painted(layout, text);
    }

    private Layout best(Spot a, Spot b, GlyphOutlines.Text text) {
        double length = a.distanceTo(b);
        double dx = (b.x() - a.x()) / length;
        double dy = (b.y() - a.y()) / length;
        Layout best = null;
        for (double offset = 0; offset <= FARTHEST; offset += STEP) {
            for (int side = -1; side <= 1; side += 2) {
                double nx = -dy * side;
                double ny = dx * side;
                // Below is where the eye looks for a floor measure.
                double preference = ny > 0.5 ? 0 : 2.5;
                Layout layout = layout(
                        a.plus(nx * offset, ny * offset),
                        b.plus(nx * offset, ny * offset),
                        nx,
                        ny,
                        text,
                        offset + preference);
                if (best == null || layout.cost < best.cost - 1e-9) {
                    best = layout;
                }
            }
        }
        return java.util.Objects.requireNonNull(best);
    }

    private Layout layout(Spot from, Spot to, double nx, double ny, GlyphOutlines.Text text, double base) {
        double cost = base * 0.5 + crossing(from, to);
        double width = text.width();
        double height = text.inkBox().height();
        double middleX = (from.x() + to.x()) / 2;
        double middleY = (from.y() + to.y()) / 2;
        double reach = Math.abs(nx) * width / 2 + Math.abs(ny) * height / 2 + END / 2 + TEXT_GAP;
        Box best = Box.NOTHING;
        double least = Double.POSITIVE_INFINITY;
        for (int slide = -4; slide <= 4; slide++) {
            double along = slide * width / 5;
            double x = middleX + nx * reach + ny * along;
            double y = middleY + ny * reach - nx * along;
            Box box = new Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
            double textCost = 60 * page.bodyUnder(box.grown(0.4))
                    + 25 * page.propUnder(box.grown(0.4))
                    + 50 * page.takenUnder(box.grown(0.3))
                    + 0.15 * Math.abs(along);
            if (textCost < least) {
                least = textCost;
                best = box;
            }
        }
        return new Layout(from, to, nx, ny, best, cost + least);
    }

    private double crossing(Spot from, Spot to) {
        int steps = Math.max(2, (int) Math.ceil(from.distanceTo(to) / STEP));
        double cost = 0;
        for (int i = 0; i <= steps; i++) {
            double x = from.x() + (to.x() - from.x()) * i / steps;
            double y = from.y() + (to.y() - from.y()) * i / steps;
            Box box = Box.around(x, y, CLEARANCE);
            cost += 25 * page.bodyUnder(box) + 12 * page.propUnder(box) + 30 * page.takenUnder(box);
        }
        return cost / (steps + 1) * 3;
    }

    private static List<DrawnPath> painted(Layout layout, GlyphOutlines.Text text) {
        double ex = layout.nx * END / 2;
        double ey = layout.ny * END / 2;
        Spot from = layout.from;
        Spot to = layout.to;
        PathShape bracket = new PathShape.Builder()
                .moveTo(from.x() - ex, from.y() - ey)
                .lineTo(from.x() + ex, from.y() + ey)
                .moveTo(to.x() - ex, to.y() - ey)
                .lineTo(to.x() + ex, to.y() + ey)
                .moveTo(from.x(), from.y())
                .lineTo(to.x(), to.y())
                .build();
        Box ink = text.inkBox();
        PathShape words =
                text.shape().moved(layout.textBox.left() - ink.left(), layout.textBox.bottom() - ink.bottom());
        List<DrawnPath> paths = new ArrayList<>();
        paths.add(DrawnPath.stroked(DrawnPath.Role.DIMENSION, bracket, Palette.PAPER, STROKE + 0.8));
        paths.add(DrawnPath.stroked(DrawnPath.Role.DIMENSION, words, Palette.PAPER, 0.8));
        paths.add(DrawnPath.stroked(DrawnPath.Role.DIMENSION, bracket, Palette.ACCENT, STROKE));
        paths.add(DrawnPath.filled(DrawnPath.Role.DIMENSION, words, Palette.ACCENT));
        return paths;
    }
}
