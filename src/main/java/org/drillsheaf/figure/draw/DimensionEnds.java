package org.drillsheaf.figure.draw;

import java.util.Optional;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.pose.Plane;

/** The two ends of a measure in space; they differ along one axis only. */
record DimensionEnds(Vec3 from, Vec3 to) {

    /** Empty when a name is not known, or the surface does not stand across the axis. */
    static Optional<DimensionEnds> of(FigureScene figure, Annotations.Dimension dimension) {
        Optional<Vec3> of = figure.pose().findPoint(dimension.of());
        Vec3 axis =
                switch (dimension.along()) {
                    case 'x' -> Vec3.X;
                    case 'y' -> Vec3.Y;
                    default -> Vec3.Z;
                };
        Optional<Double> offset = of.flatMap(point -> offset(figure, point, dimension.from(), axis));
        return offset.map(distance -> new DimensionEnds(of.get(), of.get().plus(axis.times(distance))));
    }

    private static Optional<Double> offset(FigureScene figure, Vec3 point, String from, Vec3 axis) {
        Optional<Vec3> other = figure.pose().findPoint(from);
        if (other.isPresent()) {
            return Optional.of(other.get().minus(point).dot(axis));
        }
        Optional<Plane> plane = figure.plane(from);
        if (plane.isEmpty()) {
            return Optional.empty();
        }
        double across = plane.get().normal().dot(axis);
        return Math.abs(across) < 0.5
                ? Optional.empty()
                : Optional.of(-plane.get().height(point) / across);
    }
}
