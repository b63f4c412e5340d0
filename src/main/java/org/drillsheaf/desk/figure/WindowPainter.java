package org.drillsheaf.desk.figure;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawnPath;
import org.drillsheaf.figure.draw.PathShape;

/** Paints a drawing onto a canvas of the window, from the same paths as paper. */
public final class WindowPainter {
    private WindowPainter() {}

    /**
     * Paints with the upper left corner of the drawing at the origin of the surface's transform.
     *
     * @param unitsPerMm units of the surface in a millimetre of the drawing
     */
    public static void paint(Drawing drawing, GraphicsContext surface, double unitsPerMm) {
        surface.save();
        surface.scale(unitsPerMm, unitsPerMm);
        surface.setFillRule(FillRule.EVEN_ODD);
        surface.setLineCap(StrokeLineCap.ROUND);
        surface.setLineJoin(StrokeLineJoin.ROUND);
        for (DrawnPath path : drawing.paths()) {
            trace(path.shape(), surface);
            if (path.fill() != DrawnPath.NONE) {
                surface.setFill(colour(path.fill(), path.fillOpacity()));
                surface.fill();
            }
            if (path.stroke() != DrawnPath.NONE) {
                surface.setStroke(colour(path.stroke(), 1));
                surface.setLineWidth(path.strokeWidth());
                surface.stroke();
            }
        }
        surface.restore();
    }

    private static Color colour(int rgb, double opacity) {
        return Color.rgb(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, opacity);
    }

    private static void trace(PathShape shape, GraphicsContext surface) {
        surface.beginPath();
        shape.visit(new PathShape.Visitor() {
            @Override
            public void moveTo(double x, double y) {
                surface.moveTo(x, y);
            }

            @Override
            public void lineTo(double x, double y) {
                surface.lineTo(x, y);
            }

            @Override
            public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
                surface.bezierCurveTo(x1, y1, x2, y2, x, y);
            }

            @Override
            public void close() {
                surface.closePath();
            }
        });
    }
}
