package org.drillsheaf.figure.draw;

import java.util.stream.IntStream;

/** Softens the light, so that the one step of shade has calm borders. Does not bleed over edges in depth. */
final class LightBlur {
    private static final float SAME_SURFACE = 0.03f;

    private LightBlur() {}

    /** @param sigma width of the bell curve, pixels */
    static void blur(Buffers buffers, double sigma) {
        int reach = (int) Math.ceil(2.2 * sigma);
        float[] weights = new float[reach + 1];
        for (int i = 0; i <= reach; i++) {
            weights[i] = (float) StrictMath.exp(-i * i / (2 * sigma * sigma));
        }
        float[] across = new float[buffers.light.length];
        pass(buffers, buffers.light, across, weights, 1, 0);
        float[] down = new float[buffers.light.length];
        pass(buffers, across, down, weights, 0, 1);
        buffers.light = down;
    }

    private static void pass(Buffers buffers, float[] from, float[] to, float[] weights, int stepX, int stepY) {
        IntStream.range(0, buffers.height).parallel().forEach(y -> {
            for (int x = 0; x < buffers.width; x++) {
                int pixel = y * buffers.width + x;
                if (buffers.isBody(pixel)) {
                    to[pixel] = mean(buffers, from, weights, x, y, stepX, stepY);
                } else {
                    to[pixel] = from[pixel];
                }
            }
        });
    }

    private static float mean(Buffers buffers, float[] light, float[] weights, int x, int y, int stepX, int stepY) {
        int pixel = y * buffers.width + x;
        float depth = buffers.depth[pixel];
        float total = weights[0];
        float sum = weights[0] * light[pixel];
        for (int sign = -1; sign <= 1; sign += 2) {
            for (int k = 1; k < weights.length; k++) {
                int nx = x + sign * k * stepX;
                int ny = y + sign * k * stepY;
                if (nx < 0 || ny < 0 || nx >= buffers.width || ny >= buffers.height) {
                    break;
                }
                int other = ny * buffers.width + nx;
                if (buffers.isBody(other) && Math.abs(buffers.depth[other] - depth) <= SAME_SURFACE) {
                    total += weights[k];
                    sum += weights[k] * light[other];
                }
            }
        }
        return sum / total;
    }
}
