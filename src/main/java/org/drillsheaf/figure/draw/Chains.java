package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Links boundaries to lines. At each corner of the pixel grid the boundaries that fit together best are paired; a line then
 * runs from pair to pair. A half boundary is numbered {@code 2 * slot} for its upper or left end, {@code + 1} for the other.
 */
final class Chains {
    /** Lines of fewer boundaries are noise: hems and inner edges of props, and others that end free. Millimetres. */
    private static final double LEAST_INNER_LINE = 1.0;

    private static final double LEAST_OUTLINE = 0.25;
    private static final double LEAST_RING = 2.0;
    /** Boundaries farther apart in depth hardly belong to one line. Statures. */
    private static final double SAME_DEPTH = 0.04;
    /** Overlaps deeper than this get a halo. Statures. */
    private static final double HALO_STEP = 0.018;

    private final Edges edges;
    private final double pixelsPerMm;
    private final int[] partner;
    private final byte[] degree;

    private Chains(Edges edges, double pixelsPerMm) {
        this.edges = edges;
        this.pixelsPerMm = pixelsPerMm;
        partner = new int[2 * edges.count];
        Arrays.fill(partner, -1);
        degree = new byte[2 * edges.count];
    }

    static List<Chain> link(Edges edges, double pixelsPerMm) {
        Chains chains = new Chains(edges, pixelsPerMm);
        chains.pairAll();
        return chains.follow();
    }

    private void pairAll() {
        int[] meeting = new int[4];
        for (int slot = 0; slot < edges.count; slot++) {
            for (int end = 0; end < 2; end++) {
                int half = 2 * slot + end;
                if (degree[half] == 0) {
                    int count = meetingAt(cornerX(half), cornerY(half), meeting);
                    pair(meeting, count);
                }
            }
        }
    }

    private int cornerX(int half) {
        int edge = edges.boundary[half >> 1];
        return edges.column(edge) + (edges.isLevel(edge) ? half & 1 : 0);
    }

    private int cornerY(int half) {
        int edge = edges.boundary[half >> 1];
        return edges.row(edge) + (edges.isLevel(edge) ? 0 : half & 1);
    }

    /** Half boundaries that end at a corner of the grid. */
    private int meetingAt(int x, int y, int[] meeting) {
        int count = 0;
        int width = edges.width;
        int height = edges.height;
        if (x > 0) {
            count = add(meeting, count, y * width + x - 1, 1);
        }
        if (x < width) {
            count = add(meeting, count, y * width + x, 0);
        }
        if (y > 0) {
            count = add(meeting, count, edges.levelCount + (y - 1) * (width + 1) + x, 1);
        }
        if (y < height) {
            count = add(meeting, count, edges.levelCount + y * (width + 1) + x, 0);
        }
        for (int i = 0; i < count; i++) {
            degree[meeting[i]] = (byte) count;
        }
        return count;
    }

    private int add(int[] meeting, int count, int edge, int end) {
        int slot = edges.slots[edge];
        if (slot < 0) {
            return count;
        }
        meeting[count] = 2 * slot + end;
        return count + 1;
    }

    private void pair(int[] meeting, int count) {
        while (true) {
            double best = 0;
            int first = -1;
            int second = -1;
            for (int i = 0; i < count; i++) {
                for (int j = i + 1; j < count; j++) {
                    if (partner[meeting[i]] >= 0 || partner[meeting[j]] >= 0) {
                        continue;
                    }
                    double fit = fit(meeting[i] >> 1, meeting[j] >> 1);
                    if (fit > best) {
                        best = fit;
                        first = meeting[i];
                        second = meeting[j];
                    }
                }
            }
            if (first < 0) {
                return;
            }
            partner[first] = second;
            partner[second] = first;
        }
    }

    /**
     * How well two boundaries go on into each other, 0 for not at all. What separates body from all else goes on before
     * everything, so that contact lines do not break where a rim ends at them.
     */
    private double fit(int a, int b) {
        byte kindA = edges.kind[a];
        byte kindB = edges.kind[b];
        boolean strongA = isStrong(a);
        boolean strongB = isStrong(b);
        if (edges.ofProp[a] != edges.ofProp[b] || strongA != strongB || !strongA && kindA != kindB) {
            return 0;
        }
        double fit = strength(kindA) + strength(kindB);
        if (edges.isLevel(edges.boundary[a]) == edges.isLevel(edges.boundary[b])) {
            fit += 0.5;
        }
        if (edges.bodyBorder[a] && edges.bodyBorder[b]) {
            fit += 6;
        }
        double apart = Math.abs(edges.depth[a] - edges.depth[b]);
        fit += 1.2 * (1 - Math.min(1, apart / SAME_DEPTH));
        return fit + 0.5 * Segments.clamp(Math.max(edges.depth[a], edges.depth[b]) + 0.6, 0, 1);
    }

    /** Hems begin and end for themselves; all edges of props go on into each other, or seams would be drawn as dashes. */
    private boolean isStrong(int slot) {
        return edges.kind[slot] <= Edges.CREASE || edges.ofProp[slot];
    }

    private static int strength(byte kind) {
        return kind <= Edges.OVERLAP ? 3 : kind == Edges.CREASE ? 2 : 1;
    }

    private List<Chain> follow() {
        List<Chain> chains = new ArrayList<>();
        boolean[] seen = new boolean[edges.count];
        for (int slot = 0; slot < edges.count; slot++) {
            if (!seen[slot] && partner[2 * slot] < 0) {
                keep(chains, walk(2 * slot, seen), false);
            } else if (!seen[slot] && partner[2 * slot + 1] < 0) {
                keep(chains, walk(2 * slot + 1, seen), false);
            }
        }
        for (int slot = 0; slot < edges.count; slot++) {
            if (!seen[slot]) {
                keep(chains, walk(2 * slot, seen), true);
            }
        }
        return chains;
    }

    private int[] walk(int start, boolean[] seen) {
        int[] halves = new int[64];
        int count = 0;
        int half = start;
        while (half >= 0 && !seen[half >> 1]) {
            seen[half >> 1] = true;
            if (count == halves.length) {
                halves = Arrays.copyOf(halves, 2 * count);
            }
            halves[count++] = half;
            half = partner[half ^ 1];
        }
        return Arrays.copyOf(halves, count);
    }

    private void keep(List<Chain> chains, int[] halves, boolean closed) {
        int n = halves.length;
        int[] kinds = new int[6];
        int props = 0;
        double depth = 0;
        for (int half : halves) {
            int slot = half >> 1;
            kinds[edges.kind[slot]]++;
            props += edges.ofProp[slot] ? 1 : 0;
            depth += edges.depth[slot];
        }
        byte kind = mostFrequent(kinds);
        boolean startsFree = !closed && degree[halves[0]] == 1;
        boolean endsFree = !closed && degree[halves[n - 1] ^ 1] == 1;
        if (isNoise(n / pixelsPerMm, kind, closed, startsFree || endsFree)) {
            return;
        }
        double sigma = (kinds[Edges.CREASE] > 0.25 * n ? 0.42 : 0.16) * pixelsPerMm;
        chains.add(new Chain(
                Smoothing.points(points(halves), closed, sigma),
                Smoothing.values(widths(halves), 1, closed, 1.5 * pixelsPerMm),
                Smoothing.values(farDirections(halves), 2, closed, 0.5 * pixelsPerMm),
                closed,
                startsFree,
                endsFree,
                kind,
                props * 2 > n,
                depth / n));
    }

    private static boolean isNoise(double millimetres, byte kind, boolean closed, boolean free) {
        if (closed) {
            return millimetres < LEAST_RING;
        }
        double least = kind == Edges.OUTLINE ? LEAST_OUTLINE : LEAST_INNER_LINE;
        return millimetres < (free || kind >= Edges.HEM ? least : LEAST_OUTLINE);
    }

    private static byte mostFrequent(int[] kinds) {
        byte best = 1;
        for (byte kind = 2; kind < kinds.length; kind++) {
            best = kinds[kind] > kinds[best] ? kind : best;
        }
        return best;
    }

    private double[] points(int[] halves) {
        double[] points = new double[2 * halves.length];
        for (int i = 0; i < halves.length; i++) {
            points[2 * i] = edges.middleX(halves[i] >> 1);
            points[2 * i + 1] = edges.middleY(halves[i] >> 1);
        }
        return points;
    }

    private double[] widths(int[] halves) {
        double[] widths = new double[halves.length];
        for (int i = 0; i < halves.length; i++) {
            widths[i] = LineWeights.of(edges, halves[i] >> 1);
        }
        return widths;
    }

    private double[] farDirections(int[] halves) {
        double[] far = new double[2 * halves.length];
        for (int i = 0; i < halves.length; i++) {
            int slot = halves[i] >> 1;
            if (edges.kind[slot] == Edges.OVERLAP && edges.step[slot] > HALO_STEP) {
                far[2 * i + (edges.isLevel(edges.boundary[slot]) ? 1 : 0)] = -edges.farSide[slot];
            }
        }
        return far;
    }
}
