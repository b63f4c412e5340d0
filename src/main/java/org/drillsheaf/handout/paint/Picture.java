package org.drillsheaf.handout.paint;

import java.awt.Graphics2D;

/**
 * Something painted on a page.
 *
 * @param widthMm width on paper in millimetres
 * @param heightMm height on paper in millimetres
 * @param painter paints from the upper left corner, in millimetres, y down; may be asked more than once
 */
public record Picture(double widthMm, double heightMm, Painter painter) {
    public Picture {
        if (!(widthMm > 0 && widthMm < 2000 && heightMm > 0 && heightMm < 2000)) {
            throw new IllegalArgumentException("no picture of " + widthMm + " by " + heightMm + " mm");
        }
    }

    /** Puts the ink on a surface whose unit is a millimetre. */
    @FunctionalInterface
    public interface Painter {
        void paint(Graphics2D surface);

        /** Whether every painter equal to this one puts down the same ink, so that it can be remembered. */
        default boolean comesAgain() {
            return false;
        }
    }

    private record Scaled(double factor, Painter painter) implements Painter {
        @Override
        public void paint(Graphics2D surface) {
            surface.scale(factor, factor);
            painter.paint(surface);
        }

        @Override
        public boolean comesAgain() {
            return painter.comesAgain();
        }
    }

    /** The same picture at another size. */
    public Picture scaled(double factor) {
        return new Picture(widthMm * factor, heightMm * factor, new Scaled(factor, painter));
    }

    /** The largest size that fits into a box, never larger than now. */
    public Picture within(double mostWidthMm, double mostHeightMm) {
        double factor = Math.min(1, Math.min(mostWidthMm / widthMm, mostHeightMm / heightMm));
        return factor == 1 ? this : scaled(factor);
    }
}
