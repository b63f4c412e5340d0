package org.drillsheaf.handout.paint;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * The signs of the page. Each one says by its shape what it says by its colour, so that it survives a grey print and a copy of
 * that print; words beside it say the same once more.
 *
 * @param ink colour of signs as 0xRRGGBB
 * @param accent colour of what moves
 * @param figureTint ground under the hatch of a working muscle
 * @param grey colour of quiet lines
 */
public record Signs(int ink, int accent, int figureTint, int grey) {
    private static final int WHITE = 0xFFFFFF;

    /** Stop sign with an exclamation mark, white on ink. */
    public Picture stopOnInk(double size) {
        return stop(size, WHITE, ink);
    }

    /** Stop sign with an exclamation mark, ink on white. */
    public Picture stopOnWhite(double size) {
        return stop(size, ink, WHITE);
    }

    private Picture stop(double size, int sign, int mark) {
        return new Picture(size, size, surface -> {
            surface.scale(size / 100, size / 100);
            Path2D octagon = path(31, 3, 69, 3, 97, 31, 97, 69, 69, 97, 31, 97, 3, 69, 3, 31);
            octagon.closePath();
            fill(surface, octagon, sign);
            draw(surface, octagon, sign, 6, BasicStroke.JOIN_MITER);
            fill(surface, new Rectangle2D.Double(43.5, 22, 13, 36), mark);
            fill(surface, new Ellipse2D.Double(42.5, 68.5, 15, 15), mark);
        });
    }

    /** One tile of the strip beside the client's own cautions; tiles join without a seam. */
    public Picture hazardTile() {
        return new Picture(5, 4, surface -> {
            surface.clip(new Rectangle2D.Double(0, 0, 5, 4));
            for (double y = 0; y <= 12; y += 4) {
                draw(surface, new Line2D.Double(-1, y + 1, 6, y - 6), ink, 1.1, BasicStroke.JOIN_MITER);
            }
        });
    }

    /** The hatch that marks a working muscle in the pictures. */
    public Picture feel(double size) {
        return new Picture(size, size, surface -> {
            surface.scale(size / 44, size / 44);
            Rectangle2D box = new Rectangle2D.Double(2, 2, 40, 40);
            fill(surface, box, figureTint);
            Shape clip = surface.getClip();
            surface.clip(box);
            for (double[] line : new double[][] {{-2, 22, 22, -2}, {0, 44, 44, 0}, {22, 46, 46, 22}}) {
                draw(surface, new Line2D.Double(line[0], line[1], line[2], line[3]), accent, 4, BasicStroke.JOIN_MITER);
            }
            surface.setClip(clip);
            draw(surface, box, ink, 4, BasicStroke.JOIN_MITER);
        });
    }

    /** A crossed box. */
    public Picture notFeel(double size) {
        return new Picture(size, size, surface -> {
            surface.scale(size / 44, size / 44);
            draw(surface, new Rectangle2D.Double(2, 2, 40, 40), ink, 4, BasicStroke.JOIN_MITER);
            draw(surface, new Line2D.Double(11, 11, 33, 33), ink, 6, BasicStroke.JOIN_MITER);
            draw(surface, new Line2D.Double(33, 11, 11, 33), ink, 6, BasicStroke.JOIN_MITER);
        });
    }

    /** An empty box to tick. */
    public Picture tick(double size) {
        return new Picture(
                size,
                size,
                surface -> draw(
                        surface,
                        new Rectangle2D.Double(0.2, 0.2, size - 0.4, size - 0.4),
                        ink,
                        0.35,
                        BasicStroke.JOIN_MITER));
    }

    /**
     * Three squares, as many filled as the strength.
     *
     * @param edge of a square in millimetres
     */
    public Picture strength(int strength, double edge) {
        double step = edge * 1.25;
        return new Picture(2 * step + edge, edge, surface -> {
            for (int square = 0; square < 3; square++) {
                Rectangle2D box = new Rectangle2D.Double(square * step + 0.15, 0.15, edge - 0.3, edge - 0.3);
                if (square < strength) {
                    fill(surface, box, ink);
                }
                draw(surface, box, ink, 0.3, BasicStroke.JOIN_MITER);
            }
        });
    }

    /**
     * Ten cells, those of the wanted effort filled.
     *
     * @param height of a cell in millimetres
     */
    public Picture effort(int from, int to, double height, boolean rightToLeft) {
        double width = height * 2.2 / 3;
        double gap = height * 0.2;
        return new Picture(10 * width + 9 * gap, height, surface -> {
            for (int cell = 1; cell <= 10; cell++) {
                int place = rightToLeft ? 10 - cell : cell - 1;
                Rectangle2D box =
                        new Rectangle2D.Double(place * (width + gap) + 0.13, 0.13, width - 0.26, height - 0.26);
                if (cell >= Math.max(1, from) && cell <= to) {
                    fill(surface, box, ink);
                }
                draw(surface, box, ink, 0.26, BasicStroke.JOIN_MITER);
            }
        });
    }

    /**
     * One breath as a line: up is in, down is out, flat is the wait. Lengths stand in proportion to the parts.
     *
     * @param in length of the breath in, in millimetres
     * @param out length of the breath out
     * @param pause length of the wait; 0 for none
     */
    public Picture breath(double in, double out, double pause, double height, boolean rightToLeft) {
        double width = in + out + pause;
        return new Picture(width, height, surface -> {
            if (rightToLeft) {
                surface.translate(width, 0);
                surface.scale(-1, 1);
            }
            double low = height - 1;
            dashed(surface, new Line2D.Double(in, 1, in, height));
            Path2D line = path(0.5, low, in, 1, in + out - (pause > 0 ? 0 : 0.5), low);
            if (pause > 0) {
                dashed(surface, new Line2D.Double(in + out, low - 2, in + out, height));
                line.lineTo(width - 0.5, low);
            }
            surface.setColor(new Color(accent));
            surface.setStroke(new BasicStroke(0.9f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            surface.draw(line);
        });
    }

    private void dashed(Graphics2D surface, Shape line) {
        surface.setColor(new Color(grey));
        surface.setStroke(
                new BasicStroke(0.25f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {0.9f, 0.9f}, 0));
        surface.draw(line);
    }

    private static Path2D path(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        return path;
    }

    private static void fill(Graphics2D surface, Shape shape, int colour) {
        surface.setColor(new Color(colour));
        surface.fill(shape);
    }

    private static void draw(Graphics2D surface, Shape shape, int colour, double width, int join) {
        surface.setColor(new Color(colour));
        surface.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, join));
        surface.draw(shape);
    }
}
