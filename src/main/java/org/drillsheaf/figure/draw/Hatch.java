package org.drillsheaf.figure.draw;

/**
 * Strokes at 45 degrees, rising to the right, cut to where a muscle is seen. Together with the tint they tell where to feel
 * the work, also in black and white.
 */
final class Hatch {
    static final double STROKE = 0.22;
    /** Distance between strokes, millimetres. */
    static final double PITCH = 1.0;

    private static final double LEAST_STROKE = 0.5;
    /** Strokes end this much inside the border. */
    private static final double INSET = 0.11;

    private Hatch() {}

    static PathShape strokes(Buffers buffers, double mmPerPixel) {
        PathShape.Builder path = new PathShape.Builder();
        double step = PITCH * Math.sqrt(2) / mmPerPixel;
        int height = buffers.height;
        for (int line = (int) Math.ceil(-height / step); line * step < buffers.width; line++) {
            stroke(buffers, mmPerPixel, line * step, path);
        }
        return path.build();
    }

    /** One diagonal through the whole picture; {@code start} is its x at the lower edge. */
    private static void stroke(Buffers buffers, double mmPerPixel, double start, PathShape.Builder path) {
        int height = buffers.height;
        int from = -1;
        for (int i = 0; i <= height; i++) {
            int x = (int) Math.floor(start + i + 0.5);
            int y = height - 1 - i;
            boolean inside = y >= 0 && x >= 0 && x < buffers.width && buffers.muscle[y * buffers.width + x] > 0;
            if (inside && from < 0) {
                from = i;
            } else if (!inside && from >= 0) {
                double first = from + INSET / mmPerPixel;
                double last = i - INSET / mmPerPixel;
                if ((last - first) * mmPerPixel * Math.sqrt(2) > LEAST_STROKE) {
                    path.moveTo((start + first + 0.5) * mmPerPixel, (height - first) * mmPerPixel);
                    path.lineTo((start + last + 0.5) * mmPerPixel, (height - last) * mmPerPixel);
                }
                from = -1;
            }
        }
    }
}
