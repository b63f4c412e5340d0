package org.drillsheaf.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheet;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;

/** The poses of the library, ready to be solved and drawn. */
final class LibraryPictures {
    private LibraryPictures() {}

    /** One keyframe of a drill as a client page shows it. */
    record Picture(String name, SolvedPose pose, View view) {
        Drawing draw(FigureDrawer drawer, DrawingStyle style) {
            return drawer.draw(pose, view, style, Annotations.NONE);
        }
    }

    static List<Path> files() {
        try (Stream<Path> files = Files.list(Path.of("exercise-library"))) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static PoseSheet sheet(Path file) {
        try {
            Problems problems = new Problems();
            return YamlNode.parse(file.getFileName().toString(), Files.readString(file), problems)
                    .flatMap(drill -> drill.get("pose"))
                    .flatMap(pose -> PoseSheetReader.read(pose, problems))
                    .orElseThrow(() -> new IllegalStateException(problems.all().stream()
                            .findFirst()
                            .map(Object::toString)
                            .orElse("no pose: " + file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every keyframe in every view of a drill. */
    static List<Picture> pictures(Path file) {
        PoseSheet sheet = sheet(file);
        SolvedSheet solved = sheet.solve();
        String drill = file.getFileName().toString().replace(".yaml", "");
        List<String> views = sheet.views().isEmpty() ? List.of("side") : sheet.views();
        List<Picture> pictures = new ArrayList<>();
        for (String view : views) {
            for (Map.Entry<PoseFrame, SolvedPose> frame : solved.poses().entrySet()) {
                String name = drill + " " + frame.getKey().id() + " " + view;
                pictures.add(
                        new Picture(name, frame.getValue(), View.parse(view).orElseThrow()));
            }
        }
        return pictures;
    }
}
