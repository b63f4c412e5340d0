package org.drillsheaf.figure.draw;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;

/** Paints a drawing onto a Java 2D surface, be it a picture or a page. */
public final class DrawingPainter {
    private DrawingPainter() {}

    /**
     * Paints with the upper left corner of the drawing at the origin.
     *
     * @param unitsPerMm units of the surface in a millimetre: 72/25.4 on a page in points
     */
    public static void paint(Drawing drawing, Graphics2D surface, double unitsPerMm) {
        Graphics2D g = (Graphics2D) surface.create();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.scale(unitsPerMm, unitsPerMm);
            for (DrawnPath path : drawing.paths()) {
                paint(path, g);
            }
        } finally {
            g.dispose();
        }
    }

    private static void paint(DrawnPath path, Graphics2D g) {
        Path2D shape = path2d(path.shape());
        if (path.fill() != DrawnPath.NONE) {
            int opacity = (int) Math.round(path.fillOpacity() * 255);
            g.setColor(new Color(path.fill() & 0xFFFFFF | opacity << 24, true));
            g.fill(shape);
        }
        if (path.stroke() != DrawnPath.NONE) {
            g.setColor(new Color(path.stroke()));
            g.setStroke(new BasicStroke((float) path.strokeWidth(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(shape);
        }
    }

    private static Path2D path2d(PathShape shape) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        shape.visit(new PathShape.Visitor() {
            @Override
            public void moveTo(double x, double y) {
                path.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                path.lineTo(x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                path.curveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                path.closePath();
            }
        });
        return path;
    }
}
