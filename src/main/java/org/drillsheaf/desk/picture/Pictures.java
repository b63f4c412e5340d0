package org.drillsheaf.desk.picture;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.image.Image;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.desk.figure.Pixels;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.draw.ViewChooser;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;
import org.drillsheaf.screen.MovementTest;

/**
 * Pictures of drills and tests as they are printed, drawn one after the other on a thread of their own and kept. A property is
 * empty until its picture is there; a picture that cannot be drawn stays empty.
 */
public final class Pictures implements AutoCloseable {
    private static final double MILLIMETRES_PER_STATURE = 44;
    private static final int KEPT = 400;

    private final Catalogue catalogue;
    private final ExecutorService artist = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "desk-pictures");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });
    private final Map<Key, ReadOnlyObjectWrapper<Optional<Image>>> kept = new LinkedHashMap<>(64, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, ReadOnlyObjectWrapper<Optional<Image>>> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * How large a picture may be, in pixels.
     *
     * @param width most
     * @param height most
     */
    public record Size(int width, int height) {
        /** For an entry in a list; still sharp at 200 %. */
        public static final Size SMALL = new Size(150, 120);

        /** For a side panel or a first page. */
        public static final Size LARGE = new Size(640, 680);
    }

    private record Key(String kind, String id, boolean mirrored) {}

    public Pictures(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * The picture of a drill: its last keyframe with the first as a ghost.
     *
     * @param mirrored for the left side of a sided drill, which is written for the right
     */
    public ReadOnlyObjectProperty<Optional<Image>> drill(String id, boolean mirrored) {
        return picture(
                new Key("drill", id, mirrored),
                () -> catalogue.drill(id).flatMap(d -> draw(d.pose(), mirrored, Size.SMALL)));
    }

    /** The picture of a test at the end of the movement, on the side that is measured. */
    public ReadOnlyObjectProperty<Optional<Image>> test(MovementTest test, boolean mirrored) {
        return picture(new Key("test", test.id(), mirrored), () -> test.pose()
                .flatMap(pose -> draw(pose, mirrored, Size.LARGE)));
    }

    private ReadOnlyObjectProperty<Optional<Image>> picture(
            Key key, java.util.function.Supplier<Optional<Image>> drawn) {
        ReadOnlyObjectWrapper<Optional<Image>> there = kept.get(key);
        if (there == null) {
            ReadOnlyObjectWrapper<Optional<Image>> made = new ReadOnlyObjectWrapper<>(Optional.empty());
            kept.put(key, made);
            if (!artist.isShutdown()) {
                artist.execute(() -> {
                    Optional<Image> image = drawn.get();
                    Platform.runLater(() -> made.set(image));
                });
            }
            there = made;
        }
        return there.getReadOnlyProperty();
    }

    /** Draws a pose as written; blocks. */
    public static Optional<Image> draw(YamlNode pose, boolean mirrored, Size size) {
        return PoseSheetReader.read(pose, new Problems()).map(sheet -> {
            SolvedSheet solved = sheet.solve(BodyBuild.AVERAGE);
            SolvedSheet seen = mirrored ? solved.mirrored() : solved;
            SolvedPose first = seen.poses().values().iterator().next();
            SolvedPose last = first;
            for (Map.Entry<PoseFrame, SolvedPose> frame : seen.poses().entrySet()) {
                last = frame.getValue();
            }
            SolvedPose shown = last == first || last.ghostBody().isPresent() ? last : last.withGhost(first.body());
            View view = seen.sheet().views().stream()
                    .findFirst()
                    .flatMap(View::parse)
                    .map(v -> shown.isMirrored() ? v.mirrored() : v)
                    .orElseGet(() -> ViewChooser.choose(shown));
            Drawing drawing =
                    new FigureDrawer().draw(shown, view, DrawingStyle.paper(MILLIMETRES_PER_STATURE), Annotations.NONE);
            double scale = Math.min(size.width() / drawing.widthMm(), size.height() / drawing.heightMm());
            return Pixels.of(
                    drawing, (int) Math.ceil(drawing.widthMm() * scale), (int) Math.ceil(drawing.heightMm() * scale));
        });
    }

    @Override
    public void close() {
        artist.shutdownNow();
    }
}
