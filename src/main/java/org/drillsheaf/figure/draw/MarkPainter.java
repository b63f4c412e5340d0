package org.drillsheaf.figure.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.Page.Spot;
import org.drillsheaf.figure.pose.BodyPoints;
import org.drillsheaf.figure.pose.Mark;

/** Draws the marks of a pose: arrows, pads and breath first, then what has to find a free place beside them. */
final class MarkPainter {
    /** Shortest arrow on paper; one seen shorter than {@link #LEAST_SEEN} of its length becomes a dot. */
    private static final double SHORTEST = 5.5;

    private static final double LEAST_SEEN = 0.3;
    private static final double PAD_STROKE = 1.15;
    private static final double PAD_RIM = 1.9;
    private static final double DOT = 0.9;

    private final FigureScene figure;
    private final Page page;
    private final View view;
    private final DrawingStyle style;
    private final Annotations annotations;
    private final KeyPainter keys;
    private final LabelPainter labels;
    private final AngleArcs arcs;
    private final DimensionPainter dimensions;
    private final List<DrawnPath> paths = new ArrayList<>();
    private final Map<String, Box> anchors = new LinkedHashMap<>();

    MarkPainter(
            FigureScene figure,
            Page page,
            View view,
            DrawingStyle style,
            Annotations annotations,
            Lettering lettering) {
        this.figure = figure;
        this.page = page;
        this.view = view;
        this.style = style;
        this.annotations = annotations;
        keys = new KeyPainter(page, style, lettering.bold());
        labels = new LabelPainter(page, lettering.semibold());
        arcs = new AngleArcs(page, labels);
        dimensions = new DimensionPainter(page, lettering.bold());
    }

    /** A drawn mark that still wants its key or label. */
    private record Drawn(String id, String label, List<Spot> spine, double halfWidth) {}

    void paint() {
        annotations.dimensions().forEach(this::draw);
        List<Drawn> drawn = new ArrayList<>();
        for (Mark mark : figure.pose().marks()) {
            if (mark.views().isEmpty() || mark.views().stream().anyMatch(this::isWrittenView)) {
                draw(mark).ifPresent(drawn::add);
            }
        }
        for (Drawn mark : drawn) {
            anchors.put(mark.id, boxOf(mark));
            annotate(mark);
        }
    }

    /** Whether the author, who wrote the right side, means this view; full turns change nothing. */
    private boolean isWrittenView(String words) {
        View written = figure.pose().isMirrored() ? view.mirrored() : view;
        return View.parse(words).filter(written::equals).isPresent();
    }

    List<DrawnPath> paths() {
        return paths;
    }

    /** Where each mark lies, by its id. */
    Map<String, Box> anchors() {
        return anchors;
    }

    private static Box boxOf(Drawn mark) {
        Box box = Box.NOTHING;
        for (Spot spot : mark.spine) {
            box = box.with(spot.x(), spot.y());
        }
        return box.grown(mark.halfWidth);
    }

    private void annotate(Drawn mark) {
        String key = annotations.keys().get(mark.id);
        if (key != null) {
            paths.addAll(keys.key(key, mark.spine, mark.halfWidth));
        }
        if (style.kind() == DrawingStyle.Kind.AUTHOR && !mark.label.isEmpty()) {
            Spot tail = mark.spine.get(0);
            Spot tip = mark.spine.get(mark.spine.size() - 1);
            double length = Math.max(1e-6, tail.distanceTo(tip));
            paths.addAll(labels.label(mark.label, tip, (tip.x() - tail.x()) / length, (tip.y() - tail.y()) / length));
        }
    }

    private Optional<Drawn> draw(Mark mark) {
        if (mark instanceof Mark.Arrow arrow) {
            return arrow(arrow);
        } else if (mark instanceof Mark.Swing swing) {
            return swing(swing);
        } else if (mark instanceof Mark.Pad pad) {
            return pad(pad);
        } else if (mark instanceof Mark.Breath breath) {
            return breath(breath);
        }
        return angle((Mark.AngleArc) mark);
    }

    private Optional<Drawn> arrow(Mark.Arrow arrow) {
        Optional<Vec3> at = figure.pose().findPoint(arrow.at());
        if (at.isEmpty()) {
            return Optional.empty();
        }
        Vec3 from = at.get().plus(arrow.direction().times(arrow.gap()));
        Vec3 to = from.plus(arrow.direction().times(arrow.length()));
        Spot near = page.spot(from);
        Spot far = page.spot(to);
        double seen = near.distanceTo(far);
        if (seen < LEAST_SEEN * arrow.length() * page.mmPerStature()) {
            return Optional.of(dot(arrow.id(), arrow.label(), page.spot(at.get())));
        }
        if (seen < SHORTEST) {
            far = near.plus((far.x() - near.x()) / seen * SHORTEST, (far.y() - near.y()) / seen * SHORTEST);
        }
        MarkPlaces.Straight written =
                arrow.towards() ? new MarkPlaces.Straight(far, near) : new MarkPlaces.Straight(near, far);
        MarkPlaces.Straight placed = MarkPlaces.clear(page, written, arrow.towards() ? -1 : 1);
        PathShape shape = Arrows.straight(placed.tail(), placed.tip());
        paths.addAll(Arrows.painted(shape));
        List<Spot> spine = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            Spot tail = placed.tail();
            spine.add(tail.plus(
                    (placed.tip().x() - tail.x()) * i / 4, (placed.tip().y() - tail.y()) * i / 4));
        }
        return Optional.of(taken(new Drawn(arrow.id(), arrow.label(), spine, Arrows.HEAD / 2)));
    }

    /** An arrow that points at the viewer. */
    private Drawn dot(String id, String label, Spot spot) {
        paths.add(DrawnPath.filled(DrawnPath.Role.MARK, Circles.circle(spot.x(), spot.y(), DOT + 0.4), Palette.PAPER));
        paths.add(DrawnPath.filled(DrawnPath.Role.MARK, Circles.circle(spot.x(), spot.y(), DOT), Palette.ACCENT));
        return taken(new Drawn(id, label, List.of(spot), DOT));
    }

    private Drawn taken(Drawn mark) {
        for (Spot spot : mark.spine) {
            page.take(Box.around(spot.x(), spot.y(), mark.halfWidth));
        }
        return mark;
    }

    private Optional<Drawn> swing(Mark.Swing swing) {
        Optional<Vec3> about = figure.pose().findPoint(swing.about());
        Optional<Vec3> end = figure.pose().findPoint(swing.at());
        Optional<Vec3> begin = figure.pose().ghostBody().flatMap(body -> BodyPoints.find(body, swing.at()));
        if (about.isEmpty() || end.isEmpty() || begin.isEmpty()) {
            return Optional.empty();
        }
        Optional<Arrows.Bend> bend =
                SwingPath.of(page.spot(about.get()), page.spot(begin.get()), page.spot(end.get()), swing.radiusShare());
        if (bend.isEmpty()) {
            return Optional.empty();
        }
        paths.addAll(Arrows.painted(Arrows.curved(bend.get())));
        List<Spot> spine = new ArrayList<>();
        for (int i = 0; i <= 6; i++) {
            spine.add(bend.get().at(i / 6.0, 0));
        }
        return Optional.of(taken(new Drawn(swing.id(), swing.label(), spine, Arrows.HEAD / 2)));
    }

    private Optional<Drawn> pad(Mark.Pad pad) {
        Optional<Vec3> at = figure.pose().findPoint(pad.at());
        if (at.isEmpty() || page.isHidden(at.get())) {
            return Optional.empty();
        }
        Spot middle = page.spot(at.get());
        double dx = pad.upright() ? 0 : pad.millimetres() / 2;
        double dy = pad.upright() ? pad.millimetres() / 2 : 0;
        PathShape bar = new PathShape.Builder()
                .moveTo(middle.x() - dx, middle.y() - dy)
                .lineTo(middle.x() + dx, middle.y() + dy)
                .build();
        paths.add(DrawnPath.stroked(DrawnPath.Role.MARK, bar, Palette.PAPER, PAD_RIM));
        paths.add(DrawnPath.stroked(DrawnPath.Role.MARK, bar, Palette.ACCENT, PAD_STROKE));
        List<Spot> spine = new ArrayList<>();
        for (int i = -2; i <= 2; i++) {
            spine.add(middle.plus(dx * i / 2, dy * i / 2));
        }
        return Optional.of(taken(new Drawn(pad.id(), "", spine, PAD_RIM / 2)));
    }

    private Optional<Drawn> breath(Mark.Breath breath) {
        Vec3 ahead = figure.body().skeleton().frame("head").apply(1, -.12, 0);
        return figure.pose()
                .findPoint("mouth")
                .flatMap(mouth -> BreathStrokes.strokes(page, mouth, ahead, breath.out()))
                .map(strokes -> {
                    paths.addAll(strokes.paths());
                    return new Drawn(breath.id(), breath.label(), strokes.spine(), 1.4);
                });
    }

    private Optional<Drawn> angle(Mark.AngleArc mark) {
        if (style.kind() == DrawingStyle.Kind.AUTHOR) {
            JointArms.of(figure.pose(), mark)
                    .ifPresent(arms -> paths.addAll(arcs.arc(
                            arms.centre(), arms.straight(), arms.segment(), arms.degrees(), mark.millimetres())));
        }
        return Optional.empty();
    }

    private void draw(Annotations.Dimension dimension) {
        DimensionEnds.of(figure, dimension)
                .ifPresent(ends -> paths.addAll(dimensions.dimension(ends.from(), ends.to(), dimension.label())));
    }
}
