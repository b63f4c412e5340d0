package org.drillsheaf.desk.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.Image;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Box;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingPainter;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DrawingViewTest {
    private static final int WIDTH = 300;
    private static final int HEIGHT = 240;

    @BeforeAll
    static void startToolkit() {
        DeskRun.startToolkit();
    }

    @Test
    void theWindowShowsTheSamePictureAsPaper() throws Exception {
        Drawing drawing = drawing();

        WritableImage shown = DeskRun.fx(() -> {
            DrawingView view = new DrawingView("a figure on hands and knees");
            view.show(Optional.of(drawing));
            StackPane root = new StackPane(view);
            new Scene(root, WIDTH, HEIGHT);
            root.applyCss();
            root.layout();
            SnapshotParameters white = new SnapshotParameters();
            white.setFill(javafx.scene.paint.Color.WHITE);
            return root.snapshot(white, new WritableImage(WIDTH, HEIGHT));
        });

        BufferedImage paper = paper(drawing);
        int different = 0;
        int inked = 0;
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                inked += grey(paper.getRGB(x, y)) < 200 ? 1 : 0;
                different += Math.abs(grey(paper.getRGB(x, y))
                                        - grey(shown.getPixelReader().getArgb(x, y)))
                                > 96
                        ? 1
                        : 0;
            }
        }
        assertThat(inked).as("pixels with ink").isGreaterThan(1000);
        assertThat(different).as("pixels that differ plainly").isLessThan(inked / 50);
    }

    @Test
    void thePointsOfTheBodyLieWhereTheDrawingSays() {
        SolvedPose pose = pose();
        View view = new View(40, 16);

        Drawing drawing = new FigureDrawer().draw(pose, view, DrawingStyle.paper(46), Annotations.NONE);

        Box origin = drawing.anchors().get("origin");
        Box body = drawing.anchors().get("body");
        for (String name : List.of("head", "hip.R", "knee.L", "ankle.R", "elbow.L")) {
            Vec3 point = pose.point(name);
            assertThat(origin.left() + 46 * view.across(point)).as(name).isBetween(body.left(), body.right());
            assertThat(origin.top() - 46 * view.upward(point)).as(name).isBetween(body.top(), body.bottom());
        }
    }

    @Test
    void whatWasAskedForLastIsMadeFirstAndWhatWasScrolledPastIsForgotten() {
        Deque<Runnable> background = new ArrayDeque<>();
        List<Integer> made = new ArrayList<>();
        List<Integer> arrived = new ArrayList<>();
        Image picture = Pixels.of(new Drawing(1, 1, List.of(), java.util.Map.of()), 1, 1);
        SmallPictures<Integer> pictures = new SmallPictures<>(
                key -> {
                    made.add(key);
                    return Optional.of(picture);
                },
                background::add,
                Runnable::run,
                50);
        for (int key = 0; key < 60; key++) {
            int row = key;
            pictures.want(key, p -> arrived.add(row));
        }

        while (!background.isEmpty()) {
            background.remove().run();
        }

        assertThat(made).startsWith(0, 59, 58, 57).hasSize(41).doesNotContain(1, 2, 19);
        assertThat(arrived).isEqualTo(made);
        assertThat(pictures.ready(59)).contains(picture);
        pictures.want(59, p -> arrived.add(1000));
        assertThat(arrived).endsWith(1000);
        assertThat(background).isEmpty();
    }

    private static SolvedPose pose() {
        try {
            Path file = Path.of("exercise-library/chest-on-seat.yaml");
            YamlNode drill = YamlNode.parse(file.toString(), Files.readString(file), new Problems())
                    .orElseThrow();
            return PoseSheetReader.read(drill.nearest("/pose"), new Problems())
                    .orElseThrow()
                    .solve()
                    .pose(PoseFrame.START)
                    .orElseThrow();
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Drawing drawing() {
        return new FigureDrawer().draw(pose(), View.SIDE, DrawingStyle.paper(46), Annotations.NONE);
    }

    private static BufferedImage paper(Drawing drawing) {
        BufferedImage paper = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = paper.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, WIDTH, HEIGHT);
        double scale = Math.min(WIDTH / drawing.widthMm(), HEIGHT / drawing.heightMm());
        g.translate((WIDTH - scale * drawing.widthMm()) / 2, (HEIGHT - scale * drawing.heightMm()) / 2);
        DrawingPainter.paint(drawing, g, scale);
        g.dispose();
        return paper;
    }

    private static int grey(int argb) {
        return ((argb >> 16 & 0xFF) + (argb >> 8 & 0xFF) + (argb & 0xFF)) / 3;
    }
}
