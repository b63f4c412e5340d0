package org.drillsheaf.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.draw.ViewChooser;
import org.drillsheaf.figure.pose.Distance;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseReader;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.PoseSolver;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;

/** Draws what a file holds in the views and keyframes that were asked for. Safe for several threads. */
final class DrillPictures {
    /** The word for a view chosen by the program. */
    static final String AUTOMATIC = "auto";

    /** Height for the distances of a test's picture when none was asked for, centimetres: that of the props' sizes. */
    private static final double REFERENCE_STATURE = 172;

    private final FigureDrawer drawer;
    private final Request request;

    DrillPictures(FigureDrawer drawer, Request request) {
        this.drawer = drawer;
        this.request = request;
    }

    /**
     * What was asked for.
     *
     * @param view empty for the views of the file
     * @param frame empty for all keyframes
     * @param oneView only the first view of a file
     * @param statureCentimetres height for the distances in paper pictures and in those of tests; without it, tests alone show theirs
     */
    record Request(
            Optional<String> view,
            Optional<PoseFrame> frame,
            DrawingStyle style,
            BodyBuild build,
            boolean mirrored,
            boolean oneView,
            Optional<Double> statureCentimetres) {}

    /** A drawing and the name of its file without the ending. */
    record Named(String name, Drawing drawing) {}

    /** @return nothing when there was an error; the reasons then stand in {@code problems} */
    List<Named> draw(DrawnSource source, Problems problems) {
        YamlNode node = source.node();
        Optional<YamlNode> sheet =
                node.has("start") ? Optional.of(node) : node.get("pose").filter(YamlNode::isMap);
        if (sheet.isPresent()) {
            return PoseSheetReader.read(sheet.get(), problems)
                    .map(read -> draw(source, read.solve(request.build), problems))
                    .orElse(List.of());
        }
        return PoseReader.read(node, problems)
                .map(pose -> PoseSolver.solve(pose, request.build))
                .map(pose -> {
                    problems.addAll(pose.problems());
                    List<Named> drawn = new ArrayList<>();
                    for (String view : views(node.texts("views"))) {
                        drawn.add(draw(source.name(), pose, view, annotations(pose, Map.of(), List.of())));
                    }
                    return drawn;
                })
                .orElse(List.of());
    }

    private List<Named> draw(DrawnSource source, SolvedSheet solved, Problems problems) {
        problems.addAll(solved.problems());
        SolvedSheet sheet = request.mirrored ? solved.mirrored() : solved;
        Map<String, String> keys = keys(source.node());
        List<Named> drawn = new ArrayList<>();
        for (String view : views(solved.sheet().views())) {
            Optional<SolvedPose> before = Optional.empty();
            for (Map.Entry<PoseFrame, SolvedPose> entry : sheet.poses().entrySet()) {
                SolvedPose pose = before.filter(
                                b -> entry.getValue().ghostBody().isEmpty())
                        .map(b -> entry.getValue().withGhost(b.body()))
                        .orElse(entry.getValue());
                before = Optional.of(pose);
                if (request.frame.isEmpty() || request.frame.get() == entry.getKey()) {
                    List<Annotations.Dimension> distances = distances(sheet, entry.getKey(), pose, source.isTest());
                    Annotations annotations = source.isTest()
                            ? Annotations.NONE.withDimensions(distances)
                            : annotations(pose, keys, distances);
                    drawn.add(draw(source.name() + "-" + entry.getKey().id(), pose, view, annotations));
                }
            }
        }
        return drawn;
    }

    private List<String> views(List<String> written) {
        List<String> views = request.view.map(List::of).orElse(written);
        if (views.isEmpty()) {
            return List.of(AUTOMATIC);
        }
        return request.oneView ? views.subList(0, 1) : views;
    }

    private Named draw(String name, SolvedPose pose, String words, Annotations annotations) {
        View view = words.equals(AUTOMATIC)
                ? ViewChooser.choose(pose)
                : View.parse(words)
                        .map(v -> pose.isMirrored() ? v.mirrored() : v)
                        .orElse(View.SIDE);
        String file = name + "-" + words.replaceAll("[^a-z0-9-]+", "_");
        return new Named(file, drawer.draw(pose, view, request.style, annotations));
    }

    private Annotations annotations(SolvedPose pose, Map<String, String> keys, List<Annotations.Dimension> dimensions) {
        if (request.style.kind() == DrawingStyle.Kind.AUTHOR) {
            return Annotations.NONE;
        }
        Map<String, String> own = new LinkedHashMap<>();
        pose.marks().forEach(mark -> {
            String key = keys.get(mark.id());
            if (key != null) {
                own.put(mark.id(), key);
            }
        });
        return Annotations.ofKeys(own).withDimensions(dimensions);
    }

    /** The number of the step that names each mark, counted through set-up and action. */
    private static Map<String, String> keys(YamlNode drill) {
        Map<String, String> keys = new LinkedHashMap<>();
        int number = 0;
        for (String part : List.of("set-up", "action")) {
            for (YamlNode step : drill.get(part).map(YamlNode::items).orElse(List.of())) {
                number++;
                String words = String.valueOf(number);
                step.text("mark").ifPresent(mark -> keys.put(mark, words));
            }
        }
        return keys;
    }

    private List<Annotations.Dimension> distances(SolvedSheet sheet, PoseFrame frame, SolvedPose pose, boolean isTest) {
        Optional<Double> stature =
                request.statureCentimetres.or(() -> isTest ? Optional.of(REFERENCE_STATURE) : Optional.empty());
        List<Annotations.Dimension> dimensions = new ArrayList<>();
        for (Distance distance : sheet.sheet().distances()) {
            Optional<Double> statures =
                    distance.frame() == frame && distance.along().isPresent() && !pose.isMirrored()
                            ? distance.in(pose)
                            : Optional.empty();
            if (statures.isPresent() && stature.isPresent()) {
                long centimetres = Math.round(statures.get() * stature.get());
                char axis = distance.along()
                        .orElseThrow()
                        .name()
                        .toLowerCase(Locale.ROOT)
                        .charAt(0);
                dimensions.add(new Annotations.Dimension(distance.of(), distance.from(), axis, centimetres + " cm"));
            }
        }
        return dimensions;
    }
}
