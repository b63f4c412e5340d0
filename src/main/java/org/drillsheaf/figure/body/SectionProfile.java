package org.drillsheaf.figure.body;

import java.util.function.DoubleUnaryOperator;

/**
 * How a limb's D-shaped cross-section changes along its axis: front half-depth, back half-depth and half-width, smooth
 * between the knots, with rounded caps.
 */
public final class SectionProfile {
    /** Steps of the table along the axis. */
    static final int STEPS = 48;

    /** Widening of each side for flesh that is pressed away, a share of the lost depth; chosen by eye. */
    private static final double TO_THE_SIDES = .12;

    private static final int SAMPLE_RINGS = 24;
    private static final int SAMPLE_ANGLES = 24;
    private static final int CAP_RINGS = 4;

    final double[] front = new double[STEPS + 1];
    final double[] back = new double[STEPS + 1];
    final double[] half = new double[STEPS + 1];
    final double startCap;
    final double endCap;
    final double squareness;
    final double widest;
    /** Surface samples, four numbers each: share of the axis, reach beyond it (caps), x and z of the section. */
    final double[] samples;

    /**
     * @param startCap how far the rounded end reaches beyond the start of the axis, statures; {@code endCap} likewise
     * @param squareness 0 for round sections to 1 for a rounded square
     * @param knots rows of four: share of the axis, front, back, half-width; shares rise from 0 to 1
     */
    private SectionProfile(double startCap, double endCap, double squareness, double[] knots) {
        this.startCap = startCap;
        this.endCap = endCap;
        this.squareness = squareness;
        double most = Math.max(startCap, endCap);
        for (int i = 0; i <= STEPS; i++) {
            double share = i / (double) STEPS;
            front[i] = smooth(knots, share, 1);
            back[i] = smooth(knots, share, 2);
            half[i] = smooth(knots, share, 3);
            most = Math.max(most, Math.max(Math.max(front[i], back[i]), half[i]));
        }
        samples = sampled();
        for (int i = 0; i < samples.length; i += 4) {
            double across = Math.sqrt(samples[i + 2] * samples[i + 2] + samples[i + 3] * samples[i + 3]);
            most = Math.max(most, across);
        }
        widest = 1.002 * most;
    }

    private double[] sampled() {
        double[] table = new double[4 * SAMPLE_ANGLES * (SAMPLE_RINGS + 1 + 2 * CAP_RINGS)];
        int at = 0;
        for (int ring = 0; ring <= SAMPLE_RINGS; ring++) {
            at = ring(table, at, ring / (double) SAMPLE_RINGS, 0, 1);
        }
        for (int ring = 1; ring <= CAP_RINGS; ring++) {
            double lift = ring * 90.0 / CAP_RINGS;
            at = ring(table, at, 0, -startCap * Rotation.sin(lift), Rotation.cos(lift));
            at = ring(table, at, 1, endCap * Rotation.sin(lift), Rotation.cos(lift));
        }
        return table;
    }

    private int ring(double[] table, int from, double share, double beyond, double scale) {
        int at = from;
        for (int i = 0; i < SAMPLE_ANGLES; i++) {
            double degrees = i * 360.0 / SAMPLE_ANGLES;
            double radius = radius(share, degrees) * scale;
            table[at++] = share;
            table[at++] = beyond;
            table[at++] = radius * Rotation.cos(degrees);
            table[at++] = radius * Rotation.sin(degrees);
        }
        return at;
    }

    static SectionProfile of(double startCap, double endCap, double squareness, double... knots) {
        return new SectionProfile(startCap, endCap, squareness, knots);
    }

    /** The same profile with every depth and width multiplied; the caps too. */
    SectionProfile scaled(double depth, double width) {
        double[] knots = new double[4 * (STEPS + 1)];
        for (int i = 0; i <= STEPS; i++) {
            knots[4 * i] = i / (double) STEPS;
            knots[4 * i + 1] = front[i] * depth;
            knots[4 * i + 2] = back[i] * depth;
            knots[4 * i + 3] = half[i] * width;
        }
        return new SectionProfile(startCap * depth, endCap * depth, squareness, knots);
    }

    /**
     * The same profile with its back pressed flat; the flesh gives way to the sides.
     *
     * @param most greatest depth of the back at a share of the axis, statures
     */
    SectionProfile pressed(DoubleUnaryOperator most) {
        double[] knots = new double[4 * (STEPS + 1)];
        for (int i = 0; i <= STEPS; i++) {
            double share = i / (double) STEPS;
            double kept = Math.min(back[i], most.applyAsDouble(share));
            knots[4 * i] = share;
            knots[4 * i + 1] = front[i];
            knots[4 * i + 2] = kept;
            knots[4 * i + 3] = half[i] + (back[i] - kept) * TO_THE_SIDES;
        }
        return new SectionProfile(startCap, endCap, squareness, knots);
    }

    /** The piece between two shares of the axis, with caps of its own. */
    SectionProfile part(double from, double to, double startCap, double endCap) {
        double[] knots = new double[4 * (STEPS + 1)];
        for (int i = 0; i <= STEPS; i++) {
            double at = Math.min(STEPS, (from + (to - from) * i / STEPS) * STEPS);
            int low = Math.min(STEPS - 1, (int) at);
            double f = at - low;
            knots[4 * i] = i / (double) STEPS;
            knots[4 * i + 1] = front[low] + (front[low + 1] - front[low]) * f;
            knots[4 * i + 2] = back[low] + (back[low + 1] - back[low]) * f;
            knots[4 * i + 3] = half[low] + (half[low + 1] - half[low]) * f;
        }
        return new SectionProfile(startCap, endCap, squareness, knots);
    }

    /** Catmull-Rom interpolation of one column, level at both ends. */
    private static double smooth(double[] knots, double share, int column) {
        int rows = knots.length / 4;
        if (rows == 1) {
            return knots[column];
        }
        int i = 0;
        while (i < rows - 2 && share > knots[4 * (i + 1)]) {
            i++;
        }
        double x0 = knots[4 * i];
        double x1 = knots[4 * (i + 1)];
        double y0 = knots[4 * i + column];
        double y1 = knots[4 * (i + 1) + column];
        double span = x1 - x0;
        double slope0 = i > 0 ? (y1 - knots[4 * (i - 1) + column]) / (x1 - knots[4 * (i - 1)]) : 0;
        double slope1 = i + 2 < rows ? (knots[4 * (i + 2) + column] - y0) / (knots[4 * (i + 2)] - x0) : 0;
        double u = Math.min(1, Math.max(0, (share - x0) / span));
        double u2 = u * u;
        double u3 = u2 * u;
        return (2 * u3 - 3 * u2 + 1) * y0
                + (u3 - 2 * u2 + u) * span * slope0
                + (-2 * u3 + 3 * u2) * y1
                + (u3 - u2) * span * slope1;
    }

    /**
     * Distance estimate for a point given in section coordinates.
     *
     * @param share share of the axis, 0 to 1
     * @param x towards the front, z towards the half-width, statures
     * @param beyond how far past the start (negative) or the end (positive) of the axis
     */
    double distance(double share, double x, double beyond, double z) {
        double at = Math.min(1, Math.max(0, share)) * STEPS;
        int i = Math.min(STEPS - 1, (int) at);
        double f = at - i;
        double a = x > 0 ? front[i] + (front[i + 1] - front[i]) * f : back[i] + (back[i + 1] - back[i]) * f;
        double b = half[i] + (half[i + 1] - half[i]) * f;
        double c = beyond < 0 ? startCap : endCap;
        double u = x / a;
        double v = z / b;
        double w = beyond / c;
        double u2 = u * u;
        double v2 = v * v;
        double r2 = u2 + v2;
        double round = Math.sqrt(r2);
        double r = squareness > 0
                ? (1 - squareness) * round + squareness * Math.sqrt(Math.sqrt(u2 * u2 + v2 * v2))
                : round;
        double k0 = Math.sqrt(r * r + w * w);
        double k1 = Math.sqrt(u2 / (a * a) + v2 / (b * b) + w * w / (c * c));
        return k1 < 1e-9 ? -Math.min(a, b) : k0 * (k0 - 1) / k1;
    }

    /** Radius of the section at a share of the axis towards an angle in degrees. */
    double radius(double share, double degrees) {
        double at = Math.min(1, Math.max(0, share)) * STEPS;
        int i = Math.min(STEPS - 1, (int) at);
        double f = at - i;
        double cos = Rotation.cos(degrees);
        double sin = Rotation.sin(degrees);
        double a = cos > 0 ? front[i] + (front[i + 1] - front[i]) * f : back[i] + (back[i + 1] - back[i]) * f;
        double b = half[i] + (half[i + 1] - half[i]) * f;
        double u = cos / a;
        double v = sin / b;
        double round = Math.sqrt(u * u + v * v);
        double square = Math.sqrt(Math.sqrt(u * u * u * u + v * v * v * v));
        return 1 / ((1 - squareness) * round + squareness * square);
    }
}
