package org.drillsheaf.figure.draw;

import java.util.Arrays;
import org.drillsheaf.figure.body.Blend;

/** For each square tile of the picture: which solids and joins a ray through it can meet, and between which depths. */
final class Tiles {
    static final int SIDE = 16;
    static final Tile NO_TILE = new Tile(new int[0], new Blend[0], 0, 0);

    /** Joins bulge out of the solids they join, at most by a quarter of their strength. Statures. */
    private static final double MARGIN = 0.012;

    /**
     * @param solids numbers of solids
     * @param joins joins whose both solids are in the tile
     */
    record Tile(int[] solids, Blend[] joins, double nearest, double farthest) {
        boolean isEmpty() {
            return solids.length == 0;
        }
    }

    final int columns;
    final int rows;
    private final Tile[] tiles;

    Tiles(Scene scene, Camera camera, PixelGrid grid) {
        columns = grid.width() / SIDE;
        rows = grid.height() / SIDE;
        tiles = new Tile[columns * rows];
        Bounds[] bounds = new Bounds[scene.solids.length];
        for (int i = 0; i < bounds.length; i++) {
            bounds[i] = Bounds.of(scene.solids[i]).projected(camera);
        }
        int[] found = new int[bounds.length];
        boolean[] holds = new boolean[bounds.length];
        double reach = SIDE * 0.71 / grid.pixelsPerStature() + MARGIN;
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double x = grid.planeX((column + 0.5) * SIDE);
                double y = grid.planeY((row + 0.5) * SIDE);
                tiles[row * columns + column] = tile(scene, bounds, found, holds, x, y, reach);
            }
        }
    }

    Tile at(int pixelX, int pixelY) {
        return tiles[pixelY / SIDE * columns + pixelX / SIDE];
    }

    private static Tile tile(
            Scene scene, Bounds[] bounds, int[] found, boolean[] holds, double x, double y, double reach) {
        int count = 0;
        double nearest = Double.NEGATIVE_INFINITY;
        double farthest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < bounds.length; i++) {
            holds[i] = bounds[i].clearance(x, y) < reach;
            if (holds[i]) {
                found[count++] = i;
                nearest = Math.max(nearest, bounds[i].nearest() + MARGIN);
                farthest = Math.min(farthest, bounds[i].farthest() - MARGIN);
            }
        }
        if (count == 0) {
            return NO_TILE;
        }
        Blend[] joins = new Blend[scene.joins.length];
        int joinCount = 0;
        for (Blend join : scene.joins) {
            if (holds[join.first()] && holds[join.second()]) {
                joins[joinCount++] = join;
            }
        }
        return new Tile(Arrays.copyOf(found, count), Arrays.copyOf(joins, joinCount), nearest, farthest);
    }
}
