package org.drillsheaf.figure.draw;

/** Widths of lines on paper, millimetres; the same at every scale. Common practice of line drawing, chosen by eye. */
final class LineWeights {
    private static final double OUTLINE = 0.36;
    private static final double BODY_OVER_PROP = 0.34;
    private static final double LEAST_OVERLAP = 0.20;
    private static final double OVERLAP_GROWTH = 0.15;
    private static final double CREASE = 0.30;
    private static final double HEM = 0.17;
    private static final double DIGITS = 0.13;
    private static final double PROP_OUTLINE = 0.26;
    private static final double PROP_INNER = 0.23;

    private LineWeights() {}

    static double of(Edges edges, int slot) {
        byte kind = edges.kind[slot];
        boolean prop = edges.ofProp[slot];
        if (edges.bodyOverProp[slot] && kind <= Edges.CREASE) {
            return BODY_OVER_PROP;
        }
        return switch (kind) {
            case Edges.OUTLINE -> prop ? PROP_OUTLINE : OUTLINE;
            case Edges.OVERLAP -> prop ? PROP_INNER : overlap(edges.step[slot]);
            case Edges.CREASE -> prop ? PROP_INNER : CREASE;
            case Edges.HEM -> edges.betweenDigits[slot] ? DIGITS : HEM;
            default -> PROP_INNER;
        };
    }

    /** The deeper the step, the stronger the line. */
    private static double overlap(double step) {
        return LEAST_OVERLAP + OVERLAP_GROWTH * Segments.clamp((step - 0.008) / 0.05, 0, 1);
    }
}
