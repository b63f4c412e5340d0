package org.drillsheaf.figure.draw;

/** Cleans the noise where a limb and a prop graze each other: a pixel between body and prop joins the majority around it. */
final class Speckle {
    private static final int PASSES = 4;
    private static final int MAJORITY = 5;
    /** Surfaces farther apart than this do not graze. Statures. */
    private static final float NEAR = 0.03f;

    private Speckle() {}

    static void clean(Buffers buffers) {
        short[] before = new short[buffers.group.length];
        for (int pass = 0; pass < PASSES; pass++) {
            System.arraycopy(buffers.group, 0, before, 0, before.length);
            boolean changed = false;
            for (int y = 1; y < buffers.height - 1; y++) {
                for (int x = 1; x < buffers.width - 1; x++) {
                    changed |= clean(buffers, before, y * buffers.width + x);
                }
            }
            if (!changed) {
                return;
            }
        }
    }

    private static boolean clean(Buffers buffers, short[] before, int pixel) {
        int width = buffers.width;
        short own = before[pixel];
        if (own == before[pixel - 1]
                && own == before[pixel + 1]
                && own == before[pixel - width]
                && own == before[pixel + width]) {
            return false;
        }
        int best = -1;
        int most = MAJORITY - 1;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                int other = pixel + dy * width + dx;
                if (before[other] == own || before[other] < Scene.FIRST_PROP == own < Scene.FIRST_PROP) {
                    continue;
                }
                int count = count(before, pixel, width, before[other]);
                if (count > most || count == most && best >= 0 && isNearer(buffers, pixel, other, best)) {
                    most = count;
                    best = other;
                }
            }
        }
        if (best >= 0 && Math.abs(buffers.depth[best] - buffers.depth[pixel]) < NEAR) {
            buffers.copy(best, pixel);
            return true;
        }
        return false;
    }

    private static boolean isNearer(Buffers buffers, int pixel, int one, int other) {
        float depth = buffers.depth[pixel];
        return Math.abs(buffers.depth[one] - depth) < Math.abs(buffers.depth[other] - depth);
    }

    private static int count(short[] groups, int pixel, int width, short group) {
        int count = 0;
        for (int dy = -1; dy <= 1; dy++) {
            for (int dx = -1; dx <= 1; dx++) {
                if (groups[pixel + dy * width + dx] == group) {
                    count++;
                }
            }
        }
        return count;
    }
}
