package org.drillsheaf.figure.draw;

/**
 * How a picture is drawn.
 *
 * @param kind for whom
 * @param millimetresPerStature scale on paper: 46 upright, 50 lying, 38 for three side by side, 62 for authors; 10 to 400
 * @param keyDiscMm diameter of the disc around a number key; 5, in large print 8.4
 * @param keyDigitPoints size of its digit; 11, in large print 18
 * @param ghost whether the start pose is shown as a pale figure, when the pose has one
 * @param quality fineness of the tracing
 */
public record DrawingStyle(
        Kind kind,
        double millimetresPerStature,
        double keyDiscMm,
        double keyDigitPoints,
        boolean ghost,
        Quality quality) {

    /** For whom the picture is. */
    public enum Kind {
        /** Client pages: number keys and dimensions, no words, no degrees. */
        PAPER,
        /** Coaches and authors: labels and angle arcs. */
        AUTHOR
    }

    /** Fineness of the tracing. */
    public enum Quality {
        /** While somebody drags a joint. */
        PREVIEW(5),
        PRINT(10);

        final double pixelsPerMm;

        Quality(double pixelsPerMm) {
            this.pixelsPerMm = pixelsPerMm;
        }
    }

    public DrawingStyle {
        if (!(millimetresPerStature >= 10 && millimetresPerStature <= 400)) {
            throw new IllegalArgumentException("scale must be within 10 and 400 mm: " + millimetresPerStature);
        }
    }

    /** Client pages at normal print size. */
    public static DrawingStyle paper(double millimetresPerStature) {
        return new DrawingStyle(Kind.PAPER, millimetresPerStature, 5, 11, false, Quality.PRINT);
    }

    public static DrawingStyle author(double millimetresPerStature) {
        return new DrawingStyle(Kind.AUTHOR, millimetresPerStature, 5, 11, true, Quality.PRINT);
    }

    public DrawingStyle withGhost(boolean shown) {
        return new DrawingStyle(kind, millimetresPerStature, keyDiscMm, keyDigitPoints, shown, quality);
    }

    public DrawingStyle with(Quality fineness) {
        return new DrawingStyle(kind, millimetresPerStature, keyDiscMm, keyDigitPoints, ghost, fineness);
    }

    /** Keys for large print: 8.4 mm and 18 pt. */
    public DrawingStyle withKeys(double discMm, double digitPoints) {
        return new DrawingStyle(kind, millimetresPerStature, discMm, digitPoints, ghost, quality);
    }
}
