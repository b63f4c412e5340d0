package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.util.List;
import org.drillsheaf.figure.draw.DrawnPath.Role;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The light comes from one side, so only the lines are mirrored, not the shade. */
class MirroredPictureTest {
    private static final FigureDrawer DRAWER = new FigureDrawer();
    private static final DrawingStyle PAPER = DrawingStyle.paper(46);
    private static final double SAME_PLACE_MM = 0.05;
    /** Where a crease fades out, rounding decides at which pixel it ends. */
    private static final double FADING_END_MM = 0.3;

    @ParameterizedTest
    @CsvSource({"90, 0", "0, 0", "40, 14"})
    void linesOfTheMirroredPoseAreTheMirroredLines(double azimuth, double elevation) {
        SolvedPose pose = ExamplePoses.solved(ExamplePoses.STANDING);
        View view = new View(azimuth, elevation);
        Drawing written = DRAWER.draw(pose, view, PAPER, Annotations.NONE);
        Drawing mirrored = DRAWER.draw(pose.mirrored(), view.mirrored(), PAPER, Annotations.NONE);
        List<Shape> ink = ink(written);
        List<Shape> other = ink(mirrored);
        List<double[]> borders =
                other.stream().flatMap(shape -> Ink.pieces(shape).stream()).toList();
        double middles = middle(written) + middle(mirrored);
        double down = mirrored.anchors().get("body").top()
                - written.anchors().get("body").top();
        int off = 0;
        int all = 0;
        double worst = 0;
        for (Shape shape : ink) {
            for (double[] piece : Ink.pieces(shape)) {
                double x = middles - piece[2];
                double y = piece[3] + down;
                double distance = other.stream().anyMatch(o -> o.contains(x, y)) ? 0 : distance(x, y, borders);
                worst = Math.max(worst, distance);
                off += distance > SAME_PLACE_MM ? 1 : 0;
                all++;
            }
        }
        assertThat(off)
                .as("of %s places of ink away from their mirror image", all)
                .isLessThan(all / 200);
        assertThat(worst).as("ink farthest from its mirror image, mm").isLessThan(FADING_END_MM);
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
