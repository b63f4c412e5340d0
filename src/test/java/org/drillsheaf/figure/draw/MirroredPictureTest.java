package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.util.List;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.draw.DrawnPath.Role;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The light comes from one side, so only the lines are mirrored, not the shade. */
class MirroredPictureTest {
    private static final FigureDrawer DRAWER = new FigureDrawer();
    private static final DrawingStyle PAPER = DrawingStyle.paper(46);
    private static final double SAME_PLACE_MM = 0.05;

    private enum Example {
        STANDING(ExamplePoses.STANDING),
        WALL_LEAN(ExamplePoses.WALL_LEAN),
        SIDE_LYING_LIFT(ExamplePoses.SIDE_LYING_LIFT);

        private final String yaml;

        Example(String yaml) {
            this.yaml = yaml;
        }
    }

    @ParameterizedTest
    @CsvSource({
        "STANDING, AVERAGE, 90, 0",
        "STANDING, LARGER, 0, 0",
        "STANDING, OLDER, 40, 14",
        "WALL_LEAN, AVERAGE, 0, 0",
        "WALL_LEAN, LARGER, 42, 14",
        "SIDE_LYING_LIFT, AVERAGE, 40, 20",
        "SIDE_LYING_LIFT, OLDER, 0, 90"
    })
    void linesOfTheMirroredPoseAreTheMirroredLines(Example example, BodyBuild build, double azimuth, double elevation) {
        SolvedPose pose = ExamplePoses.solved(example.yaml, build);
        View view = new View(azimuth, elevation);
        Drawing written = DRAWER.draw(pose, view, PAPER, Annotations.NONE);
        Drawing mirrored = DRAWER.draw(pose.mirrored(), view.mirrored(), PAPER, Annotations.NONE);
        assertThat(farthestInk(written, mirrored))
                .as("ink farthest from its mirror image, mm")
                .isLessThan(SAME_PLACE_MM);
        assertThat(farthestInk(mirrored, written))
                .as("ink of the mirror image farthest from what is mirrored, mm")
                .isLessThan(SAME_PLACE_MM);
    }

    private static double farthestInk(Drawing drawing, Drawing mirrored) {
        List<Shape> other = ink(mirrored);
        List<double[]> borders =
                other.stream().flatMap(shape -> Ink.pieces(shape).stream()).toList();
        double middles = middle(drawing) + middle(mirrored);
        double down = mirrored.anchors().get("body").top()
                - drawing.anchors().get("body").top();
        double worst = 0;
        for (Shape shape : ink(drawing)) {
            for (double[] piece : Ink.pieces(shape)) {
                double x = middles - piece[2];
                double y = piece[3] + down;
                worst = Math.max(worst, other.stream().anyMatch(o -> o.contains(x, y)) ? 0 : distance(x, y, borders));
            }
        }
        return worst;
    }

    /** Lines as areas of ink. */
    private static List<Shape> ink(Drawing drawing) {
        return Ink.of(drawing, Role.LINE).stream().map(MirroredPictureTest::ink).toList();
    }

    private static Shape ink(DrawnPath path) {
        Shape outline = Ink.outline(path.shape());
        return path.fill() == DrawnPath.NONE
                ? new BasicStroke((float) path.strokeWidth(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND)
                        .createStrokedShape(outline)
                : outline;
    }

    private static double middle(Drawing drawing) {
        Box body = drawing.anchors().get("body");
        return (body.left() + body.right()) / 2;
    }

    private static double distance(double x, double y, List<double[]> pieces) {
        return pieces.stream()
                .mapToDouble(p -> Segments.distance(x, y, p[0], p[1], p[2], p[3]))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
