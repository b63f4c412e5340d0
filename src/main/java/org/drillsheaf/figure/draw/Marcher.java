package org.drillsheaf.figure.draw;

import org.drillsheaf.figure.body.Blend;

/**
 * Walks rays through the scene until they meet a surface. One per thread; it keeps its scratch space. After {@link #cast} the
 * fields tell what was met.
 *
 * <p>A solid whose distance cannot matter yet is not asked again: each keeps a lower bound, which shrinks by the way walked.
 */
final class Marcher {
    private static final double HIT = 2e-4;
    /** Distance estimates of tapered solids may be too long; walking three quarters of them is safe. */
    private static final double STEP = 0.75;

    /** Keeps rays that graze a surface going; what they overshoot is taken back. */
    private static final double LEAST_STEP = 1e-3;

    private static final int MOST_STEPS = 400;
    private static final double FAR_AWAY = 1e9;
    private static final double BOUND_SLACK = 1.25;
    private static final double GRADIENT_STEP = 8.5e-4;
    private static final double GRADIENT_RISE = GRADIENT_STEP / Math.sqrt(2);

    private final Scene scene;
    private final Camera camera;
    private final double[] distances;
    private final double[] bounds;
    /** Lower bounds at the depth the bundle of rays was free to. */
    private final double[] seeds;

    private final int[] near;
    private int nearCount;
    private Tiles.Tile tile = Tiles.NO_TILE;
    private int lead = -1;

    int solid;
    double depth;
    double x;
    double y;
    double z;
    /** Direction away from the surface, in the axes of the page. */
    double normalRight;

    double normalUp;
    double normalToward;

    Marcher(Scene scene, Camera camera) {
        this.scene = scene;
        this.camera = camera;
        distances = new double[scene.solids.length];
        bounds = new double[scene.solids.length];
        seeds = new double[scene.solids.length];
        near = new int[scene.solids.length];
    }

    void enter(Tiles.Tile next) {
        tile = next;
        lead = next.solids().length == 0 ? -1 : next.solids()[0];
    }

    /**
     * Walks away from the viewer along one ray.
     *
     * @return whether a surface was met between the two depths
     */
    boolean cast(double planeX, double planeY, double fromDepth, double toDepth) {
        for (int i : tile.solids()) {
            bounds[i] = 0;
        }
        return walk(planeX, planeY, fromDepth, toDepth, HIT, 0, LEAST_STEP);
    }

    /** Like {@link #cast}, for a ray of the bundle that {@link #findFreeDepth} was asked about last. */
    boolean castOfBundle(double planeX, double planeY, double fromDepth) {
        for (int i : tile.solids()) {
            bounds[i] = seeds[i];
        }
        return walk(planeX, planeY, fromDepth, tile.farthest(), HIT, 0, LEAST_STEP);
    }

    /**
     * Looks how far a bundle of rays of this radius is surely free.
     *
     * @return false when the bundle meets nothing at all; else {@link #depth} tells how far it is free
     */
    boolean findFreeDepth(double planeX, double planeY, double radius) {
        for (int i : tile.solids()) {
            bounds[i] = 0;
        }
        double wide = radius * BOUND_SLACK;
        if (!walk(planeX, planeY, tile.nearest(), tile.farthest(), wide, wide / 2, wide / 2.5)) {
            return false;
        }
        for (int i : tile.solids()) {
            seeds[i] = bounds[i] - wide;
        }
        return true;
    }

    private boolean walk(
            double planeX, double planeY, double from, double to, double stopAt, double keep, double leastStep) {
        double baseX = camera.rightX() * planeX + camera.upX() * planeY;
        double baseY = camera.rightY() * planeX + camera.upY() * planeY;
        double baseZ = camera.rightZ() * planeX + camera.upZ() * planeY;
        double at = from;
        double walked = 0;
        double before = 0;
        for (int step = 0; step < MOST_STEPS && at > to; step++) {
            double px = baseX + camera.towardX() * at;
            double py = baseY + camera.towardY() * at;
            double pz = baseZ + camera.towardZ() * at;
            double distance = field(px, py, pz, walked);
            if (distance < stopAt) {
                double back = stopAt > HIT ? 0 : toSurface(distance, before, walked);
                depth = at + back;
                solid = lead;
                x = px + camera.towardX() * back;
                y = py + camera.towardY() * back;
                z = pz + camera.towardZ() * back;
                return true;
            }
            before = distance;
            walked = Math.max((distance - keep) * STEP, leastStep);
            at -= walked;
        }
        depth = Buffers.NOWHERE;
        solid = -1;
        return false;
    }

    /** Way from the last step to where a straight line through the last two distances is zero; positive is back. */
    private static double toSurface(double distance, double before, double walked) {
        return before > distance ? Segments.clamp(walked * distance / (distance - before), -2 * HIT, walked) : 0;
    }

    /** Distance to the blended scene; {@link #lead} becomes the solid that owns the surface there. */
    private double field(double px, double py, double pz, double walked) {
        int first = lead;
        double best = scene.solids[first].distance(px, py, pz);
        distances[first] = best;
        bounds[first] = best;
        for (int i : tile.solids()) {
            if (i == first) {
                continue;
            }
            double bound = bounds[i] - walked * BOUND_SLACK;
            if (bound > best + Scene.WIDEST_JOIN) {
                bounds[i] = bound;
                distances[i] = FAR_AWAY;
                continue;
            }
            double distance = scene.solids[i].distance(px, py, pz);
            distances[i] = distance;
            bounds[i] = distance;
            if (distance < best) {
                best = distance;
                lead = i;
            }
        }
        return blended(px, py, pz, best, true);
    }

    /** Polynomial smooth minimum over the joins of the tile, fading with the distance from each joint. */
    private double blended(double px, double py, double pz, double least, boolean own) {
        double result = least;
        for (Blend join : tile.joins()) {
            double a = distances[join.first()];
            double b = distances[join.second()];
            if (Math.min(a, b) - join.strength() / 4 >= result) {
                continue;
            }
            double joined = Scene.joined(join, a, b, px, py, pz);
            if (joined < result) {
                result = joined;
                if (own && !scene.isBodySolid(lead) && joined < least) {
                    lead = a < b ? join.first() : join.second();
                }
            }
        }
        return result;
    }

    /**
     * Direction away from the surface at the point met last, from the four corners of a tetrahedron that is its own mirror
     * image left and right.
     */
    void normal() {
        nearCount = 0;
        double best = distances[solid];
        for (int i : tile.solids()) {
            if (distances[i] < best + Scene.WIDEST_JOIN + 2 * GRADIENT_STEP) {
                near[nearCount++] = i;
            } else {
                distances[i] = FAR_AWAY;
            }
        }
        double right = probe(GRADIENT_STEP, 0, -GRADIENT_RISE);
        double left = probe(-GRADIENT_STEP, 0, -GRADIENT_RISE);
        double above = probe(0, GRADIENT_STEP, GRADIENT_RISE);
        double below = probe(0, -GRADIENT_STEP, GRADIENT_RISE);
        double alongRight = right - left;
        double alongUp = above - below;
        double alongToward = (above + below - (right + left)) / Math.sqrt(2);
        double length =
                Math.max(1e-12, Math.sqrt(alongRight * alongRight + alongUp * alongUp + alongToward * alongToward));
        normalRight = alongRight / length;
        normalUp = alongUp / length;
        normalToward = alongToward / length;
    }

    /** Distance at a point some way to the right of, above and before the point met last. */
    private double probe(double right, double up, double toward) {
        double px = x + camera.rightX() * right + camera.upX() * up + camera.towardX() * toward;
        double py = y + camera.rightY() * right + camera.upY() * up + camera.towardY() * toward;
        double pz = z + camera.rightZ() * right + camera.upZ() * up + camera.towardZ() * toward;
        double best = FAR_AWAY;
        for (int k = 0; k < nearCount; k++) {
            int i = near[k];
            double distance = scene.solids[i].distance(px, py, pz);
            distances[i] = distance;
            best = Math.min(best, distance);
        }
        return blended(px, py, pz, best, false);
    }

    int group() {
        return solid < 0 ? Scene.NOTHING : scene.groups[solid];
    }

    short part() {
        return solid < 0 ? 0 : scene.surfaces.part(solid, x, y, z);
    }

    float muscle() {
        return solid < 0 ? 0 : scene.surfaces.muscle(solid, x, y, z);
    }
}
