package org.drillsheaf.figure.draw;

import java.util.stream.IntStream;
import org.drillsheaf.figure.body.Solid;

/** Fills the buffers: one ray a pixel, tile by tile on all cores; every pixel is written by exactly one tile. */
final class Tracer {
    /** Rays of this many pixels square share their way through empty space. */
    private static final int BUNDLE = 4;

    private static final double MARGIN = 0.02;

    private final Scene scene;
    private final Camera camera;
    private final Buffers buffers;
    private final Tiles tiles;
    private final double lightX;
    private final double lightY;
    private final double lightZ;

    private Tracer(Scene scene, Camera camera, Buffers buffers, Tiles tiles) {
        this.scene = scene;
        this.camera = camera;
        this.buffers = buffers;
        this.tiles = tiles;
        // From the upper left, in front of the page.
        double right = -0.50;
        double up = 0.80;
        double toward = 0.55;
        double length = Math.sqrt(right * right + up * up + toward * toward);
        lightX = (camera.rightX() * right + camera.upX() * up + camera.towardX() * toward) / length;
        lightY = (camera.rightY() * right + camera.upY() * up + camera.towardY() * toward) / length;
        lightZ = (camera.rightZ() * right + camera.upZ() * up + camera.towardZ() * toward) / length;
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
            for (int y = row * Tiles.SIDE; y < Math.min(buffers.height, (row + 1) * Tiles.SIDE); y += BUNDLE) {
                for (int x = column * Tiles.SIDE; x < Math.min(buffers.width, (column + 1) * Tiles.SIDE); x += BUNDLE) {
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
        for (int y = top; y < Math.min(buffers.height, top + BUNDLE); y++) {
            for (int x = left; x < Math.min(buffers.width, left + BUNDLE); x++) {
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
        buffers.normalRight[pixel] = (float) camera.right(ray.normalX, ray.normalY, ray.normalZ);
        buffers.normalUp[pixel] = (float) camera.up(ray.normalX, ray.normalY, ray.normalZ);
        buffers.normalToward[pixel] = (float) camera.toward(ray.normalX, ray.normalY, ray.normalZ);
        buffers.light[pixel] = (float) (ray.normalX * lightX + ray.normalY * lightY + ray.normalZ * lightZ);
        buffers.muscle[pixel] = ray.muscle();
    }
}
