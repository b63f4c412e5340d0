package org.drillsheaf.figure.draw;

/**
 * How pixels lie on the projection plane.
 *
 * @param pixelsPerStature resolution
 * @param middleX x of the middle of the grid, statures
 * @param middleY y of the middle of the grid, statures, y up
 */
record PixelGrid(int width, int height, double pixelsPerStature, double middleX, double middleY) {

    /**
     * A grid of whole tiles that holds a rectangle and is centred on it, so that a mirrored scene gives a mirrored grid with
     * mirrored tiles.
     */
    static PixelGrid over(double minX, double minY, double maxX, double maxY, double pixelsPerStature) {
        return new PixelGrid(
                wholeTiles((maxX - minX) * pixelsPerStature),
                wholeTiles((maxY - minY) * pixelsPerStature),
                pixelsPerStature,
                (minX + maxX) / 2,
                (minY + maxY) / 2);
    }

    private static int wholeTiles(double pixels) {
        return Math.max(1, (int) Math.ceil(pixels / Tiles.SIDE)) * Tiles.SIDE;
    }

    /** x on the projection plane of a place in pixels (0.5 is the middle of column 0). */
    double planeX(double pixelX) {
        return middleX + (pixelX - width / 2.0) / pixelsPerStature;
    }

    double planeY(double pixelY) {
        return middleY - (pixelY - height / 2.0) / pixelsPerStature;
    }

    double pixelX(double planeX) {
        return (planeX - middleX) * pixelsPerStature + width / 2.0;
    }

    double pixelY(double planeY) {
        return (middleY - planeY) * pixelsPerStature + height / 2.0;
    }
}
