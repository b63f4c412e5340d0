package org.drillsheaf.figure.draw;

import java.awt.Shape;
import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.figure.draw.DrawnPath.Role;

/** Looks at what a drawing puts on paper. */
final class Ink {
    private Ink() {}

    static List<DrawnPath> of(Drawing drawing, Role role) {
        return drawing.paths().stream().filter(path -> path.role() == role).toList();
    }

    static Path2D outline(PathShape shape) {
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

    /** Straight pieces of a shape, four numbers each: from x, y to x, y. */
    static List<double[]> pieces(PathShape shape) {
        return pieces(outline(shape));
    }

    static List<double[]> pieces(Shape shape) {
        List<double[]> pieces = new ArrayList<>();
        PathIterator it = new FlatteningPathIterator(shape.getPathIterator(null), 0.003);
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (; !it.isDone(); it.next()) {
            int kind = it.currentSegment(c);
            if (kind == PathIterator.SEG_MOVETO) {
                startX = c[0];
                startY = c[1];
            } else {
                double toX = kind == PathIterator.SEG_CLOSE ? startX : c[0];
                double toY = kind == PathIterator.SEG_CLOSE ? startY : c[1];
                pieces.add(new double[] {x, y, toX, toY});
            }
            x = kind == PathIterator.SEG_CLOSE ? startX : c[0];
            y = kind == PathIterator.SEG_CLOSE ? startY : c[1];
        }
        return pieces;
    }

    static List<double[]> pieces(Drawing drawing, Role role) {
        return of(drawing, role).stream()
                .flatMap(path -> pieces(path.shape()).stream())
                .toList();
    }

    /** Whether the white body, limbs and all, covers a point. */
    static boolean isBody(Drawing drawing, double x, double y) {
        return outline(of(drawing, Role.BODY).get(0).shape()).contains(x, y);
    }
}
