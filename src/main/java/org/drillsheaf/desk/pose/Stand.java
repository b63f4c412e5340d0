package org.drillsheaf.desk.pose;

import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.Box;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.View;

/**
 * How the room lies in a pane: where its zero is and how large a stature.
 *
 * @param x pixels from the left, {@code y} from the top
 */
record Stand(double x, double y, double pixelsPerStature) {
    private static final double MARGIN = 14;

    /** The whole drawing in the middle of a pane. */
    static Stand fitting(Drawing drawing, double millimetresPerStature, double width, double height) {
        Box origin = drawing.anchors().getOrDefault("origin", new Box(0, 0, 0, 0));
        double scale = Math.max(
                .2, Math.min((width - 2 * MARGIN) / drawing.widthMm(), (height - 2 * MARGIN) / drawing.heightMm()));
        return new Stand(
                (width - scale * drawing.widthMm()) / 2 + scale * origin.left(),
                (height - scale * drawing.heightMm()) / 2 + scale * origin.top(),
                scale * millimetresPerStature);
    }

    double left(View view, Vec3 point) {
        return x + pixelsPerStature * view.across(point);
    }

    double top(View view, Vec3 point) {
        return y - pixelsPerStature * view.upward(point);
    }

    /** Statures to the right of the zero of the room. */
    double across(double left) {
        return (left - x) / pixelsPerStature;
    }

    double upward(double top) {
        return (y - top) / pixelsPerStature;
    }
}
