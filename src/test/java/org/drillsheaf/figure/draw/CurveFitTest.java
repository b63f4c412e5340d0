package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class CurveFitTest {
    private static final double TOLERANCE = 0.025;
    /** Rounding to hundredths moves end points and handles. */
    private static final double ROUNDING = 0.015;

    @Property(tries = 60)
    void everyPointLiesWithinTheToleranceOfTheCurve(
            @ForAll @DoubleRange(min = 0.5, max = 3) double amplitude,
            @ForAll @DoubleRange(min = 0.2, max = 1.2) double frequency) {
        double[] points = new double[2 * 300];
        for (int i = 0; i < 300; i++) {
            points[2 * i] = i * 0.1;
            points[2 * i + 1] = amplitude * StrictMath.sin(i * 0.1 * frequency);
        }
        PathShape.Builder path = new PathShape.Builder();
        CurveFit.line(path, points, TOLERANCE);
        PathShape shape = path.build();
        var pieces = Ink.pieces(shape);
        for (int i = 0; i < 300; i++) {
            double x = points[2 * i];
            double y = points[2 * i + 1];
            double off = pieces.stream()
                    .mapToDouble(p -> Segments.distance(x, y, p[0], p[1], p[2], p[3]))
                    .min()
                    .orElseThrow();
            assertThat(off).isLessThan(TOLERANCE + ROUNDING);
        }
        assertThat(shape.size()).isLessThan(100);
    }

    @Test
    void aStraightRowBecomesOneLine() {
        double[] points = new double[2 * 50];
        for (int i = 0; i < 50; i++) {
            points[2 * i] = i * 0.2;
            points[2 * i + 1] = i * 0.1;
        }
        PathShape.Builder path = new PathShape.Builder();
        CurveFit.line(path, points, TOLERANCE);
        assertThat(path.build().size()).isEqualTo(2);
    }

    @Test
    void aCircleNeedsFewCurves() {
        double[] points = new double[2 * 200];
        for (int i = 0; i < 200; i++) {
            points[2 * i] = 10 + 5 * StrictMath.cos(i * Math.PI / 100);
            points[2 * i + 1] = 10 + 5 * StrictMath.sin(i * Math.PI / 100);
        }
        PathShape.Builder path = new PathShape.Builder();
        CurveFit.ring(path, points, TOLERANCE);
        assertThat(path.build().size()).isLessThan(12);
    }
}
