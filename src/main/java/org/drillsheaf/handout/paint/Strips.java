package org.drillsheaf.handout.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * Values against their cut-offs. Every dot tells its finding by its shape, so that grey print loses nothing; word and number
 * stand beside it.
 *
 * @param ink colour of dots and cut-off as 0xRRGGBB
 * @param accent colour of what changed
 * @param grey colour of lines and hatch
 */
public record Strips(int ink, int accent, int grey) {
    /** Errors of the test that a coach strip shows each way; more is off the scale. */
    private static final double MOST_ERRORS = 5;

    private static final double DOT = 1.45;

    /**
     * One row of the coach sheet: the cut-off in the middle, one error each way hatched. Rows of one height join.
     *
     * @param errors distance from the cut-off in errors, to the right is fuller
     * @param kind the finding: {@code limited}, {@code at-the-line}, {@code full}, {@code beyond-expected}, {@code painful}
     */
    public Picture coach(double errors, String kind, double width, double height) {
        return new Picture(width, height, surface -> {
            double middle = width / 2;
            double step = (width / 2 - 4) / MOST_ERRORS;
            hatch(surface, middle - step, middle + step, height);
            line(surface, 0, height / 2, width, height / 2, 0.2, grey);
            line(surface, middle, 0, middle, height, 0.6, ink);
            boolean off = Math.abs(errors) > MOST_ERRORS;
            double x = middle + Math.max(-MOST_ERRORS, Math.min(MOST_ERRORS, errors)) * step;
            dot(surface, x, height / 2, kind);
            if (off) {
                arrowHead(surface, x + Math.signum(errors) * 3.2, height / 2, Math.signum(errors));
            }
        });
    }

    private void dot(Graphics2D surface, double x, double y, String kind) {
        Shape circle = new Ellipse2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT);
        surface.setColor(Color.WHITE);
        surface.fill(circle);
        surface.setColor(new Color(ink));
        surface.setStroke(new BasicStroke(0.4f));
        switch (kind) {
            case "limited" -> surface.fill(circle);
            case "at-the-line" ->
                surface.fill(new Arc2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT, 90, 180, Arc2D.PIE));
            case "beyond-expected" -> line(surface, x, y - DOT, x, y + DOT, 0.4, ink);
            default -> {}
        }
        surface.setColor(new Color(ink));
        surface.draw(kind.equals("painful") ? new Rectangle2D.Double(x - DOT, y - DOT, 2 * DOT, 2 * DOT) : circle);
    }

    private void hatch(Graphics2D surface, double from, double to, double height) {
        Shape clip = surface.getClip();
        surface.clip(new Rectangle2D.Double(from, 0, to - from, height));
        double pitch = height / 3;
        for (double x = from - height; x < to; x += pitch) {
            line(surface, x, height, x + height, 0, 0.12, grey);
        }
        surface.setClip(clip);
        line(surface, from, 0, from, height, 0.12, grey);
        line(surface, to, 0, to, height, 0.12, grey);
    }

    private void arrowHead(Graphics2D surface, double x, double y, double direction) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y);
        head.lineTo(x - 1.6 * direction, y - 1.2);
        head.lineTo(x - 1.6 * direction, y + 1.2);
        head.closePath();
        surface.setColor(new Color(ink));
        surface.fill(head);
    }

    private static void line(Graphics2D surface, double x1, double y1, double x2, double y2, double width, int colour) {
        surface.setColor(new Color(colour));
        surface.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        surface.draw(new Line2D.Double(x1, y1, x2, y2));
    }
}
