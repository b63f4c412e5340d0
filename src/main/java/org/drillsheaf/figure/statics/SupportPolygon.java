package org.drillsheaf.figure.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The convex hull, seen from above, of everything that carries a body from below.
 *
 * @param corners in order around, x and z in statures; fewer than three when nothing carries
 */
public record SupportPolygon(List<Corner> corners) {

    /** A corner seen from above, statures. */
    public record Corner(double x, double z) {}

    public SupportPolygon {
        corners = List.copyOf(corners);
    }

    static SupportPolygon around(List<Corner> points) {
        List<Corner> sorted = points.stream()
                .distinct()
                .sorted(Comparator.comparingDouble(Corner::x).thenComparingDouble(Corner::z))
                .toList();
        if (sorted.size() < 3) {
            return new SupportPolygon(sorted);
        }
        List<Corner> hull = new ArrayList<>(half(sorted));
        List<Corner> reversed = new ArrayList<>(sorted);
        java.util.Collections.reverse(reversed);
        hull.addAll(half(reversed));
        return new SupportPolygon(hull);
    }

    /** One chain of the hull without its last corner (Andrew's monotone chain). */
    private static List<Corner> half(List<Corner> points) {
        List<Corner> chain = new ArrayList<>();
        for (Corner p : points) {
            while (chain.size() > 1 && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), p) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(p);
        }
        return chain.subList(0, chain.size() - 1);
    }

    private static double turn(Corner a, Corner b, Corner c) {
        return (b.x - a.x) * (c.z - a.z) - (b.z - a.z) * (c.x - a.x);
    }

    /** How far a place lies inside the nearest edge, statures; negative outside. */
    public double margin(double x, double z) {
        if (corners.size() < 3) {
            return Double.NEGATIVE_INFINITY;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            Corner a = corners.get(i);
            Corner b = corners.get((i + 1) % corners.size());
            double length = StrictMath.hypot(b.x - a.x, b.z - a.z);
            least = Math.min(least, turn(a, b, new Corner(x, z)) / length);
        }
        return least;
    }

    /** Least x of the polygon; {@code greatestX} likewise. */
    public double leastX() {
        return corners.stream().mapToDouble(Corner::x).min().orElse(Double.NaN);
    }

    public double greatestX() {
        return corners.stream().mapToDouble(Corner::x).max().orElse(Double.NaN);
    }
}
