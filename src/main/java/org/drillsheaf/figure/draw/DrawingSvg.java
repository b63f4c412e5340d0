package org.drillsheaf.figure.draw;

import java.util.Locale;

/**
 * Writes a drawing as SVG text that needs no pattern, clip, mask, filter, font or style sheet. One unit of the view box is a
 * hundredth of a millimetre.
 */
public final class DrawingSvg {
    private static final String END = "\"/>\n";

    private DrawingSvg() {}

    public static String write(Drawing drawing) {
        StringBuilder svg = new StringBuilder(1 << 15);
        svg.append(String.format(
                Locale.ROOT,
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.2fmm\" height=\"%.2fmm\" viewBox=\"0 0 %d %d\""
                        + " fill=\"none\" fill-rule=\"evenodd\" stroke-linecap=\"round\" stroke-linejoin=\"round\">\n",
                drawing.widthMm(),
                drawing.heightMm(),
                Math.round(drawing.widthMm() * 100),
                Math.round(drawing.heightMm() * 100)));
        DrawnPath before = null;
        for (DrawnPath path : drawing.paths()) {
            if (before != null && isSameStroke(before, path)) {
                svg.setLength(svg.length() - END.length());
            } else {
                style(svg, path);
            }
            svg.append(path.shape().svgData()).append(END);
            before = path;
        }
        return svg.append("</svg>\n").toString();
    }

    /** Lines of one width and colour that follow each other share an element; one ink over the other is not seen. */
    private static boolean isSameStroke(DrawnPath one, DrawnPath other) {
        return one.fill() == DrawnPath.NONE
                && other.fill() == DrawnPath.NONE
                && one.stroke() == other.stroke()
                && one.strokeWidth() == other.strokeWidth();
    }

    private static void style(StringBuilder svg, DrawnPath path) {
        svg.append("<path");
        if (path.fill() != DrawnPath.NONE) {
            svg.append(" fill=\"").append(colour(path.fill())).append('"');
            if (path.fillOpacity() < 1) {
                svg.append(" fill-opacity=\"").append(plain(path.fillOpacity())).append('"');
            }
        }
        if (path.stroke() != DrawnPath.NONE) {
            svg.append(" stroke=\"").append(colour(path.stroke()));
            svg.append("\" stroke-width=\"")
                    .append(Math.round(path.strokeWidth() * 100))
                    .append('"');
        }
        svg.append(" d=\"");
    }

    private static String colour(int rgb) {
        String six = String.format(Locale.ROOT, "%06X", rgb);
        boolean doubled =
                six.charAt(0) == six.charAt(1) && six.charAt(2) == six.charAt(3) && six.charAt(4) == six.charAt(5);
        return doubled ? "#" + six.charAt(0) + six.charAt(2) + six.charAt(4) : "#" + six;
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
