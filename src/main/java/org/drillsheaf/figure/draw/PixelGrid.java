package org.drillsheaf.figure.draw;

/**
 * How pixels lie on the projection plane.
 *
 * @param pixelsPerStature resolution
 * @param left x of the left edge of pixel column 0, statures
 * @param top y of the upper edge of pixel row 0, statures, y up
 */
record PixelGrid(int width, int height, double pixelsPerStature, double left, double top) {

    /** The smallest grid that holds a rectangle, centred on it so that a mirrored scene gives a mirrored grid. */
    static PixelGrid over(double minX, double minY, double maxX, double maxY, double pixelsPerStature) {
        int width = Math.max(1, (int) Math.ceil((maxX - minX) * pixelsPerStature));
        int height = Math.max(1, (int) Math.ceil((maxY - minY) * pixelsPerStature));
        return new PixelGrid(
                width,
                height,
                pixelsPerStature,
                (minX + maxX) / 2 - width / (2 * pixelsPerStature),
                (minY + maxY) / 2 + height / (2 * pixelsPerStature));
    }

    /** x on the projection plane of a place in pixels (0.5 is the middle of column 0). */
    double planeX(double pixelX) {
        return left + pixelX / pixelsPerStature;
    }

    double planeY(double pixelY) {
        return top - pixelY / pixelsPerStature;
    }

    double pixelX(double planeX) {
        return (planeX - left) * pixelsPerStature;
    }

    double pixelY(double planeY) {
        return (top - planeY) * pixelsPerStature;
    }
}
