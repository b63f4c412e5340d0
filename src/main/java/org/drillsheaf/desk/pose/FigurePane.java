package org.drillsheaf.desk.pose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.NodeOrientation;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import org.drillsheaf.Side;
import org.drillsheaf.desk.figure.WindowPainter;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Box;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.SolvedPose;
import org.jspecify.annotations.Nullable;

/**
 * The figure from one side, with a grip on every joint. While a joint is in hand its bones follow at once; the body follows when
 * it has been drawn, and only the newest one is.
 */
final class FigurePane extends Region {
    private static final double MILLIMETRES_PER_STATURE = 46;
    /** In a smaller pane the finer tracing cannot be seen. Pixels. */
    private static final double FINE_FROM = 560;

    private static final List<String> TRUNK =
            List.of("pelvis", "L5", "lum1", "lum2", "tho1", "tho2", "tho3", "C7", "head");
    private static final List<String> LEG = List.of("hip", "knee", "ankle", "toe");
    private static final List<String> ARM = List.of("shoulder", "elbow", "wrist", "knuckle", "tip");

    private final PoseModel model;
    private final View view;
    private final FigureDrawer drawer;
    private final Lane drawing;
    private final Canvas canvas = new Canvas();
    private final Pane bones = new Pane();
    private final Map<Grip.At, GripHandle> grips = new LinkedHashMap<>();
    private final Label callout = new Label();
    private @Nullable Drawing shown;
    /** The last known one, so that the grips keep their place and the focus while the next is worked out. */
    private @Nullable Skeleton bonesShown;

    private Stand stand = new Stand(0, 0, 100);
    private boolean fits;

    FigurePane(PoseModel model, View view, String name, FigureDrawer drawer, Background background) {
        this.model = model;
        this.view = view;
        this.drawer = drawer;
        this.drawing = new Lane(background);
        getStyleClass().add("figure-pane");
        setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        setAccessibleText(name);
        Label title = new Label(name);
        title.getStyleClass().addAll("small", "figure-name");
        title.relocate(8, 6);
        canvas.setManaged(false);
        bones.setManaged(false);
        bones.setMouseTransparent(true);
        callout.getStyleClass().add("callout");
        callout.setMouseTransparent(true);
        callout.setVisible(false);
        getChildren().addAll(canvas, title, bones);
        for (Grip.At at : Grip.all()) {
            GripHandle handle = new GripHandle(model, at, this);
            grips.put(at, handle);
            getChildren().add(handle);
        }
        getChildren().add(callout);
        model.solved().addListener((of, before, now) -> draw(now));
        model.skeleton().addListener((of, before, now) -> requestLayout());
        model.selected().addListener((of, before, now) -> requestLayout());
        widthProperty().addListener((of, before, now) -> fits = false);
        heightProperty().addListener((of, before, now) -> fits = false);
        visibleProperty().addListener((of, before, now) -> draw(model.solved().get()));
        draw(model.solved().get());
    }

    View view() {
        return view;
    }

    Stand stand() {
        return stand;
    }

    Map<Grip.At, GripHandle> grips() {
        return grips;
    }

    /** Whether Tab goes through the grips of this pane; it does in one at a time. */
    void leads(boolean leading) {
        grips.values().forEach(g -> g.setFocusTraversable(leading));
    }

    /** Whether the body that is shown is the newest one. */
    boolean isDrawn() {
        return shown != null && !drawing.isBusy();
    }

    private void draw(Optional<SolvedPose> pose) {
        if (!isVisible() || pose.isEmpty()) {
            return; // the last picture stays until the next one is there
        }
        boolean coarse = model.isTurning() || getWidth() < FINE_FROM;
        drawing.run(
                () -> drawer.draw(
                        pose.get(),
                        view,
                        DrawingStyle.author(MILLIMETRES_PER_STATURE)
                                .with(coarse ? DrawingStyle.Quality.PREVIEW : DrawingStyle.Quality.PRINT),
                        Annotations.NONE),
                drawn -> {
                    shown = drawn;
                    if (!model.isTurning()) {
                        fits = false;
                    }
                    requestLayout();
                },
                e -> requestLayout());
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        Drawing now = shown;
        if (!fits && now != null && width > 40 && height > 40) {
            stand = Stand.fitting(now, MILLIMETRES_PER_STATURE, width, height);
            fits = true;
        }
        canvas.setWidth(width);
        canvas.setHeight(height);
        GraphicsContext surface = canvas.getGraphicsContext2D();
        surface.clearRect(0, 0, width, height);
        if (now != null) {
            double unit = stand.pixelsPerStature() / MILLIMETRES_PER_STATURE;
            Box origin = now.anchors().getOrDefault("origin", new Box(0, 0, 0, 0));
            surface.save();
            surface.translate(stand.x() - unit * origin.left(), stand.y() - unit * origin.top());
            WindowPainter.paint(now, surface, unit);
            surface.restore();
        }
        model.skeleton().get().ifPresent(s -> bonesShown = s);
        Optional<Skeleton> skeleton = Optional.ofNullable(bonesShown);
        grips.values().forEach(g -> g.setVisible(skeleton.isPresent() && fits));
        callout.setVisible(false);
        bones.getChildren().clear();
        skeleton.filter(s -> fits).ifPresent(this::place);
        getChildren().stream().filter(n -> n instanceof Label).forEach(n -> n.autosize());
    }

    private void place(Skeleton skeleton) {
        if (model.isTurning()) {
            bone(skeleton, TRUNK, "");
            for (Side side : Side.values()) {
                bone(skeleton, LEG, "." + Skeleton.letter(side));
                bone(skeleton, ARM, "." + Skeleton.letter(side));
            }
        }
        for (Map.Entry<Grip.At, GripHandle> grip : grips.entrySet()) {
            Vec3 point = skeleton.point(grip.getKey().point());
            GripHandle handle = grip.getValue();
            handle.autosize();
            handle.relocate(
                    stand.left(view, point) - handle.getWidth() / 2, stand.top(view, point) - handle.getHeight() / 2);
        }
        model.selected().get().ifPresent(at -> callOut(at, skeleton));
    }

    private void bone(Skeleton skeleton, List<String> points, String side) {
        List<Vec3> places = new ArrayList<>();
        points.forEach(p -> skeleton.find(p + side).ifPresent(places::add));
        for (int i = 1; i < places.size(); i++) {
            Line line = new Line(
                    stand.left(view, places.get(i - 1)),
                    stand.top(view, places.get(i - 1)),
                    stand.left(view, places.get(i)),
                    stand.top(view, places.get(i)));
            line.getStyleClass().add("bone");
            bones.getChildren().add(line);
        }
    }

    /** Name and degrees beside the chosen joint, where they hide least: outside the middle of the pane. */
    private void callOut(Grip.At at, Skeleton skeleton) {
        GripHandle handle = Optional.ofNullable(grips.get(at)).orElseThrow();
        if (!handle.isFocusTraversable()) {
            return;
        }
        callout.setText(handle.words());
        callout.setVisible(true);
        callout.autosize();
        Vec3 point = skeleton.point(at.point());
        double left = stand.left(view, point);
        double top = stand.top(view, point);
        double wanted = top > getHeight() / 2 ? top + 18 : top - 18 - callout.getHeight();
        callout.relocate(
                Math.max(4, Math.min(getWidth() - callout.getWidth() - 4, left - callout.getWidth() / 2)),
                Math.max(24, Math.min(getHeight() - callout.getHeight() - 4, wanted)));
    }
}
