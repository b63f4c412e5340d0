package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import org.jspecify.annotations.Nullable;

/** Walks around areas of pixels and gives their borders as smooth rings, in pixels. */
final class Regions {
    /** Smaller areas are noise; the mouth of the smallest figure is larger. Boundaries. */
    private static final int LEAST_RING = 10;

    private final Edges edges;
    private final int width;
    private final int height;
    private final boolean[] inside;
    private final float @Nullable [] field;
    private final float threshold;
    private final boolean[] walked;

    private Regions(Edges edges, boolean[] inside, float @Nullable [] field, float threshold) {
        this.edges = edges;
        width = edges.width;
        height = edges.height;
        this.inside = inside;
        this.field = field;
        this.threshold = threshold;
        walked = new boolean[(height + 1) * width];
    }

    /** Borders of the pixels for which the test holds, as sharp as the refined lines. */
    static List<double[]> rings(Edges edges, IntPredicate test, double sigma) {
        return new Regions(edges, mask(edges, test), null, 0).trace(sigma);
    }

    /** Like {@link #rings}; where no line runs the border lies where a field crosses a threshold. */
    static List<double[]> rings(Edges edges, IntPredicate test, float[] field, float threshold, double sigma) {
        return new Regions(edges, mask(edges, test), field, threshold).trace(sigma);
    }

    private static boolean[] mask(Edges edges, IntPredicate test) {
        boolean[] mask = new boolean[edges.width * edges.height];
        for (int i = 0; i < mask.length; i++) {
            mask[i] = test.test(i);
        }
        return mask;
    }

    private boolean isInside(int x, int y) {
        return x >= 0 && y >= 0 && x < width && y < height && inside[y * width + x];
    }

    private List<double[]> trace(double sigma) {
        List<double[]> rings = new ArrayList<>();
        for (int y = 0; y <= height; y++) {
            for (int x = 0; x < width; x++) {
                if (!walked[y * width + x] && isInside(x, y) != isInside(x, y - 1)) {
                    double[] ring = isInside(x, y) ? ring(x, y, 1) : ring(x + 1, y, -1);
                    if (ring.length >= 2 * LEAST_RING) {
                        rings.add(Smoothing.points(ring, true, sigma));
                    }
                }
            }
        }
        return rings;
    }

    /** Walks one ring with the inside on the right hand, starting along a row. */
    private double[] ring(int startX, int startY, int startStep) {
        double[] points = new double[256];
        int count = 0;
        int x = startX;
        int y = startY;
        int dx = startStep;
        int dy = 0;
        while (true) {
            if (dx != 0) {
                int level = y * width + (dx > 0 ? x : x - 1);
                if (walked[level]) {
                    break;
                }
                walked[level] = true;
            }
            if (count + 2 > points.length) {
                points = Arrays.copyOf(points, 2 * points.length);
            }
            put(points, count, x, y, dx, dy);
            count += 2;
            x += dx;
            y += dy;
            // Pixels ahead to the right and to the left of the way.
            boolean right = isInside(x + (dx - dy - 1) / 2, y + (dy + dx - 1) / 2);
            boolean left = isInside(x + (dx + dy - 1) / 2, y + (dy - dx - 1) / 2);
            int turnX = dx;
            if (!right) {
                dx = -dy;
                dy = turnX;
            } else if (left) {
                dx = dy;
                dy = -turnX;
            }
        }
        return Arrays.copyOf(points, count);
    }

    private void put(double[] points, int at, int x, int y, int dx, int dy) {
        int edge = dx > 0
                ? y * width + x
                : dx < 0 ? y * width + x - 1 : edges.levelCount + (dy > 0 ? y : y - 1) * (width + 1) + x;
        int slot = edges.slots[edge];
        if (slot >= 0) {
            points[at] = edges.middleX(slot);
            points[at + 1] = edges.middleY(slot);
            return;
        }
        double shift = crossing(edge);
        points[at] = x + dx * 0.5 + (dx == 0 ? shift : 0);
        points[at + 1] = y + dy * 0.5 + (dx == 0 ? 0 : shift);
    }

    /** Where between two pixel centres the field crosses the threshold, -0.5 to 0.5. */
    private double crossing(int edge) {
        if (field == null) {
            return 0;
        }
        int first = edges.first(edge);
        int second = edges.second(edge);
        if (first < 0 || second < 0 || field[first] < threshold == field[second] < threshold) {
            return 0;
        }
        return (threshold - field[first]) / (field[second] - field[first]) - 0.5;
    }
}
