package org.drillsheaf.desk.catalogue;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.scene.image.Image;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.desk.figure.Pixels;
import org.drillsheaf.desk.figure.SmallPictures;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.draw.ViewChooser;
import org.drillsheaf.figure.pose.Pose;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheet;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.PoseSolver;
import org.drillsheaf.figure.pose.SolvedPose;

/** The small picture of each drill: its last keyframe, in its own first view. */
public final class DrillPictures {
    private static final double MILLIMETRES_PER_STATURE = 26;
    /** Twice the points of a cell, for screens with fine pixels. */
    private static final int WIDTH = 136;

    private static final int HEIGHT = 110;
    private static final int KEPT = 600;

    private final FigureDrawer drawer = new FigureDrawer();
    private final SmallPictures<Key> pictures;

    /** The same file of the same drill has the same picture. */
    private record Key(String id, YamlNode pose) {}

    /** @param window runs what it is given on the window's thread */
    public DrillPictures(Executor background, Executor window) {
        pictures = new SmallPictures<>(key -> draw(key.pose), background, window, KEPT);
    }

    public Optional<Image> ready(Drill drill) {
        return pictures.ready(new Key(drill.id(), drill.pose()));
    }

    /** See {@link SmallPictures#want}. */
    public void want(Drill drill, java.util.function.Consumer<Optional<Image>> then) {
        pictures.want(new Key(drill.id(), drill.pose()), then);
    }

    private Optional<Image> draw(YamlNode node) {
        return PoseSheetReader.read(node, new Problems()).map(sheet -> {
            SolvedPose pose = PoseSolver.solve(last(sheet));
            View view =
                    sheet.views().stream().findFirst().flatMap(View::parse).orElseGet(() -> ViewChooser.choose(pose));
            Drawing drawing = drawer.draw(
                    pose,
                    view,
                    DrawingStyle.paper(MILLIMETRES_PER_STATURE).with(DrawingStyle.Quality.PREVIEW),
                    Annotations.NONE);
            return Pixels.of(drawing, WIDTH, HEIGHT);
        });
    }

    private static Pose last(PoseSheet sheet) {
        Pose last = sheet.pose(PoseFrame.START).orElseThrow();
        for (Map.Entry<PoseFrame, Pose> frame : sheet.poses().entrySet()) {
            last = frame.getValue();
        }
        return last;
    }
}
