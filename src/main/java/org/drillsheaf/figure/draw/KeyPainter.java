package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.figure.draw.Page.Spot;

/** Number keys: a white disc with an ink ring and a digit, near its mark, never on the body. */
final class KeyPainter {
    private static final double RING = GlyphOutlines.MM_PER_POINT;
    /** The middle of the disc is this far from the mark's own ink, at 5 mm discs. */
    private static final double NEAREST = 3.2;

    private static final double FARTHEST = 30;
    private static final int DIRECTIONS = 24;
    private static final double CLEARANCE = 0.45;
    /** Height of capitals and digits of Source Sans in its size. */
    private static final double DIGIT_HEIGHT = 0.66;

    private final Page page;
    private final DrawingStyle style;
    private final GlyphOutlines bold;

    KeyPainter(Page page, DrawingStyle style, GlyphOutlines bold) {
        this.page = page;
        this.style = style;
        this.bold = bold;
    }

    /**
     * @param spine places along the mark, tail first
     * @param halfWidth of the mark's ink
     */
    List<DrawnPath> key(String digits, List<Spot> spine, double halfWidth) {
        Spot centre = place(spine, halfWidth);
        double radius = style.keyDiscMm() / 2;
        page.take(Box.around(centre.x(), centre.y(), radius));
        List<DrawnPath> paths = new ArrayList<>();
        PathShape disc = Circles.circle(centre.x(), centre.y(), radius - RING / 2);
        paths.add(new DrawnPath(DrawnPath.Role.KEY, disc, Palette.PAPER, 1, Palette.INK, RING));
        double size = style.keyDigitPoints() * GlyphOutlines.MM_PER_POINT * (digits.length() > 1 ? 0.82 : 1);
        GlyphOutlines.Text text = bold.text(digits, size);
        Box ink = text.inkBox();
        double x = centre.x() - (ink.left() + ink.right()) / 2;
        boolean latin = digits.chars().allMatch(c -> c < 0x80);
        double y = latin ? centre.y() + size * DIGIT_HEIGHT / 2 : centre.y() - (ink.top() + ink.bottom()) / 2;
        paths.add(DrawnPath.filled(DrawnPath.Role.KEY, text.shape().moved(x, y), Palette.INK));
        return paths;
    }

    private Spot place(List<Spot> spine, double halfWidth) {
        double radius = style.keyDiscMm() / 2;
        double nearest = Math.max(NEAREST, radius + 0.7) + halfWidth - 0.5;
        Spot best = spine.get(0);
        double least = Double.POSITIVE_INFINITY;
        for (double distance = nearest; distance <= FARTHEST; distance += 0.7) {
            for (int anchor = 0; anchor < spine.size(); anchor++) {
                for (int k = 0; k < DIRECTIONS; k++) {
                    double angle = 2 * Math.PI * k / DIRECTIONS;
                    Spot spot =
                            spine.get(anchor).plus(distance * StrictMath.cos(angle), distance * StrictMath.sin(angle));
                    double cost = cost(spot, radius, spine, nearest)
                            + 1.2 * (distance - nearest)
                            + 0.05 * Math.abs(anchor - (spine.size() - 1) / 2.0);
                    if (cost < least - 1e-9) {
                        least = cost;
                        best = spot;
                    }
                }
            }
            if (least < 1.2 * (distance - nearest)) {
                break;
            }
        }
        return best;
    }

    private double cost(Spot centre, double radius, List<Spot> spine, double nearest) {
        double toMark = spine.stream().mapToDouble(centre::distanceTo).min().orElse(0);
        double tooNear = toMark < nearest - 0.05 ? 40 : 0;
        Box box = Box.around(centre.x(), centre.y(), radius + CLEARANCE);
        return tooNear
                + bodyUnder(centre, radius + CLEARANCE) * 400
                + page.takenUnder(box) * 60
                + page.propUnder(box) * 2.5;
    }

    /** Share of the disc that lies on the body. */
    private double bodyUnder(Spot centre, double radius) {
        int hits = 0;
        int all = 0;
        for (double r = radius; r > 0; r -= 0.45) {
            for (int k = 0; k < DIRECTIONS; k++) {
                double angle = 2 * Math.PI * k / DIRECTIONS;
                all++;
                if (page.isBody(centre.plus(r * StrictMath.cos(angle), r * StrictMath.sin(angle)))) {
                    hits++;
                }
            }
        }
        return (double) hits / all;
    }
}
