package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;

/**
 * Paints body and props of a traced scene: fills of props, white body, tones, shade, muscles, then lines. Millimetres, origin
 * at the upper left corner of the traced picture.
 */
final class FigurePainter {
    /** Borders of fills lie under lines. */
    private static final double FILL_TOLERANCE = 0.07;

    /** Shade and muscles end softly. */
    private static final double FIELD_TOLERANCE = 0.10;

    private static final double FILL_SIGMA_MM = 0.14;
    private static final double FIELD_SIGMA_MM = 0.33;
    private static final float SHADE_BELOW = -0.14f;
    private static final float SIDE_FACE_BELOW = 0.62f;

    private final Tracer.Traced traced;
    private final Buffers buffers;
    private final Edges edges;
    private final double mmPerPixel;
    private final List<DrawnPath> paths = new ArrayList<>();

    FigurePainter(Tracer.Traced traced, Edges edges, double mmPerPixel) {
        this.traced = traced;
        this.edges = edges;
        this.mmPerPixel = mmPerPixel;
        buffers = traced.buffers();
    }

    /** What was painted since the last call. */
    List<DrawnPath> takePaths() {
        List<DrawnPath> taken = List.copyOf(paths);
        paths.clear();
        return taken;
    }

    void props(List<FigureScene.SceneProp> props) {
        Map<PropLook, List<Integer>> groups = new EnumMap<>(PropLook.class);
        for (int i = 0; i < props.size(); i++) {
            groups.computeIfAbsent(props.get(i).look(), look -> new ArrayList<>())
                    .add(Scene.FIRST_PROP + i);
        }
        groups.forEach((look, members) -> {
            boolean[] member = new boolean[Scene.FIRST_PROP + props.size()];
            members.forEach(group -> member[group] = true);
            region(DrawnPath.Role.PROP, pixel -> member[buffers.group[pixel]], look.colour);
            if (look.sideColour != look.colour) {
                region(
                        DrawnPath.Role.PROP,
                        pixel -> member[buffers.group[pixel]] && isSide(look, pixel),
                        look.sideColour);
            }
        });
    }

    private boolean isSide(PropLook look, int pixel) {
        if (look == PropLook.SLAB) {
            boolean level = Math.abs(traced.camera().towardZ()) > 0.9;
            return level && buffers.normalToward[pixel] > 0.9;
        }
        return buffers.light[pixel] < SIDE_FACE_BELOW && buffers.normalUp[pixel] < 0.7;
    }

    void ghost() {
        region(DrawnPath.Role.GHOST, pixel -> buffers.group[pixel] != 0, Palette.GHOST_FILL);
    }

    /** @param farGroups limbs that get the darker tones */
    void body(boolean[] farGroups) {
        region(DrawnPath.Role.BODY, buffers::isBody, Palette.PAPER);
        region(
                DrawnPath.Role.BODY,
                pixel -> isTone(pixel, Parts.SKIN) && farGroups[buffers.group[pixel]],
                tone(Parts.SKIN, true));
        for (short part : new short[] {Parts.SHIRT, Parts.SHORTS, Parts.HAIR}) {
            region(
                    DrawnPath.Role.BODY,
                    pixel -> isTone(pixel, part) && !farGroups[buffers.group[pixel]],
                    tone(part, false));
            region(
                    DrawnPath.Role.BODY,
                    pixel -> isTone(pixel, part) && farGroups[buffers.group[pixel]],
                    tone(part, true));
        }
    }

    private boolean isTone(int pixel, short part) {
        return Parts.tone(buffers.part[pixel]) == part && buffers.isBody(pixel);
    }

    private static int tone(short part, boolean far) {
        return Palette.garment(part, far);
    }

    void shade() {
        List<double[]> rings = Regions.rings(
                edges,
                pixel -> buffers.isBody(pixel) && buffers.light[pixel] < SHADE_BELOW,
                buffers.light,
                SHADE_BELOW,
                FIELD_SIGMA_MM / mmPerPixel);
        PathShape shape = shape(rings, FIELD_TOLERANCE);
        if (!shape.isEmpty()) {
            paths.add(new DrawnPath(
                    DrawnPath.Role.SHADE, shape, Palette.SHADE, Palette.SHADE_OPACITY, DrawnPath.NONE, 0));
        }
    }

    void feel() {
        List<double[]> rings = Regions.rings(
                edges, pixel -> buffers.muscle[pixel] > 0, buffers.muscle, 0, FIELD_SIGMA_MM / mmPerPixel);
        PathShape patch = shape(rings, FIELD_TOLERANCE);
        if (patch.isEmpty()) {
            return;
        }
        paths.add(DrawnPath.filled(DrawnPath.Role.FEEL, patch, Palette.FEEL_TINT));
        PathShape strokes = Hatch.strokes(buffers, mmPerPixel);
        if (!strokes.isEmpty()) {
            paths.add(DrawnPath.stroked(DrawnPath.Role.HATCH, strokes, Palette.ACCENT, Hatch.STROKE));
        }
    }

    private void region(DrawnPath.Role role, IntPredicate test, int colour) {
        PathShape shape = shape(Regions.rings(edges, test, FILL_SIGMA_MM / mmPerPixel), FILL_TOLERANCE);
        if (!shape.isEmpty()) {
            paths.add(DrawnPath.filled(role, shape, colour));
        }
    }

    private PathShape shape(List<double[]> rings, double tolerance) {
        PathShape.Builder path = new PathShape.Builder();
        for (double[] ring : rings) {
            double[] millimetres = ring.clone();
            for (int i = 0; i < millimetres.length; i++) {
                millimetres[i] *= mmPerPixel;
            }
            CurveFit.ring(path, millimetres, tolerance);
        }
        return path.build();
    }
}
