package org.drillsheaf.figure.draw;

import java.util.Arrays;
import org.drillsheaf.figure.body.Blend;
import org.drillsheaf.figure.body.RoundedBox;
import org.drillsheaf.figure.body.Vec3;

/**
 * The boundaries between pixels at which a line belongs, with their class. Boundaries are numbered: first those between a
 * pixel and the one below it (row by row, {@code (height+1) * width} of them), then those between left and right neighbours
 * ({@code height * (width+1)}). Only boundaries that carry a line get a slot in the arrays.
 */
final class Edges {
    /** Object against the paper. */
    static final byte OUTLINE = 1;
    /** A surface in front of another one. */
    static final byte OVERLAP = 2;
    /** Two surfaces that touch. */
    static final byte CREASE = 3;
    /** A garment ends. */
    static final byte HEM = 4;
    /** Two faces of a prop. */
    static final byte FACE = 5;

    /** Least step in depth, beyond what slope explains, that is drawn as overlap. Statures. */
    private static final double OVERLAP_STEP = 0.0035;

    private static final double SLOPE_ALLOWANCE = 2.2;
    /** Cosine of the angle between two surfaces from which a fold is drawn. */
    private static final double CREASE_COSINE = 0.80;
    /** A thin limb of a prop over the body by less than this belongs to the body. */
    private static final double GRAZING = 0.030;
    /** The body rests on a prop when its surface is nearer than this. */
    private static final double CONTACT = 0.006;

    final Buffers buffers;
    final int width;
    final int height;
    /** Number of boundaries between a pixel and the one below it. */
    final int levelCount;
    /** Slot of a boundary, -1 when it carries no line. */
    final int[] slots;

    int count;
    int[] boundary = new int[4096];
    byte[] kind = new byte[4096];
    /** Step in depth for overlaps, statures. */
    float[] step = new float[4096];
    /** Depth of the nearer side. */
    float[] depth = new float[4096];
    /** The side that is farther away: +1 the first pixel (upper or left), -1 the second. */
    byte[] farSide = new byte[4096];
    /** Whether the line is a line of a prop. */
    boolean[] ofProp = new boolean[4096];
    /** Whether the body lies over a prop here. */
    boolean[] bodyOverProp = new boolean[4096];
    /** Whether body meets something else here. */
    boolean[] bodyBorder = new boolean[4096];
    /** Whether fingers or toes meet here. */
    boolean[] betweenDigits = new boolean[4096];
    /** Where between the two pixel centres the boundary is, -0.5 to 0.5. */
    float[] offset = new float[4096];

    private final Tracer.Traced traced;
    private final Scene scene;
    private final double pixelsPerStature;

    private Edges(Tracer.Traced traced) {
        buffers = traced.buffers();
        width = buffers.width;
        height = buffers.height;
        levelCount = (height + 1) * width;
        slots = new int[levelCount + height * (width + 1)];
        Arrays.fill(slots, -1);
        this.traced = traced;
        scene = traced.scene();
        pixelsPerStature = buffers.grid.pixelsPerStature();
    }

    static Edges find(Tracer.Traced traced) {
        Edges edges = new Edges(traced);
        edges.findAll();
        return edges;
    }

    private void findAll() {
        short[] group = buffers.group;
        for (int y = 0; y <= height; y++) {
            for (int x = 0; x < width; x++) {
                int above = y > 0 ? (y - 1) * width + x : -1;
                int below = y < height ? y * width + x : -1;
                if ((above < 0 ? 0 : group[above]) != 0 || (below < 0 ? 0 : group[below]) != 0) {
                    classify(y * width + x, above, below, buffers.normalUp);
                }
            }
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x <= width; x++) {
                int left = x > 0 ? y * width + x - 1 : -1;
                int right = x < width ? y * width + x : -1;
                if ((left < 0 ? 0 : group[left]) != 0 || (right < 0 ? 0 : group[right]) != 0) {
                    classify(levelCount + y * (width + 1) + x, left, right, buffers.normalRight);
                }
            }
        }
    }

    private void classify(int edge, int first, int second, float[] normalAlong) {
        int firstGroup = first < 0 ? 0 : buffers.group[first];
        int secondGroup = second < 0 ? 0 : buffers.group[second];
        double firstDepth = firstGroup == 0 ? Buffers.NOWHERE : buffers.depth[first];
        double secondDepth = secondGroup == 0 ? Buffers.NOWHERE : buffers.depth[second];
        boolean firstNear = firstDepth >= secondDepth;
        int far = firstNear ? second : first;
        int nearGroup = firstNear ? firstGroup : secondGroup;
        int farGroup = firstNear ? secondGroup : firstGroup;
        boolean nearProp = nearGroup >= Scene.FIRST_PROP;
        boolean farProp = farGroup >= Scene.FIRST_PROP;
        byte found = 0;
        double weight = 0;
        if (farGroup == 0) {
            found = OUTLINE;
        } else {
            double slope = Math.abs(normalAlong[far]) / Math.max(0.03, Math.abs(buffers.normalToward[far]));
            double beyond = Math.abs(firstDepth - secondDepth) - SLOPE_ALLOWANCE * slope / pixelsPerStature;
            boolean sameGroup = nearGroup == farGroup;
            if (beyond > OVERLAP_STEP && !(nearProp && sameGroup)) {
                found = OVERLAP;
                weight = beyond;
            } else if (!sameGroup && (nearProp || farProp)) {
                found = nearProp && farProp ? FACE : CREASE;
            } else if (!sameGroup && (!meltsInto(far, nearGroup, farGroup) || cosine(first, second) < CREASE_COSINE)) {
                found = CREASE;
            } else if (buffers.part[first] != buffers.part[second]) {
                found = !nearProp ? HEM : showsBothFaces(nearGroup, first, second) ? FACE : 0;
            }
        }
        if (found == 0 || found == HEM && !isSeen(first, second)) {
            return;
        }
        boolean bodyUnderProp = nearProp && Scene.isBody(farGroup);
        if (found == OVERLAP && bodyUnderProp && isContact(far, nearGroup)) {
            found = CREASE;
            weight = 0;
        }
        boolean touchesBody = bodyUnderProp && (found == CREASE || found == OVERLAP && weight < GRAZING);
        int slot = newSlot(edge);
        kind[slot] = found;
        step[slot] = (float) weight;
        depth[slot] = (float) Math.max(firstDepth, secondDepth);
        farSide[slot] = (byte) (firstNear ? -1 : 1);
        ofProp[slot] = nearProp && !(touchesBody && scene.prop(nearGroup) instanceof RoundedBox);
        bodyOverProp[slot] = !nearProp && farProp || touchesBody && found == CREASE;
        betweenDigits[slot] = found == HEM && Parts.isDigit(buffers.part[first]);
        bodyBorder[slot] = nearProp != farProp || farGroup == 0;
    }

    /** At the rounded rim of a box a sliver of the face behind it is seen; the rim has its own line. */
    private boolean showsBothFaces(int group, int first, int second) {
        return !(scene.prop(group) instanceof RoundedBox box)
                || showsFace(box, buffers.part[first]) && showsFace(box, buffers.part[second]);
    }

    private boolean showsFace(RoundedBox box, short part) {
        Vec3 away = box.normal(Parts.faceNumber(part));
        return traced.camera().toward(away.x(), away.y(), away.z()) > 0;
    }

    /** Whether a surface point of the body rests on a prop, though the prop's near edge is far in front of it. */
    private boolean isContact(int pixel, int propGroup) {
        double[] point = point(pixel);
        return scene.prop(propGroup).distance(point[0], point[1], point[2]) < CONTACT;
    }

    /** Whether two pieces of the body go over into each other at a surface point: a limb into the trunk at its joint. */
    private boolean meltsInto(int pixel, int firstGroup, int secondGroup) {
        double[] point = point(pixel);
        for (Blend join : scene.joins) {
            int a = scene.groups[join.first()];
            int b = scene.groups[join.second()];
            boolean between = a == firstGroup && b == secondGroup || a == secondGroup && b == firstGroup;
            if (between && join.strengthAt(point[0], point[1], point[2]) > 0) {
                return true;
            }
        }
        return false;
    }

    /** The surface point that a pixel shows. */
    private double[] point(int pixel) {
        Camera camera = traced.camera();
        double right = buffers.grid.planeX(pixel % width + 0.5);
        double up = buffers.grid.planeY(pixel / width + 0.5);
        double toward = buffers.depth[pixel];
        return new double[] {
            camera.rightX() * right + camera.upX() * up + camera.towardX() * toward,
            camera.rightY() * right + camera.upY() * up + camera.towardY() * toward,
            camera.rightZ() * right + camera.upZ() * up + camera.towardZ() * toward
        };
    }

    /** Fingers and toes have lines between them, but none where they begin. */
    private boolean isSeen(int first, int second) {
        short a = buffers.part[first];
        short b = buffers.part[second];
        return Parts.isDigit(a) == Parts.isDigit(b) || Parts.tone(a) != Parts.tone(b);
    }

    private double cosine(int a, int b) {
        return buffers.normalRight[a] * buffers.normalRight[b]
                + buffers.normalUp[a] * buffers.normalUp[b]
                + buffers.normalToward[a] * buffers.normalToward[b];
    }

    private int newSlot(int edge) {
        if (count == boundary.length) {
            int more = 2 * count;
            boundary = Arrays.copyOf(boundary, more);
            kind = Arrays.copyOf(kind, more);
            step = Arrays.copyOf(step, more);
            depth = Arrays.copyOf(depth, more);
            farSide = Arrays.copyOf(farSide, more);
            ofProp = Arrays.copyOf(ofProp, more);
            bodyOverProp = Arrays.copyOf(bodyOverProp, more);
            bodyBorder = Arrays.copyOf(bodyBorder, more);
            betweenDigits = Arrays.copyOf(betweenDigits, more);
            offset = Arrays.copyOf(offset, more);
        }
        boundary[count] = edge;
        slots[edge] = count;
        return count++;
    }

    boolean isLevel(int edge) {
        return edge < levelCount;
    }

    /** Column of a boundary: of its pixels when it is level, else of the pixel on its right. */
    int column(int edge) {
        return edge < levelCount ? edge % width : (edge - levelCount) % (width + 1);
    }

    int row(int edge) {
        return edge < levelCount ? edge / width : (edge - levelCount) / (width + 1);
    }

    /** Upper or left pixel of a boundary, -1 at the border. */
    int first(int edge) {
        int x = column(edge);
        int y = row(edge);
        if (isLevel(edge)) {
            return y > 0 ? (y - 1) * width + x : -1;
        }
        return x > 0 ? y * width + x - 1 : -1;
    }

    /** Lower or right pixel of a boundary, -1 at the border. */
    int second(int edge) {
        int x = column(edge);
        int y = row(edge);
        return (isLevel(edge) ? y < height : x < width) ? y * width + x : -1;
    }

    /** Middle of a boundary in pixels, moved to where the surface really ends. */
    double middleX(int slot) {
        int edge = boundary[slot];
        return column(edge) + (isLevel(edge) ? 0.5 : offset[slot]);
    }

    double middleY(int slot) {
        int edge = boundary[slot];
        return row(edge) + (isLevel(edge) ? offset[slot] : 0.5);
    }
}
