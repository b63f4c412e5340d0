package org.drillsheaf.figure.draw;

import java.util.List;
import org.drillsheaf.figure.draw.Page.Spot;

/** Words in the author's pictures; each looks for a free spot near its mark. */
final class LabelPainter {
    static final double SIZE = 2.7;

    private static final double UNDER_STROKE = 0.7;
    private static final double FARTHEST = 18;
    private static final int DIRECTIONS = 16;

    private final Page page;
    private final GlyphOutlines letters;

    LabelPainter(Page page, GlyphOutlines letters) {
        this.page = page;
        this.letters = letters;
    }

    /**
     * @param near the label is placed near here
     * @param preferX direction it would rather go, with {@code preferY}
     */
    List<DrawnPath> label(String words, Spot near, double preferX, double preferY) {
        GlyphOutlines.Text text = letters.text(words, SIZE);
        Box box = place(near, text, preferX, preferY);
        page.take(box.grown(0.3));
        return painted(text, box);
    }

    /** A label whose middle is given. */
    List<DrawnPath> labelAt(String words, Spot middle) {
        GlyphOutlines.Text text = letters.text(words, SIZE);
        Box ink = text.inkBox();
        Box box = new Box(
                middle.x() - ink.width() / 2,
                middle.y() - ink.height() / 2,
                middle.x() + ink.width() / 2,
                middle.y() + ink.height() / 2);
        page.take(box.grown(0.3));
        return painted(text, box);
    }

    private static List<DrawnPath> painted(GlyphOutlines.Text text, Box box) {
        Box ink = text.inkBox();
        PathShape shape = text.shape().moved(box.left() - ink.left(), box.bottom() - ink.bottom());
        return List.of(
                DrawnPath.stroked(DrawnPath.Role.LABEL, shape, Palette.PAPER, UNDER_STROKE),
                DrawnPath.filled(DrawnPath.Role.LABEL, shape, Palette.INK));
    }

    private Box place(Spot near, GlyphOutlines.Text text, double preferX, double preferY) {
        double width = text.inkBox().width();
        double height = text.inkBox().height();
        Box best = Box.NOTHING;
        double least = Double.POSITIVE_INFINITY;
        for (double distance = 1; distance < FARTHEST; distance += 1) {
            for (int k = 0; k < DIRECTIONS; k++) {
                double angle = 2 * Math.PI * k / DIRECTIONS;
                double dx = StrictMath.cos(angle);
                double dy = StrictMath.sin(angle);
                double x = near.x() + dx * (distance + width / 2 * Math.abs(dx));
                double y = near.y() + dy * (distance + height / 2 * Math.abs(dy));
                Box box = new Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
                Box clear = box.grown(0.5);
                double cost = distance * 0.55
                        - 1.6 * (dx * preferX + dy * preferY)
                        + 60 * page.bodyUnder(clear)
                        + 15 * page.propUnder(clear)
                        + 60 * page.takenUnder(clear);
                if (cost < least - 1e-9) {
                    least = cost;
                    best = box;
                }
            }
        }
        return best;
    }
}
