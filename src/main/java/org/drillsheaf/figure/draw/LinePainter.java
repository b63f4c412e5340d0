package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Turns lines into paths, far ones first. A line of the body that overlaps something is preceded by a white band on its far
 * side, so that near limbs stand clear of far ones; ends that meet nothing run out thin.
 */
final class LinePainter {
    private static final double TOLERANCE = 0.02;
    /** Edges of props are straight or round; nothing is lost. */
    private static final double PROP_TOLERANCE = 0.04;

    private static final double HALO_WIDTH = 0.55;
    private static final double HALO_TAPER = 1.8;
    private static final double HALO_TOLERANCE = 0.09;
    private static final double LEAST_SURENESS = 0.35;
    private static final double END_TAPER = 2.6;
    private static final double THINNEST_END = 0.12;
    /** A shorter line is one outline rather than a stroke with two ends. */
    private static final double LEAST_STROKE = 4;
    /** Width changes under this are not seen. */
    private static final double SAME_WIDTH = 0.05;

    /** Room that a halo needs behind it before the paper begins; without it, it would cut into the next outline. */
    private static final double HALO_ROOM = 0.95;

    private static final double ROOM_STEP = 0.19;

    private final Buffers buffers;
    private final double mmPerPixel;
    private final List<DrawnPath> paths = new ArrayList<>();

    private LinePainter(Buffers buffers, double mmPerPixel) {
        this.buffers = buffers;
        this.mmPerPixel = mmPerPixel;
    }

    /** Lines of body and props with halos. */
    static List<DrawnPath> paint(List<Chain> chains, Buffers buffers, double mmPerPixel) {
        LinePainter painter = new LinePainter(buffers, mmPerPixel);
        List<Chain> order = new ArrayList<>(chains);
        order.sort(Comparator.comparingDouble(Chain::depth));
        for (Chain chain : order) {
            double[] points = painter.millimetres(chain);
            if (!chain.ofProp()) {
                painter.halo(chain, points);
            }
            painter.line(
                    chain,
                    points,
                    chain.ofProp() ? DrawnPath.Role.PROP_LINE : DrawnPath.Role.LINE,
                    chain.ofProp() ? Palette.PROP_INK : Palette.INK,
                    1);
        }
        return painter.paths;
    }

    /** Pale lines of the start pose. */
    static List<DrawnPath> paintGhost(List<Chain> chains, Buffers buffers, double mmPerPixel) {
        LinePainter painter = new LinePainter(buffers, mmPerPixel);
        for (Chain chain : chains) {
            painter.line(chain, painter.millimetres(chain), DrawnPath.Role.GHOST, Palette.GHOST_INK, 0.8);
        }
        return painter.paths;
    }

    private double[] millimetres(Chain chain) {
        double[] points = chain.points().clone();
        for (int i = 0; i < points.length; i++) {
            points[i] *= mmPerPixel;
        }
        return points;
    }

    /** A stroke where the width stays the same, which takes half the room of an outline; outlines where it changes. */
    private void line(Chain chain, double[] points, DrawnPath.Role role, int colour, double weight) {
        double[] along = lengths(points);
        double whole = along[along.length - 1];
        double taper = Math.min(END_TAPER, whole * 0.45);
        int from = 0;
        int to = chain.size() - 1;
        while (startsThin(chain) && along[from] < taper) {
            from++;
        }
        while (endsThin(chain) && whole - along[to] < taper) {
            to--;
        }
        if (to <= from || !chain.closed() && !isWorthAStroke(chain, along, from, to)) {
            ribbon(points, taperedWidths(chain, along, taper, weight), role, colour);
            return;
        }
        stroke(
                chain,
                Arrays.copyOfRange(points, 2 * from, 2 * to + 2),
                meanWidth(chain, from, to) * weight,
                role,
                colour);
        double[] widths = taperedWidths(chain, along, taper, weight);
        if (from > 0) {
            ribbon(Arrays.copyOf(points, 2 * from + 2), Arrays.copyOf(widths, from + 1), role, colour);
        }
        if (to < chain.size() - 1) {
            double[] end = Arrays.copyOfRange(points, 2 * to, points.length);
            ribbon(end, Arrays.copyOfRange(widths, to, widths.length), role, colour);
        }
    }

    /** Edges of props end where they end. */
    private static boolean startsThin(Chain chain) {
        return chain.startsFree() && !chain.ofProp();
    }

    private static boolean endsThin(Chain chain) {
        return chain.endsFree() && !chain.ofProp();
    }

    private static boolean isWorthAStroke(Chain chain, double[] along, int from, int to) {
        boolean whole = from == 0 && to == chain.size() - 1;
        return (whole || along[to] - along[from] > LEAST_STROKE) && isEven(chain, from, to);
    }

    private static boolean isEven(Chain chain, int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (int i = from; i <= to; i++) {
            least = Math.min(least, chain.widths()[i]);
            most = Math.max(most, chain.widths()[i]);
        }
        return most - least < SAME_WIDTH;
    }

    private static double meanWidth(Chain chain, int from, int to) {
        return Arrays.stream(chain.widths(), from, to + 1).average().orElseThrow();
    }

    private void stroke(Chain chain, double[] points, double width, DrawnPath.Role role, int colour) {
        PathShape.Builder path = new PathShape.Builder();
        if (chain.closed()) {
            CurveFit.ring(path, points, tolerance(chain));
        } else {
            CurveFit.line(path, points, tolerance(chain));
        }
        paths.add(DrawnPath.stroked(role, path.build(), colour, Math.rint(width * 100) / 100));
    }

    private static double tolerance(Chain chain) {
        return chain.ofProp() ? PROP_TOLERANCE : TOLERANCE;
    }

    private void ribbon(double[] points, double[] widths, DrawnPath.Role role, int colour) {
        PathShape.Builder path = new PathShape.Builder();
        Ribbon.around(path, points, widths, TOLERANCE);
        paths.add(DrawnPath.filled(role, path.build(), colour));
    }

    private static double[] taperedWidths(Chain chain, double[] along, double taper, double weight) {
        double whole = along[along.length - 1];
        double[] widths = chain.widths().clone();
        for (int i = 0; i < widths.length; i++) {
            widths[i] *= weight;
            if (startsThin(chain)) {
                widths[i] *= THINNEST_END + (1 - THINNEST_END) * Segments.smoothRise(0, taper, along[i]);
            }
            if (endsThin(chain)) {
                widths[i] *= THINNEST_END + (1 - THINNEST_END) * Segments.smoothRise(0, taper, whole - along[i]);
            }
        }
        return widths;
    }

    private static double[] lengths(double[] points) {
        double[] along = new double[points.length / 2];
        for (int i = 1; i < along.length; i++) {
            along[i] = along[i - 1]
                    + Segments.length(points[2 * i] - points[2 * i - 2], points[2 * i + 1] - points[2 * i - 1]);
        }
        return along;
    }

    /** White bands along each run of points whose far side is sure. */
    private void halo(Chain chain, double[] points) {
        int n = chain.size();
        int from = 0;
        while (from < n) {
            if (!hasHalo(chain, from)) {
                from++;
                continue;
            }
            int to = from;
            while (to < n && hasHalo(chain, to)) {
                to++;
            }
            if ((to - from) * mmPerPixel > 1) {
                haloRun(chain, points, from, to, chain.closed() && from == 0 && to == n);
            }
            from = to;
        }
    }

    private boolean hasHalo(Chain chain, int i) {
        double sureness = sureness(chain, i);
        if (sureness <= LEAST_SURENESS) {
            return false;
        }
        double dx = chain.far()[2 * i] / sureness;
        double dy = chain.far()[2 * i + 1] / sureness;
        for (double room = ROOM_STEP; room <= HALO_ROOM; room += ROOM_STEP) {
            int x = (int) Math.floor(chain.points()[2 * i] + dx * room / mmPerPixel);
            int y = (int) Math.floor(chain.points()[2 * i + 1] + dy * room / mmPerPixel);
            if (x < 0
                    || y < 0
                    || x >= buffers.width
                    || y >= buffers.height
                    || buffers.group[y * buffers.width + x] == Scene.NOTHING) {
                return false;
            }
        }
        return true;
    }

    private static double sureness(Chain chain, int i) {
        return Segments.length(chain.far()[2 * i], chain.far()[2 * i + 1]);
    }

    private void haloRun(Chain chain, double[] points, int from, int to, boolean wholeRing) {
        double[] run = Arrays.copyOfRange(points, 2 * from, 2 * to);
        double[] along = lengths(run);
        double whole = along[along.length - 1];
        double taper = Math.min(HALO_TAPER, whole * 0.4);
        double[] offsets = new double[run.length];
        for (int i = 0; i < along.length; i++) {
            double rise = wholeRing
                    ? 1
                    : Segments.smoothRise(0, taper, along[i] + 0.05)
                            * Segments.smoothRise(0, taper, whole - along[i] + 0.05);
            double width = HALO_WIDTH * rise / sureness(chain, from + i);
            offsets[2 * i] = chain.far()[2 * (from + i)] * width;
            offsets[2 * i + 1] = chain.far()[2 * (from + i) + 1] * width;
        }
        PathShape.Builder path = new PathShape.Builder();
        Ribbon.beside(path, run, offsets, HALO_TOLERANCE);
        paths.add(DrawnPath.filled(DrawnPath.Role.HALO, path.build(), Palette.PAPER));
    }
}
