package org.drillsheaf.figure.draw;

import java.util.stream.IntStream;

/**
 * Moves each boundary from the border between two pixels to where the surface really ends, by bisection with rays. Without it
 * slanted lines wobble, and smoothing that hides the wobble rounds off fingers.
 */
final class EdgeRefinement {
    private static final int BISECTIONS = 3;
    /** Overlaps of body and prop thinner than this are contacts, whose border no ray can find. Statures. */
    private static final double CONTACT = 0.012;
    /** A surface between two pixels is not nearer than both by more than this. */
    private static final double AHEAD = 0.006;
    /** At a rim the surface falls away by less than this within a pixel. */
    private static final double BEHIND = 0.05;

    private static final int SHARES = 32;

    private final Tracer.Traced traced;
    private final Edges edges;
    private final Buffers buffers;

    private EdgeRefinement(Tracer.Traced traced, Edges edges) {
        this.traced = traced;
        this.edges = edges;
        buffers = traced.buffers();
    }

    static void refine(Tracer.Traced traced, Edges edges) {
        EdgeRefinement refinement = new EdgeRefinement(traced, edges);
        IntStream.range(0, SHARES).parallel().forEach(refinement::share);
    }

    private void share(int share) {
        Marcher marcher = new Marcher(traced.scene(), traced.camera());
        int from = (int) ((long) edges.count * share / SHARES);
        int to = (int) ((long) edges.count * (share + 1) / SHARES);
        for (int slot = from; slot < to; slot++) {
            refine(marcher, slot);
        }
    }

    private void refine(Marcher marcher, int slot) {
        int edge = edges.boundary[slot];
        int first = edges.first(edge);
        int second = edges.second(edge);
        byte kind = edges.kind[slot];
        if (first < 0 || second < 0 || kind == Edges.CREASE) {
            return;
        }
        if (kind == Edges.OVERLAP && edges.step[slot] < CONTACT && buffers.isProp(first) != buffers.isProp(second)) {
            return;
        }
        int at = buffers.group[first] != 0 ? first : second;
        marcher.enter(traced.tiles().at(at % buffers.width, at / buffers.width));
        double low = -0.5;
        double high = 0.5;
        for (int i = 0; i < BISECTIONS; i++) {
            double middle = (low + high) / 2;
            if (looksLikeFirst(marcher, slot, first, second, middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        edges.offset[slot] = (float) ((low + high) / 2);
    }

    private boolean looksLikeFirst(Marcher marcher, int slot, int first, int second, double offset) {
        int edge = edges.boundary[slot];
        boolean level = edges.isLevel(edge);
        double x = edges.column(edge) + (level ? 0.5 : offset);
        double y = edges.row(edge) + (level ? offset : 0.5);
        double nearest = edges.depth[slot];
        double farther = Math.min(buffers.depth[first], buffers.depth[second]);
        double end =
                edges.kind[slot] == Edges.OUTLINE || farther < nearest - BEHIND ? nearest - BEHIND : farther - BEHIND;
        boolean hit = marcher.cast(buffers.grid.planeX(x), buffers.grid.planeY(y), nearest + AHEAD, end);
        int firstGroup = buffers.group[first];
        return switch (edges.kind[slot]) {
            case Edges.OUTLINE -> hit == (firstGroup != 0);
            case Edges.OVERLAP -> {
                double depth = hit ? marcher.depth : farther;
                yield Math.abs(depth - buffers.depth[first]) < Math.abs(depth - buffers.depth[second]);
            }
            default ->
                firstGroup != buffers.group[second]
                        ? marcher.group() == firstGroup
                        : marcher.part() == buffers.part[first];
        };
    }
}
