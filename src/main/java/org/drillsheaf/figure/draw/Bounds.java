package org.drillsheaf.figure.draw;

import org.drillsheaf.figure.body.RoundedBox;
import org.drillsheaf.figure.body.Solid;
import org.drillsheaf.figure.body.Vec3;

/** A simple body around a solid, to tell early which rays cannot meet it. Statures. */
sealed interface Bounds {
    static Bounds of(Solid solid) {
        if (solid instanceof RoundedBox box) {
            Vec3 x = box.frame().axisX().times(box.half().x());
            Vec3 y = box.frame().axisY().times(box.half().y());
            Vec3 z = box.frame().axisZ().times(box.half().z());
            return new Block(
                    new double[] {
                        box.centre().x(), box.centre().y(), box.centre().z()
                    },
                    new double[] {x.x(), x.y(), x.z(), y.x(), y.y(), y.z(), z.x(), z.y(), z.z()});
        }
        Vec3 from = solid.bounds().from();
        Vec3 to = solid.bounds().to();
        return new Capsule(
                from.x(),
                from.y(),
                from.z(),
                to.x(),
                to.y(),
                to.z(),
                solid.bounds().radius());
    }

    /** How far a point of the projection plane is outside the projected bounds; negative inside. */
    double clearance(double planeX, double planeY);

    /** Greatest depth, towards the viewer. */
    double nearest();

    double farthest();

    /** Rectangle on the projection plane; only of projected bounds. */
    Extent extent();

    /** The same bounds in the axes of the page: right, up, towards the viewer. */
    Bounds projected(Camera camera);

    /** A rectangle on the projection plane, y up. */
    record Extent(double minX, double minY, double maxX, double maxY) {}

    /** Everything within a radius of the line between two ends. */
    record Capsule(double ax, double ay, double az, double bx, double by, double bz, double radius) implements Bounds {
        @Override
        public double clearance(double planeX, double planeY) {
            return Segments.distance(planeX, planeY, ax, ay, bx, by) - radius;
        }

        @Override
        public double nearest() {
            return Math.max(az, bz) + radius;
        }

        @Override
        public double farthest() {
            return Math.min(az, bz) - radius;
        }

        @Override
        public Extent extent() {
            return new Extent(
                    Math.min(ax, bx) - radius,
                    Math.min(ay, by) - radius,
                    Math.max(ax, bx) + radius,
                    Math.max(ay, by) + radius);
        }

        @Override
        public Capsule projected(Camera camera) {
            return new Capsule(
                    camera.right(ax, ay, az),
                    camera.up(ax, ay, az),
                    camera.toward(ax, ay, az),
                    camera.right(bx, by, bz),
                    camera.up(bx, by, bz),
                    camera.toward(bx, by, bz),
                    radius);
        }
    }

    /**
     * A box.
     *
     * @param centre three numbers
     * @param halfAxes three vectors from the centre to the middle of a face, nine numbers
     */
    record Block(double[] centre, double[] halfAxes) implements Bounds {
        @Override
        public double clearance(double planeX, double planeY) {
            double worst = Double.NEGATIVE_INFINITY;
            for (int side = 0; side < 9; side += 3) {
                double length = Segments.length(halfAxes[side], halfAxes[side + 1]);
                if (length < 1e-6) {
                    continue;
                }
                double nx = -halfAxes[side + 1] / length;
                double ny = halfAxes[side] / length;
                double extent = 0;
                for (int other = 0; other < 9; other += 3) {
                    extent += Math.abs(halfAxes[other] * nx + halfAxes[other + 1] * ny);
                }
                double offset = Math.abs((planeX - centre[0]) * nx + (planeY - centre[1]) * ny);
                worst = Math.max(worst, offset - extent);
            }
            return worst;
        }

        @Override
        public double nearest() {
            return centre[2] + depthExtent();
        }

        @Override
        public double farthest() {
            return centre[2] - depthExtent();
        }

        private double depthExtent() {
            return Math.abs(halfAxes[2]) + Math.abs(halfAxes[5]) + Math.abs(halfAxes[8]);
        }

        @Override
        public Extent extent() {
            double dx = Math.abs(halfAxes[0]) + Math.abs(halfAxes[3]) + Math.abs(halfAxes[6]);
            double dy = Math.abs(halfAxes[1]) + Math.abs(halfAxes[4]) + Math.abs(halfAxes[7]);
            return new Extent(centre[0] - dx, centre[1] - dy, centre[0] + dx, centre[1] + dy);
        }

        @Override
        public Block projected(Camera camera) {
            double[] turned = new double[9];
            for (int side = 0; side < 9; side += 3) {
                turn(camera, halfAxes, side, turned);
            }
            double[] moved = new double[3];
            turn(camera, centre, 0, moved);
            return new Block(moved, turned);
        }

        private static void turn(Camera camera, double[] from, int at, double[] to) {
            to[at] = camera.right(from[at], from[at + 1], from[at + 2]);
            to[at + 1] = camera.up(from[at], from[at + 1], from[at + 2]);
            to[at + 2] = camera.toward(from[at], from[at + 1], from[at + 2]);
        }
    }
}
