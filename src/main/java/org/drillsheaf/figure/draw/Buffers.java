package org.drillsheaf.figure.draw;

import java.util.Arrays;

/** What the traced picture shows at each pixel, row by row. Mutable while the picture is made, never handed out. */
final class Buffers {
    /** Depth where nothing was hit. */
    static final float NOWHERE = -1e6f;

    final PixelGrid grid;
    final int width;
    final int height;
    /** Distance towards the viewer, statures. */
    final float[] depth;
    /** {@link Scene} group, 0 for nothing. */
    final short[] group;
    /** Finer division of a group: garment or face of a prop. */
    final short[] part;

    final float[] normalRight;
    final float[] normalUp;
    final float[] normalToward;
    /** Cosine between the surface and the light. */
    float[] light;
    /** Above 0 inside a muscle that is to be felt. */
    final float[] muscle;

    Buffers(PixelGrid grid) {
        this.grid = grid;
        width = grid.width();
        height = grid.height();
        int size = width * height;
        depth = new float[size];
        Arrays.fill(depth, NOWHERE);
        group = new short[size];
        part = new short[size];
        normalRight = new float[size];
        normalUp = new float[size];
        normalToward = new float[size];
        light = new float[size];
        muscle = new float[size];
    }

    boolean isBody(int pixel) {
        return Scene.isBody(group[pixel]);
    }

    boolean isProp(int pixel) {
        return group[pixel] >= Scene.FIRST_PROP;
    }

    void copy(int from, int to) {
        depth[to] = depth[from];
        group[to] = group[from];
        part[to] = part[from];
        normalRight[to] = normalRight[from];
        normalUp[to] = normalUp[from];
        normalToward[to] = normalToward[from];
        light[to] = light[from];
        muscle[to] = muscle[from];
    }
}
