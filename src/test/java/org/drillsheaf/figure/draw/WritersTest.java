package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Set;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.drillsheaf.figure.draw.DrawnPath.Role;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.api.Test;

class WritersTest {
    private static final FigureDrawer DRAWER = new FigureDrawer();
    private static final SolvedPose POSE = ExamplePoses.solved(ExamplePoses.WALL_LEAN);

    private static Drawing drawn(double scale) {
        return DRAWER.draw(POSE, View.SIDE, DrawingStyle.paper(scale), Annotations.NONE);
    }

    @Test
    void svgUsesPathsOnly() {
        String svg = DrawingSvg.write(drawn(46));
        assertThat(svg).doesNotContain("<text", "pattern", "clip", "mask", "filter", "style=");
        assertThat(svg.lines().skip(1)).allMatch(line -> line.startsWith("<path ") || line.equals("</svg>"));
    }

    @Test
    void lineWidthsAreTheSameAtEveryScale() {
        assertThat(widths(drawn(38), Role.PROP_LINE)).isEqualTo(widths(drawn(92), Role.PROP_LINE));
        assertThat(widths(drawn(38), Role.HATCH)).isEqualTo(widths(drawn(92), Role.HATCH));
        assertThat(widest(drawn(38))).isEqualTo(widest(drawn(92)));
    }

    private static Set<Double> widths(Drawing drawing, Role role) {
        return Ink.of(drawing, role).stream()
                .map(DrawnPath::strokeWidth)
                .filter(width -> width > 0)
                .map(width -> Math.rint(width * 20) / 20)
                .collect(Collectors.toSet());
    }

    private static double widest(Drawing drawing) {
        return Ink.of(drawing, Role.LINE).stream()
                .mapToDouble(DrawnPath::strokeWidth)
                .max()
                .orElseThrow();
    }

    @Test
    void pngHasTheSizeAndTheInkOfTheDrawing() throws IOException {
        Drawing drawing = drawn(46);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(DrawingPng.write(drawing, 10)));
        assertThat(image.getWidth()).isEqualTo((int) Math.ceil(drawing.widthMm() * 10));
        assertThat(image.getRGB(0, 0) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        Box body = drawing.anchors().get("body");
        int dark = 0;
        for (int y = (int) (body.top() * 10); y < body.bottom() * 10; y++) {
            for (int x = (int) (body.left() * 10); x < body.right() * 10; x++) {
                dark += (image.getRGB(x, y) & 0xFF) < 0x40 ? 1 : 0;
            }
        }
        double share = dark / (body.width() * body.height() * 100);
        assertThat(share).isBetween(0.03, 0.25);
    }

    @Test
    void aRepeatedPictureComesFromTheCache() {
        DrawingCache cache = new DrawingCache(DRAWER, 4);
        DrawingStyle style = DrawingStyle.paper(46).with(DrawingStyle.Quality.PREVIEW);
        Drawing first = cache.draw(POSE, View.SIDE, style, Annotations.NONE);
        SolvedPose again = ExamplePoses.solved(ExamplePoses.WALL_LEAN);
        assertThat(cache.draw(again, View.SIDE, style, Annotations.NONE)).isSameAs(first);
        assertThat(cache.draw(again, View.FRONT, style, Annotations.NONE)).isNotSameAs(first);
        assertThat(cache.draw(again.mirrored(), View.SIDE, style, Annotations.NONE))
                .isNotSameAs(first);
    }
}
