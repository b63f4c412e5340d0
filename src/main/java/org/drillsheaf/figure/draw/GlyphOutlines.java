package org.drillsheaf.figure.draw;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
import com.ibm.icu.text.Bidi;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.PathIterator;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;

/**
 * Short texts as outlines, so that a picture needs no font where it is shown. The first font that has all letters is taken;
 * the last one knows the digits of other scripts.
 */
final class GlyphOutlines {
    private static final String SOURCE_SANS = "/fonts/ttf/SourceSansPro/SourceSansPro-";
    private static final String DEJAVU = "/net/sf/jasperreports/fonts/dejavu/DejaVuSans";
    /** Size at which outlines are taken from the font; large enough that none is fitted to pixels. */
    private static final float UNITS = 1000;

    private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);
    static final double MM_PER_POINT = 25.4 / 72;

    private final List<Font> fonts;

    private GlyphOutlines(String... resources) {
        fonts = Arrays.stream(resources).map(GlyphOutlines::load).toList();
    }

    static GlyphOutlines bold() {
        return new GlyphOutlines(SOURCE_SANS + "Bold.ttf", DEJAVU + "-Bold.ttf", DEJAVU + ".ttf");
    }

    static GlyphOutlines semibold() {
        return new GlyphOutlines(SOURCE_SANS + "SemiBold.ttf", DEJAVU + ".ttf");
    }

    /**
     * A text set from its lower left corner.
     *
     * @param shape outlines with the baseline at y = 0, starting at x = 0, millimetres
     * @param inkBox box of the ink
     */
    record Text(PathShape shape, double width, Box inkBox) {}

    Text text(String words, double sizeMm) {
        String drawn = inDrawingOrder(words);
        Font font = fonts.stream()
                .filter(f -> f.canDisplayUpTo(drawn) < 0)
                .findFirst()
                .orElse(fonts.get(0));
        GlyphVector glyphs = font.createGlyphVector(EXACT, drawn);
        double scale = sizeMm / UNITS;
        PathShape.Builder path = new PathShape.Builder();
        append(path, glyphs.getOutline().getPathIterator(null), scale);
        PathShape shape = path.build();
        return new Text(shape, glyphs.getLogicalBounds().getWidth() * scale, shape.box());
    }

    /** Arabic letters joined, and everything from left to right as the eye meets it; other texts stay as they are. */
    private static String inDrawingOrder(String words) {
        if (!Bidi.requiresBidi(words.toCharArray(), 0, words.length())) {
            return words;
        }
        try {
            String joined = new ArabicShaping(ArabicShaping.LETTERS_SHAPE
                            | ArabicShaping.TEXT_DIRECTION_LOGICAL
                            | ArabicShaping.LENGTH_GROW_SHRINK)
                    .shape(words);
            return new Bidi(joined, Bidi.RTL).writeReordered(Bidi.DO_MIRRORING | Bidi.REMOVE_BIDI_CONTROLS);
        } catch (ArabicShapingException e) {
            throw new IllegalStateException("text of any length can be joined when it may grow", e);
        }
    }

    private static void append(PathShape.Builder path, PathIterator outline, double scale) {
        double[] c = new double[6];
        double x = 0;
        double y = 0;
        for (; !outline.isDone(); outline.next()) {
            int kind = outline.currentSegment(c);
            for (int i = 0; i < c.length; i++) {
                c[i] *= scale;
            }
            switch (kind) {
                case PathIterator.SEG_MOVETO -> path.moveTo(c[0], c[1]);
                case PathIterator.SEG_LINETO -> path.lineTo(c[0], c[1]);
                case PathIterator.SEG_QUADTO ->
                    path.curveTo(
                            x + 2 * (c[0] - x) / 3,
                            y + 2 * (c[1] - y) / 3,
                            c[2] + 2 * (c[0] - c[2]) / 3,
                            c[3] + 2 * (c[1] - c[3]) / 3,
                            c[2],
                            c[3]);
                case PathIterator.SEG_CUBICTO -> path.curveTo(c[0], c[1], c[2], c[3], c[4], c[5]);
                default -> path.close();
            }
            int last = kind == PathIterator.SEG_QUADTO ? 2 : kind == PathIterator.SEG_CUBICTO ? 4 : 0;
            if (kind != PathIterator.SEG_CLOSE) {
                x = c[last];
                y = c[last + 1];
            }
        }
    }

    private static Font load(String resource) {
        try (InputStream in = GlyphOutlines.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the font " + resource + " is missing from the class path");
            }
            return Font.createFont(Font.TRUETYPE_FONT, new BufferedInputStream(in))
                    .deriveFont(UNITS);
        } catch (IOException e) {
            throw new UncheckedIOException("the font " + resource + " cannot be read", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the font " + resource + " is damaged", e);
        }
    }
}
