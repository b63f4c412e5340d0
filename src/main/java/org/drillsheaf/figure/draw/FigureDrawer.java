package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.Body;
import org.drillsheaf.figure.body.RoundedBox;
import org.drillsheaf.figure.pose.SolvedPose;

/**
 * Draws solved poses. The same pose, view, style and annotations give the same drawing to the last hundredth of a millimetre.
 * Safe for several threads.
 */
public final class FigureDrawer {
    /** White space around the picture, millimetres. */
    private static final double MARGIN = 0.8;
    /** Softness of the shade, statures. */
    private static final double SHADE_SIGMA = 0.010;
    /** From this difference in depth one limb of a pair counts as the far one. Statures. */
    private static final double FAR_LEG = 0.05;

    private static final double FAR_ARM = 0.10;

    private final Lettering lettering = Lettering.load();

    /** Draws a pose from a view that somebody chose. */
    public Drawing draw(SolvedPose pose, View view, DrawingStyle style, Annotations annotations) {
        Camera camera = Camera.of(view);
        FigureScene whole = FigureScene.of(pose);
        List<FigureScene.SceneProp> glass = GlassWalls.between(whole, camera);
        FigureScene figure = whole.without(glass);
        double pixelsPerMm = style.quality().pixelsPerMm;
        Tracer.Traced traced = Tracer.trace(figure.scene(), camera, pixelsPerMm * style.millimetresPerStature());
        Speckle.clean(traced.buffers());
        LightBlur.blur(traced.buffers(), SHADE_SIGMA * traced.buffers().grid.pixelsPerStature());
        Edges edges = Edges.find(traced);
        EdgeRefinement.refine(traced, edges);
        FigurePainter painter = new FigurePainter(traced, edges, 1 / pixelsPerMm);
        painter.props(figure.props());
        List<DrawnPath> paths = new ArrayList<>(painter.takePaths());
        if (style.ghost()) {
            paths.addAll(ghost(figure, traced, pixelsPerMm));
        }
        painter.body(farGroups(pose.body(), camera));
        painter.shade();
        painter.feel();
        paths.addAll(painter.takePaths());
        Page page = new Page(traced, 1 / pixelsPerMm);
        paths.addAll(new Face(traced.scene(), page, pose.frame("head"), pose.point("head")).paths());
        paths.addAll(LinePainter.paint(Chains.link(edges, pixelsPerMm), traced.buffers(), 1 / pixelsPerMm));
        glass.forEach(wall -> paths.add(GlassWalls.outline((RoundedBox) wall.solid(), page)));
        MarkPainter marks = new MarkPainter(figure, page, view, style, annotations, lettering);
        marks.paint();
        paths.addAll(marks.paths());
        Map<String, Box> anchors = new LinkedHashMap<>(marks.anchors());
        anchors.put("body", page.inked(true));
        anchors.put("figure", page.inked(false));
        Page.Spot origin = page.spot(org.drillsheaf.figure.body.Vec3.ZERO);
        anchors.put("floor", new Box(0, origin.y(), 0, origin.y()));
        anchors.put("origin", Box.around(origin.x(), origin.y(), 0));
        return cropped(paths, anchors);
    }

    /** The start pose as a pale figure, shifted to where it belongs in the traced picture. */
    private static List<DrawnPath> ghost(FigureScene figure, Tracer.Traced main, double pixelsPerMm) {
        Optional<Scene> scene = figure.ghostScene();
        if (scene.isEmpty()) {
            return List.of();
        }
        PixelGrid grid = main.buffers().grid;
        Tracer.Traced traced = Tracer.trace(scene.get(), main.camera(), grid.pixelsPerStature());
        Edges edges = Edges.find(traced);
        EdgeRefinement.refine(traced, edges);
        FigurePainter painter = new FigurePainter(traced, edges, 1 / pixelsPerMm);
        painter.ghost();
        List<DrawnPath> paths = new ArrayList<>(painter.takePaths());
        paths.addAll(LinePainter.paintGhost(Chains.link(edges, pixelsPerMm), traced.buffers(), 1 / pixelsPerMm));
        PixelGrid own = traced.buffers().grid;
        double dx = grid.pixelX(own.planeX(0)) / pixelsPerMm;
        double dy = grid.pixelY(own.planeY(0)) / pixelsPerMm;
        return paths.stream().map(path -> path.moved(dx, dy)).toList();
    }

    private static boolean[] farGroups(Body body, Camera camera) {
        boolean[] far = new boolean[Scene.FIRST_PROP];
        double hips = depth(body, camera, "hip.R") - depth(body, camera, "hip.L");
        double shoulders = depth(body, camera, "shoulder.R") - depth(body, camera, "shoulder.L");
        far[Scene.RIGHT_LEG] = hips < -FAR_LEG;
        far[Scene.LEFT_LEG] = hips > FAR_LEG;
        far[Scene.RIGHT_ARM] = shoulders < -FAR_ARM;
        far[Scene.LEFT_ARM] = shoulders > FAR_ARM;
        return far;
    }

    private static double depth(Body body, Camera camera, String point) {
        var at = body.skeleton().point(point);
        return camera.toward(at.x(), at.y(), at.z());
    }

    /** Moves everything so that the ink begins at the upper left corner. */
    private static Drawing cropped(List<DrawnPath> paths, Map<String, Box> anchors) {
        Box box = Box.NOTHING;
        for (DrawnPath path : paths) {
            box = box.with(path.box());
        }
        Box page = box.isEmpty() ? Box.around(0, 0, 1) : box.grown(MARGIN);
        double left = Math.floor(page.left() * 100) / 100;
        double top = Math.floor(page.top() * 100) / 100;
        List<DrawnPath> moved =
                paths.stream().map(path -> path.moved(-left, -top)).toList();
        Map<String, Box> places = new LinkedHashMap<>();
        anchors.forEach((name, place) -> places.put(name, place.moved(-left, -top)));
        return new Drawing(
                Math.ceil((page.right() - left) * 100) / 100,
                Math.ceil((page.bottom() - top) * 100) / 100,
                moved,
                places);
    }
}
