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
import java.util.List;
import java.util.Optional;

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

    /**
     * The values of one test and side over the visits: what lies inside the hatched box around the first may be chance.
     *
     * @param places of the values along the width, 0 to 1, oldest first
     * @param aim place of the cut-off
     * @param change smallest real change as a share of the width
     * @param real whether the last value differs from the first by a real change
     */
    public Picture progress(
            List<Double> places, Optional<Double> aim, double change, boolean real, double width, double height) {
        return new Picture(width, height, surface -> {
            double y = height / 2 - 0.6;
            double first = places.get(0) * width;
            double now = places.get(places.size() - 1) * width;
            line(surface, 0, y, width, y, 0.25, grey);
            Shape clip = surface.getClip();
            surface.clip(new Rectangle2D.Double(0, y - 2.2, width, 4.4));
            surface.translate(0, y - 2.2);
            hatch(surface, first - change * width, first + change * width, 4.4);
            surface.translate(0, 2.2 - y);
            surface.setClip(clip);
            double left = Math.max(0.1, first - change * width);
            double right = Math.min(width - 0.1, first + change * width);
            surface.setColor(new Color(grey));
            surface.setStroke(new BasicStroke(0.25f));
            surface.draw(new Rectangle2D.Double(left, y - 2.2, right - left, 4.4));
            aim.ifPresent(place -> flag(surface, place * width, y));
            if (real && Math.abs(now - first) > 5) {
                double direction = Math.signum(now - first);
                line(surface, first + direction * 1.5, y, now - direction * 3, y, 0.8, accent);
                surface.setColor(new Color(accent));
                surface.fill(triangle(now - direction * 1.9, y, direction));
            }
            for (int i = 1; i < places.size() - 1; i++) {
                ring(surface, places.get(i) * width, y, 1.0, false);
            }
            ring(surface, first, y, 1.45, false);
            ring(surface, now, y, 1.6, true);
        });
    }

    private void ring(Graphics2D surface, double x, double y, double radius, boolean solid) {
        Shape circle = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        surface.setColor(solid ? new Color(ink) : Color.WHITE);
        surface.fill(circle);
        surface.setColor(new Color(ink));
        surface.setStroke(new BasicStroke(0.45f));
        surface.draw(circle);
    }

    private void flag(Graphics2D surface, double x, double y) {
        line(surface, x, y - 2.6, x, y + 4.4, 0.5, ink);
        Path2D flag = new Path2D.Double();
        flag.moveTo(x, y + 2.4);
        flag.lineTo(x + 2.6, y + 3.4);
        flag.lineTo(x, y + 4.4);
        flag.closePath();
        surface.setColor(new Color(ink));
        surface.fill(flag);
    }

    private static Shape triangle(double x, double y, double direction) {
        Path2D head = new Path2D.Double();
        head.moveTo(x, y);
        head.lineTo(x - 1.8 * direction, y - 1.2);
        head.lineTo(x - 1.8 * direction, y + 1.2);
        head.closePath();
        return head;
    }

    /** The marks of a progress chart on their own, for its legend: {@code first}, {@code now}, {@code aim}, {@code box}. */
    public Picture mark(String which, double height) {
        return new Picture(which.equals("box") ? 9 : 5, height, surface -> {
            double y = height / 2;
            switch (which) {
                case "first" -> ring(surface, 2.5, y, 1.45, false);
                case "now" -> ring(surface, 2.5, y, 1.6, true);
                case "aim" -> flag(surface, 1, y - 1.2);
                default -> {
                    surface.translate(0, y - 1.8);
                    hatch(surface, 0.3, 8.7, 3.6);
                    surface.setColor(new Color(grey));
                    surface.setStroke(new BasicStroke(0.25f));
                    surface.draw(new Rectangle2D.Double(0.3, 0, 8.4, 3.6));
                }
            }
        });
    }

    /** Better, about the same, less: solid triangle up, two bars, open triangle down. */
    public Picture verdict(String kind, double size) {
        return new Picture(size, size, surface -> {
            surface.setColor(new Color(ink));
            surface.setStroke(new BasicStroke((float) (size / 9)));
            Path2D triangle = new Path2D.Double();
            boolean up = kind.equals("better");
            triangle.moveTo(size * 0.1, up ? size * 0.85 : size * 0.15);
            triangle.lineTo(size * 0.9, up ? size * 0.85 : size * 0.15);
            triangle.lineTo(size * 0.5, up ? size * 0.1 : size * 0.9);
            triangle.closePath();
            switch (kind) {
                case "better" -> surface.fill(triangle);
                case "worse" -> surface.draw(triangle);
                default -> {
                    surface.fill(new Rectangle2D.Double(size * 0.1, size * 0.28, size * 0.8, size * 0.14));
                    surface.fill(new Rectangle2D.Double(size * 0.1, size * 0.6, size * 0.8, size * 0.14));
                }
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
