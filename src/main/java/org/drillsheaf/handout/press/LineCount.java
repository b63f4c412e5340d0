package org.drillsheaf.handout.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * How wide a text is and how many lines it takes, by the letters of the paper's own fonts, so that a template can choose between
 * two places before the page is set. Leaves out kerning, which makes lines a little shorter. Safe for several threads.
 */
final class LineCount {
    private static final double MILLIMETRES_PER_POINT = 25.4 / 72;

    private final FontFiles files;
    private final Map<String, Letters> fonts = new ConcurrentHashMap<>();

    LineCount(FontFiles files) {
        this.files = files;
    }

    /** Lines that a text takes, broken at spaces and after hyphens; millimetres, points. */
    int lines(String text, double points, double millimetres, boolean bold, boolean rightToLeft) {
        int lines = 0;
        double left = 0;
        for (String word : text.strip().split("(?<=[ \\-])")) {
            double letters = width(word.stripTrailing(), points, bold, rightToLeft);
            if (lines == 0 || letters > left) {
                lines++;
                left = millimetres;
            }
            left -= width(word, points, bold, rightToLeft);
        }
        return lines;
    }

    /** Width on one line, in millimetres. */
    double width(String text, double points, boolean bold, boolean rightToLeft) {
        List<String> order =
                rightToLeft ? List.of("dejavu-sans", "source-sans-pro") : List.of("source-sans-pro", "dejavu-sans");
        double width = 0;
        for (int point : RightToLeft.shaped(text).codePoints().toArray()) {
            width += letter(order, bold, point);
        }
        return width * points * MILLIMETRES_PER_POINT;
    }

    /** In parts of the type's size; a sign that neither font has is an ideograph as wide as it is high. */
    private double letter(List<String> order, boolean bold, int point) {
        for (String name : order) {
            double width = font(name + (bold ? "-700" : "-400")).width(point);
            if (width >= 0) {
                return width;
            }
        }
        return 1;
    }

    private Letters font(String name) {
        return fonts.computeIfAbsent(
                name,
                n -> new Letters(files.at("res:font/" + n)
                        .orElseThrow(() -> new IllegalStateException("the paper has no font " + n))));
    }

    /** Widths of one font, worked out once. */
    private static final class Letters {
        private final TrueTypeFont font;
        private final CmapLookup glyphs;
        private final Map<Integer, Double> widths = new ConcurrentHashMap<>();

        Letters(byte[] file) {
            try {
                font = new TTFParser().parse(new RandomAccessReadBuffer(file));
                glyphs = font.getUnicodeCmapLookup();
            } catch (IOException e) {
                throw new UncheckedIOException("a font of the paper cannot be read", e);
            }
        }

        /** Below 0 when the font does not have the sign. */
        double width(int point) {
            return widths.computeIfAbsent(point, this::read);
        }

        private synchronized double read(int point) {
            try {
                int glyph = glyphs.getGlyphId(point);
                return glyph == 0 ? -1 : font.getAdvanceWidth(glyph) / (double) font.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException("a font of the paper cannot be read", e);
            }
        }
    }
}
