package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.figure.body.Vec3;

/**
 * The picture while marks are put on it: where points of space lie on it, what is drawn there already, which places are taken.
 * Millimetres from the upper left corner of the traced picture. Mutable.
 */
final class Page {
    /** A place on the picture. */
    record Spot(double x, double y) {
        Spot plus(double dx, double dy) {
            return new Spot(x + dx, y + dy);
        }

        double distanceTo(Spot other) {
            return Segments.length(x - other.x, y - other.y);
        }
    }

    private static final double SAMPLE = 0.4;
    /** A point this far behind a surface is hidden. Statures. */
    private static final double HIDDEN_BEHIND = 0.03;

    private static final double HIDDEN_AROUND = 1.2;

    private final Tracer.Traced traced;
    private final Buffers buffers;
    private final double mmPerPixel;
    private final List<Box> taken = new ArrayList<>();

    Page(Tracer.Traced traced, double mmPerPixel) {
        this.traced = traced;
        this.mmPerPixel = mmPerPixel;
        buffers = traced.buffers();
    }

    Camera camera() {
        return traced.camera();
    }

    double mmPerStature() {
        return mmPerPixel * buffers.grid.pixelsPerStature();
    }

    Spot spot(Vec3 point) {
        PixelGrid grid = buffers.grid;
        Camera camera = traced.camera();
        double x = camera.right(point.x(), point.y(), point.z());
        double y = camera.up(point.x(), point.y(), point.z());
        return new Spot(grid.pixelX(x) * mmPerPixel, grid.pixelY(y) * mmPerPixel);
    }

    /** Whether something lies before a point wherever one looks closely around it. */
    boolean isHidden(Vec3 point) {
        double depth = traced.camera().toward(point.x(), point.y(), point.z());
        Spot middle = spot(point);
        for (double dx = -HIDDEN_AROUND; dx <= HIDDEN_AROUND; dx += HIDDEN_AROUND / 4) {
            for (double dy = -HIDDEN_AROUND; dy <= HIDDEN_AROUND; dy += HIDDEN_AROUND / 4) {
                Optional<Integer> pixel = pixel(middle.plus(dx, dy));
                if (pixel.isEmpty() || buffers.depth[pixel.get()] < depth + HIDDEN_BEHIND) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a point of a surface is what the picture shows there. */
    boolean isSeen(Vec3 point, double within) {
        double depth = traced.camera().toward(point.x(), point.y(), point.z());
        Optional<Integer> pixel = pixel(spot(point));
        return pixel.isPresent() && Math.abs(buffers.depth[pixel.get()] - depth) < within;
    }

    /** Whether a point is not deeper than this behind what the picture shows there. */
    boolean isWithin(Vec3 point, double depth) {
        double own = traced.camera().toward(point.x(), point.y(), point.z());
        return pixel(spot(point)).filter(p -> buffers.depth[p] > own + depth).isEmpty();
    }

    private Optional<Integer> pixel(Spot spot) {
        int x = (int) Math.floor(spot.x / mmPerPixel);
        int y = (int) Math.floor(spot.y / mmPerPixel);
        return x < 0 || y < 0 || x >= buffers.width || y >= buffers.height
                ? Optional.empty()
                : Optional.of(y * buffers.width + x);
    }

    boolean isBody(Spot spot) {
        return pixel(spot).filter(buffers::isBody).isPresent();
    }

    boolean isProp(Spot spot) {
        return pixel(spot).filter(buffers::isProp).isPresent();
    }

    /** Share of a box that lies on the body, 0 to 1. */
    double bodyUnder(Box box) {
        return under(box, true);
    }

    double propUnder(Box box) {
        return under(box, false);
    }

    private double under(Box box, boolean body) {
        int hits = 0;
        int all = 0;
        int columns = Math.max(2, (int) Math.ceil(box.width() / SAMPLE));
        int rows = Math.max(2, (int) Math.ceil(box.height() / SAMPLE));
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                Spot spot =
                        new Spot(box.left() + box.width() * column / columns, box.top() + box.height() * row / rows);
                all++;
                if (body ? isBody(spot) : isProp(spot)) {
                    hits++;
                }
            }
        }
        return (double) hits / all;
    }

    void take(Box box) {
        taken.add(box);
    }

    /** Number of taken places that a box would meet. */
    long takenUnder(Box box) {
        return taken.stream().filter(box::meets).count();
    }

    /** Box of all pixels that show something; the body alone or with props. */
    Box inked(boolean bodyOnly) {
        Box box = Box.NOTHING;
        for (int y = 0; y < buffers.height; y++) {
            for (int x = 0; x < buffers.width; x++) {
                int pixel = y * buffers.width + x;
                if (bodyOnly ? buffers.isBody(pixel) : buffers.group[pixel] != 0) {
                    box = box.with(x * mmPerPixel, y * mmPerPixel).with((x + 1) * mmPerPixel, (y + 1) * mmPerPixel);
                }
            }
        }
        return box;
    }
}
