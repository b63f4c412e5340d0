package org.drillsheaf.figure.draw;

import java.util.stream.IntStream;
import org.drillsheaf.figure.body.Solid;

/** Fills the buffers: one ray a pixel, tile by tile on all cores; every pixel is written by exactly one tile. */
final class Tracer {
    /** Rays of this many pixels square share their way through empty space. */
    private static final int BUNDLE = 4;

    private static final double MARGIN = 0.02;

    /** The light comes from the upper left, in front of the page. */
    private static final double LIGHT_RIGHT = -0.50 / Math.sqrt(1.1925);

    private static final double LIGHT_UP = 0.80 / Math.sqrt(1.1925);
    private static final double LIGHT_TOWARD = 0.55 / Math.sqrt(1.1925);

    private final Scene scene;
    private final Camera camera;
    private final Buffers buffers;
    private final Tiles tiles;

    private Tracer(Scene scene, Camera camera, Buffers buffers, Tiles tiles) {
        this.scene = scene;
        this.camera = camera;
        this.buffers = buffers;
        this.tiles = tiles;
    }

    /** A scene as seen through a camera. */
    record Traced(Scene scene, Camera camera, Tiles tiles, Buffers buffers) {}

    static Traced trace(Scene scene, Camera camera, double pixelsPerStature) {
        PixelGrid grid = grid(scene, camera, pixelsPerStature);
        Buffers buffers = new Buffers(grid);
        Tiles tiles = new Tiles(scene, camera, grid);
        Tracer tracer = new Tracer(scene, camera, buffers, tiles);
        IntStream.range(0, tiles.rows).parallel().forEach(tracer::row);
        return new Traced(scene, camera, tiles, buffers);
    }

    private static PixelGrid grid(Scene scene, Camera camera, double pixelsPerStature) {
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (Solid solid : scene.solids) {
            Bounds.Extent extent = Bounds.of(solid).projected(camera).extent();
            minX = Math.min(minX, extent.minX());
            minY = Math.min(minY, extent.minY());
            maxX = Math.max(maxX, extent.maxX());
            maxY = Math.max(maxY, extent.maxY());
        }
        return PixelGrid.over(minX - MARGIN, minY - MARGIN, maxX + MARGIN, maxY + MARGIN, pixelsPerStature);
    }

    private void row(int row) {
        Marcher marcher = new Marcher(scene, camera);
        for (int column = 0; column < tiles.columns; column++) {
            Tiles.Tile tile = tiles.at(column * Tiles.SIDE, row * Tiles.SIDE);
            if (tile.isEmpty()) {
                continue;
            }
            marcher.enter(tile);
            for (int y = row * Tiles.SIDE; y < (row + 1) * Tiles.SIDE; y += BUNDLE) {
                for (int x = column * Tiles.SIDE; x < (column + 1) * Tiles.SIDE; x += BUNDLE) {
                    bundle(marcher, x, y);
                }
            }
        }
    }

    private void bundle(Marcher marcher, int left, int top) {
        PixelGrid grid = buffers.grid;
        double radius = BUNDLE * 0.71 / grid.pixelsPerStature();
        if (!marcher.findFreeDepth(grid.planeX(left + BUNDLE / 2.0), grid.planeY(top + BUNDLE / 2.0), radius)) {
            return;
        }
        double free = marcher.depth;
        for (int y = top; y < top + BUNDLE; y++) {
            for (int x = left; x < left + BUNDLE; x++) {
                if (marcher.castOfBundle(grid.planeX(x + 0.5), grid.planeY(y + 0.5), free)) {
                    marcher.normal();
                    keep(marcher, y * buffers.width + x);
                }
            }
        }
    }

    private void keep(Marcher ray, int pixel) {
        buffers.depth[pixel] = (float) ray.depth;
        buffers.group[pixel] = (short) ray.group();
        buffers.part[pixel] = ray.part();
        buffers.normalRight[pixel] = (float) ray.normalRight;
        buffers.normalUp[pixel] = (float) ray.normalUp;
        buffers.normalToward[pixel] = (float) ray.normalToward;
        buffers.light[pixel] =
                (float) (ray.normalRight * LIGHT_RIGHT + ray.normalUp * LIGHT_UP + ray.normalToward * LIGHT_TOWARD);
        buffers.muscle[pixel] = ray.muscle();
    }
}
