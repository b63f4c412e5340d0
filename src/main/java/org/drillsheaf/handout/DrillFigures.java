package org.drillsheaf.handout;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.Box;
import org.drillsheaf.figure.draw.Drawing;
import org.drillsheaf.figure.draw.DrawingCache;
import org.drillsheaf.figure.draw.DrawingPainter;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.DrawnPath;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;
import org.drillsheaf.handout.page.DrillBlock;
import org.drillsheaf.handout.paint.Picture;

/**
 * Draws the pictures of a drill at the sizes of the page. Upright bodies stand side by side at 44 mm per stature, lying and
 * kneeling ones lie below each other at 50, three upright ones stand at 38. Safe for several threads.
 */
final class DrillFigures {
    /** Room beside the steps, without the letters of the pictures, when pictures stand side by side; millimetres. */
    private static final double ROOM_BESIDE = 73.5;

    private static final double LETTER = 6;
    private static final double HIGHEST_BESIDE = 56;
    private static final double ROOM_STACKED = 52;
    private static final double HIGHEST_STACKED = 34;
    /** A picture is rather stacked than made smaller than this. */
    private static final double LEAST_SCALE = 0.8;

    private static final double SMALL = 30;
    /** In large print pictures grow less than the type: the page is no wider. */
    private static final double LARGE_GROWTH = 1.2;

    private final DrawingCache drawings;

    /** @param drawings pictures drawn before; two phases or two clients often share them */
    DrillFigures(DrawingCache drawings) {
        this.drawings = drawings;
    }

    /**
     * What belongs to one keyframe.
     *
     * @param keys number at each mark, by the mark's id
     * @param dimensions distances of the texts to repeat in the picture
     */
    record Frame(
            PoseFrame frame, Map<String, String> keys, List<Annotations.Dimension> dimensions, String alternative) {}

    /** The pictures of a drill, in the order of the frames, and how they stand. */
    record Drawn(List<DrillBlock.Figure> figures, DrillBlock.Arrangement arrangement, DrillBlock.Figure small) {}

    Drawn draw(SolvedSheet sheet, List<Frame> frames, String smallAlternative, boolean large) {
        boolean upright = frames.stream().allMatch(f -> isUpright(sheet, f));
        double growth = large ? LARGE_GROWTH : 1;
        double scale = growth * (!upright ? 50 : frames.size() > 2 ? 38 : 44);
        DrawingStyle style = DrawingStyle.paper(scale);
        style = large ? style.withKeys(8.4, 18) : style;
        List<Drawing> drawings = new ArrayList<>();
        List<DrillBlock.Figure> figures = new ArrayList<>();
        for (Frame frame : frames) {
            Annotations annotations = Annotations.ofKeys(frame.keys()).withDimensions(frame.dimensions());
            Drawing drawing = draw(sheet, frame.frame(), style, annotations);
            drawings.add(drawing);
            figures.add(figure(drawing, frame.alternative()));
        }
        Drawing moving = withoutNumbers(drawings.get(Math.min(1, drawings.size() - 1)));
        DrillBlock.Figure small = scaled(figure(moving, smallAlternative), growth * SMALL / scale);
        return arranged(figures, upright, large, small);
    }

    private static Drawn arranged(
            List<DrillBlock.Figure> figures, boolean upright, boolean large, DrillBlock.Figure small) {
        if (large) {
            return new Drawn(figures, DrillBlock.Arrangement.STACKED, small);
        }
        double width = 0;
        double widest = 0;
        double highest = 0;
        for (DrillBlock.Figure figure : figures) {
            width += figure.picture().widthMm();
            widest = Math.max(widest, figure.picture().widthMm());
            highest = Math.max(highest, figure.picture().heightMm());
        }
        double room = figures.size() > 2 ? HIGHEST_STACKED * 2 / 3 : HIGHEST_STACKED;
        double letters = figures.size() > 2 ? 0 : LETTER * figures.size(); // above three pictures, beside two
        double beside = least(1, (ROOM_BESIDE - letters) / width, HIGHEST_BESIDE / highest);
        double stacked = least(1, ROOM_STACKED / widest, room / highest);
        boolean sideBySide = upright && (beside >= LEAST_SCALE || beside >= stacked - 0.05);
        return new Drawn(
                figures.stream()
                        .map(f -> scaled(f, sideBySide ? beside : stacked))
                        .toList(),
                sideBySide ? DrillBlock.Arrangement.SIDE_BY_SIDE : DrillBlock.Arrangement.STACKED,
                small);
    }

    private static double least(double first, double second, double third) {
        return Math.min(first, Math.min(second, third));
    }

    private static DrillBlock.Figure scaled(DrillBlock.Figure figure, double factor) {
        return factor == 1
                ? figure
                : new DrillBlock.Figure(
                        figure.picture().scaled(factor), figure.floorMm() * factor, figure.alternative());
    }

    private static boolean isUpright(SolvedSheet sheet, Frame frame) {
        return switch (sheet.sheet().pose(frame.frame()).orElseThrow().root()) {
            case STANDING, LEANING, SEATED, KNEELING, HALF_KNEELING -> true;
            case SUPINE, PRONE, HANDS_AND_KNEES, SIDE_LYING_LEFT, SIDE_LYING_RIGHT -> false;
        };
    }

    private Drawing draw(SolvedSheet sheet, PoseFrame frame, DrawingStyle style, Annotations annotations) {
        SolvedPose pose = sheet.pose(frame).orElseThrow();
        View written =
                sheet.sheet().views().stream().findFirst().flatMap(View::parse).orElse(View.SIDE);
        // The view is written for the right side; mirrored with the pose, the working side stays near.
        return drawings.draw(pose, pose.isMirrored() ? written.mirrored() : written, style, annotations);
    }

    /** The same picture where no step list explains its numbers. */
    private static Drawing withoutNumbers(Drawing drawing) {
        return new Drawing(
                drawing.widthMm(),
                drawing.heightMm(),
                drawing.paths().stream()
                        .filter(path -> path.role() != DrawnPath.Role.KEY && path.role() != DrawnPath.Role.DIMENSION)
                        .toList(),
                drawing.anchors());
    }

    private static DrillBlock.Figure figure(Drawing drawing, String alternative) {
        Picture picture = new Picture(drawing.widthMm(), drawing.heightMm(), new OnPaper(drawing));
        double floor = Optional.ofNullable(drawing.anchors().get("floor"))
                .map(Box::top)
                .orElse(drawing.heightMm());
        return new DrillBlock.Figure(
                picture, Math.max(0, Math.min(drawing.heightMm() / 3, drawing.heightMm() - floor)), alternative);
    }

    /** A drawing on paper; its paths are the same objects as long as the drawing is remembered. */
    private record OnPaper(Drawing drawing) implements Picture.Painter {
        @Override
        public void paint(Graphics2D surface) {
            DrawingPainter.paint(drawing, surface, 1);
        }

        @Override
        public boolean comesAgain() {
            return true;
        }
    }
}
