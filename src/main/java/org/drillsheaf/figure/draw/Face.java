package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import org.drillsheaf.figure.body.Rotation;
import org.drillsheaf.figure.body.Vec3;

/**
 * A plain, friendly face that tells where the person looks: eyes, raised brows, a small upturned mouth. The features lie on the
 * surface of the head; what of them cannot be seen is left out.
 */
final class Face {
    private static final double EYE_UP = .0245;
    private static final double EYE_ASIDE = .0182;
    private static final double EYE_HALF_WIDTH = .0042;
    private static final double EYE_HALF_HEIGHT = .0046;
    private static final double BROW_UP = .0388;
    private static final double BROW_ARCH = .0030;
    private static final double BROW_HALF_WIDTH = .0084;
    private static final double MOUTH_UP = -.0098;
    private static final double MOUTH_CURVE = .0038;
    private static final double MOUTH_HALF_WIDTH = .0128;
    /** Strokes grow with the figure, but never get thinner than this. */
    private static final double STROKE = .0026;

    private static final double LEAST_STROKE_MM = .17;
    private static final int STEPS = 12;
    private static final double OUTSIDE_FACE = .09;
    private static final double INSIDE_FACE = .02;
    /** A feature is seen while the surface in front of it is not nearer than this. */
    private static final double SEEN_WITHIN = .004;

    private final Scene scene;
    private final Page page;
    private final Rotation head;
    private final Vec3 skullBase;

    Face(Scene scene, Page page, Rotation head, Vec3 skullBase) {
        this.scene = scene;
        this.page = page;
        this.head = head;
        this.skullBase = skullBase;
    }

    List<DrawnPath> paths() {
        List<DrawnPath> paths = new ArrayList<>();
        double stroke = Math.max(LEAST_STROKE_MM, STROKE * page.mmPerStature());
        for (int side = -1; side <= 1; side += 2) {
            eye(side, paths);
            double[][] brow = new double[STEPS + 1][];
            for (int i = 0; i <= STEPS; i++) {
                double t = 2.0 * i / STEPS - 1;
                brow[i] = new double[] {
                    BROW_UP + BROW_ARCH * (1 - t * t), side * (EYE_ASIDE + .0006 + t * BROW_HALF_WIDTH)
                };
            }
            stroke(brow, stroke * .85, paths);
        }
        double[][] mouth = new double[STEPS + 1][];
        for (int i = 0; i <= STEPS; i++) {
            double t = 2.0 * i / STEPS - 1;
            mouth[i] = new double[] {MOUTH_UP + MOUTH_CURVE * t * t, t * MOUTH_HALF_WIDTH};
        }
        stroke(mouth, stroke, paths);
        return paths;
    }

    private void eye(int side, List<DrawnPath> paths) {
        List<Page.Spot> ring = new ArrayList<>();
        for (int i = 0; i < 2 * STEPS; i++) {
            double angle = Math.PI * i / STEPS;
            Vec3 point = onFace(
                    EYE_UP + EYE_HALF_HEIGHT * StrictMath.sin(angle),
                    side * EYE_ASIDE + EYE_HALF_WIDTH * StrictMath.cos(angle));
            if (page.isSeen(point, SEEN_WITHIN)) {
                ring.add(page.spot(point));
            }
        }
        if (ring.size() > STEPS / 2) {
            PathShape.Builder path = new PathShape.Builder();
            CurveFit.ring(path, flat(ring), 0.03);
            paths.add(DrawnPath.filled(DrawnPath.Role.BODY, path.build(), Palette.INK));
        }
    }

    private void stroke(double[][] upAndAside, double width, List<DrawnPath> paths) {
        List<Page.Spot> run = new ArrayList<>();
        for (double[] place : upAndAside) {
            Vec3 point = onFace(place[0], place[1]);
            if (page.isSeen(point, SEEN_WITHIN)) {
                run.add(page.spot(point));
            }
        }
        if (run.size() > 3) {
            PathShape.Builder path = new PathShape.Builder();
            CurveFit.line(path, flat(run), 0.03);
            paths.add(DrawnPath.stroked(DrawnPath.Role.BODY, path.build(), Palette.INK, Math.rint(width * 100) / 100));
        }
    }

    private static double[] flat(List<Page.Spot> spots) {
        double[] flat = new double[2 * spots.size()];
        for (int i = 0; i < spots.size(); i++) {
            flat[2 * i] = spots.get(i).x();
            flat[2 * i + 1] = spots.get(i).y();
        }
        return flat;
    }

    /** The point of the face at a height and distance from the middle, looked for from the front. */
    private Vec3 onFace(double up, double aside) {
        double outside = OUTSIDE_FACE;
        double inside = INSIDE_FACE;
        for (int i = 0; i < 18; i++) {
            double middle = (outside + inside) / 2;
            if (scene.bodyDistance(at(middle, up, aside)) > 0) {
                outside = middle;
            } else {
                inside = middle;
            }
        }
        return at(outside, up, aside);
    }

    private Vec3 at(double front, double up, double aside) {
        return skullBase.plus(head.apply(front, up, aside));
    }
}
