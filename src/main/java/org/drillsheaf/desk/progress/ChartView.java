package org.drillsheaf.desk.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import javafx.geometry.NodeOrientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import org.drillsheaf.desk.look.Labels;

/**
 * The values of one test on one side over time: every point with its error, the cut-off as a line, up is fuller. Reads in grey;
 * the same numbers stand in the table beside it.
 */
final class ChartView extends Region {
    private static final double MARGIN = 0.16;

    private final ProgressModel.Line line;
    private final LocalDate from;
    private final long days;
    private final String aim;

    /**
     * @param from first visit of all charts, so that they stand under each other
     * @param to last visit of all
     * @param aim the cut-off in words
     */
    ChartView(ProgressModel.Line line, LocalDate from, LocalDate to, String aim, String words) {
        this.line = line;
        this.aim = aim;
        this.from = from;
        this.days = Math.max(1, ChronoUnit.DAYS.between(from, to));
        getStyleClass().add("chart");
        setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(words);
    }

    @Override
    protected void layoutChildren() {
        getChildren().clear();
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (ProgressModel.Point point : line.points()) {
            least = Math.min(least, point.value() - line.error());
            most = Math.max(most, point.value() + line.error());
        }
        if (line.aim().isPresent()) {
            least = Math.min(least, line.aim().getAsDouble());
            most = Math.max(most, line.aim().getAsDouble());
        }
        double room = Math.max(1e-6, most - least);
        double top = most + room * MARGIN;
        double height = room * (1 + 2 * MARGIN);
        double lowest = least - room * MARGIN;
        double plot = getWidth() - 70;
        if (line.aim().isPresent()) {
            double y = y(line.aim().getAsDouble(), top, lowest, height);
            rule(0, y, plot + 10, y, "-fx-stroke: -ds-ink-2; -fx-stroke-width: 1; -fx-stroke-dash-array: 5 4;");
            place(Labels.text(aim, "tiny", "third"), plot + 14, y);
        }
        List<ProgressModel.Point> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            rule(
                    x(points.get(i - 1), plot),
                    y(points.get(i - 1).value(), top, lowest, height),
                    x(points.get(i), plot),
                    y(points.get(i).value(), top, lowest, height),
                    "-fx-stroke: -ds-bar; -fx-stroke-width: 1.6;");
        }
        for (int i = 0; i < points.size(); i++) {
            ProgressModel.Point point = points.get(i);
            double x = x(point, plot);
            double y = y(point.value(), top, lowest, height);
            double upper = y(point.value() + line.error(), top, lowest, height);
            double lower = y(point.value() - line.error(), top, lowest, height);
            Rectangle band = new Rectangle(x - 5, Math.min(upper, lower), 10, Math.abs(lower - upper));
            band.setStyle("-fx-fill: -ds-bar-0;");
            getChildren().add(band);
            boolean now = i == points.size() - 1;
            Circle dot = new Circle(x, y, 4.2);
            dot.setStyle(
                    now ? "-fx-fill: -ds-ink;" : "-fx-fill: -ds-sheet; -fx-stroke: -ds-ink; -fx-stroke-width: 1.4;");
            getChildren().add(dot);
            if (now && line.aim().isEmpty()) {
                place(Labels.text(point.words(), "tiny", "second"), plot + 14, y);
            }
        }
        getChildren().forEach(n -> n.setMouseTransparent(true));
    }

    private double x(ProgressModel.Point point, double plot) {
        return 8 + (plot - 16) * ChronoUnit.DAYS.between(from, point.date()) / days;
    }

    private double y(double value, double top, double lowest, double height) {
        double share = line.lowerIsFuller() ? (value - lowest) / height : (top - value) / height;
        return share * getHeight();
    }

    private void rule(double x1, double y1, double x2, double y2, String style) {
        Line rule = new Line(x1, y1, x2, y2);
        rule.setStyle(style);
        getChildren().add(rule);
    }

    private void place(Node label, double x, double y) {
        getChildren().add(label);
        label.applyCss();
        label.autosize();
        label.relocate(x, Math.max(0, Math.min(getHeight() - 14, y - 8)));
    }
}
