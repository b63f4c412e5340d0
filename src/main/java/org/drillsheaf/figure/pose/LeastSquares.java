package org.drillsheaf.figure.pose;

import java.util.function.Function;

/**
 * Minimises a sum of squares within bounds: damped Gauss-Newton (Levenberg-Marquardt) with a numeric Jacobian. The same
 * input gives the same output to the last bit.
 */
final class LeastSquares {
    private static final int MOST_ROUNDS = 80;
    private static final int MOST_TRIES = 12;

    private final Function<double[], double[]> residuals;
    private final double[] least;
    private final double[] most;
    private final double[] difference;
    private final double[] longestStep;

    /**
     * @param residuals from unknowns to the numbers whose squares are added up; always the same count
     * @param least lower bound of each unknown, {@code most} the upper one
     * @param difference step for the numeric derivative by each unknown
     * @param longestStep largest change of each unknown in a round
     */
    LeastSquares(
            Function<double[], double[]> residuals,
            double[] least,
            double[] most,
            double[] difference,
            double[] longestStep) {
        this.residuals = residuals;
        this.least = least;
        this.most = most;
        this.difference = difference;
        this.longestStep = longestStep;
    }

    double[] solve(double[] start) {
        double[] x = clamp(start.clone());
        double[] r = residuals.apply(x);
        double damping = 1e-4;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[][] jacobian = jacobian(x, r);
            double before = cost(r);
            boolean better = false;
            double change = 0;
            for (int attempt = 0; attempt < MOST_TRIES && !better; attempt++) {
                double[] next = step(x, r, jacobian, damping);
                double[] tried = residuals.apply(next);
                if (cost(tried) < before) {
                    change = change(x, next);
                    x = next;
                    r = tried;
                    damping = Math.max(1e-9, damping * .2);
                    better = true;
                } else {
                    damping = Math.max(1e-6, damping * 6);
                }
            }
            if (!better || change < 1e-5 || before - cost(r) < 1e-14) {
                break;
            }
        }
        return x;
    }

    static double cost(double[] r) {
        double sum = 0;
        for (double value : r) {
            sum += value * value;
        }
        return sum;
    }

    private double change(double[] from, double[] to) {
        double most = 0;
        for (int i = 0; i < from.length; i++) {
            most = Math.max(most, Math.abs(to[i] - from[i]) / longestStep[i]);
        }
        return most;
    }

    private double[] clamp(double[] x) {
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.min(most[i], Math.max(least[i], x[i]));
        }
        return x;
    }

    private double[][] jacobian(double[] x, double[] r) {
        double[][] columns = new double[x.length][];
        for (int k = 0; k < x.length; k++) {
            double h = x[k] + difference[k] > most[k] ? -difference[k] : difference[k];
            double[] moved = x.clone();
            moved[k] += h;
            double[] changed = residuals.apply(moved);
            columns[k] = new double[r.length];
            for (int i = 0; i < r.length; i++) {
                columns[k][i] = (changed[i] - r[i]) / h;
            }
        }
        return columns;
    }

    /** One damped step; unknowns that press against a bound stay where they are. */
    private double[] step(double[] x, double[] r, double[][] columns, double damping) {
        int n = x.length;
        double[][] system = new double[n][n + 1];
        for (int a = 0; a < n; a++) {
            double slope = dot(columns[a], r);
            boolean held = x[a] <= least[a] && slope > 0 || x[a] >= most[a] && slope < 0;
            if (held) {
                system[a][a] = 1;
                continue;
            }
            for (int b = 0; b < n; b++) {
                system[a][b] = dot(columns[a], columns[b]);
            }
            system[a][a] = system[a][a] * (1 + damping) + 1e-13;
            system[a][n] = -slope;
        }
        double[] change = gauss(system);
        double[] next = x.clone();
        double shrink = 1;
        for (int i = 0; i < n; i++) {
            shrink = Math.max(shrink, Math.abs(change[i]) / longestStep[i]);
        }
        for (int i = 0; i < n; i++) {
            next[i] += change[i] / shrink;
        }
        return clamp(next);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** Solves a small linear system in place; unknowns without effect become 0. */
    private static double[] gauss(double[][] m) {
        int n = m.length;
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int i = c; i < n; i++) {
                pivot = Math.abs(m[i][c]) > Math.abs(m[pivot][c]) ? i : pivot;
            }
            double[] swapped = m[c];
            m[c] = m[pivot];
            m[pivot] = swapped;
            if (Math.abs(m[c][c]) < 1e-15) {
                continue;
            }
            for (int i = 0; i < n; i++) {
                if (i != c) {
                    double factor = m[i][c] / m[c][c];
                    for (int j = c; j <= n; j++) {
                        m[i][j] -= factor * m[c][j];
                    }
                }
            }
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = Math.abs(m[i][i]) < 1e-15 ? 0 : m[i][n] / m[i][i];
        }
        return x;
    }
}
