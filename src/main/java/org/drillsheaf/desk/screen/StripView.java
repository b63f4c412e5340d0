package org.drillsheaf.desk.screen;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.NodeOrientation;
import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import org.drillsheaf.screen.FindingStrip;

/**
 * Where a value stands against its cut-off, in errors of its test: the tick in the middle is the cut-off, the bar is one error
 * to each side, right is fuller. Drawn only; its words stand with the field.
 */
final class StripView extends Region {
    /** Errors from one end to the other. */
    private static final double ERRORS = 13;

    private Optional<FindingStrip> scale = Optional.empty();
    private OptionalDouble now = OptionalDouble.empty();
    private OptionalDouble before = OptionalDouble.empty();

    StripView() {
        getStyleClass().add("strip");
        setMouseTransparent(true);
        setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
    }

    /** @param before the value of the visit before */
    void show(Optional<FindingStrip> strip, OptionalDouble value, OptionalDouble before) {
        if (!scale.equals(strip) || !now.equals(value) || !this.before.equals(before)) {
            this.scale = strip;
            this.now = value;
            this.before = before;
            requestLayout();
        }
    }

    @Override
    protected void layoutChildren() {
        getChildren().clear();
        if (scale.isEmpty()) {
            return;
        }
        FindingStrip strip = scale.get();
        double em = getHeight() / 1.7;
        double y = getHeight() * 0.45;
        double error = getWidth() / ERRORS;
        double middle = getWidth() / 2;
        if (now.isEmpty()) {
            for (double x = 0; x < middle; x += 0.3 * em) {
                rectangle(x, y - 0.5, 0.12 * em, 1, "-fx-fill: -ds-ink-3;");
            }
        } else {
            rectangle(0, y - 0.6, middle, 1.2, "-fx-fill: -ds-edge;");
        }
        rectangle(middle, y - 0.19 * em, getWidth() - middle, 0.38 * em, "-fx-fill: -ds-bar-0;");
        strip.beyond().ifPresent(b -> {
            double x = middle + b * error;
            if (x < getWidth() - 1) {
                rectangle(x - 0.5, y - 0.4 * em, 1, 0.8 * em, "-fx-fill: -ds-ink-2;");
            }
        });
        now.ifPresent(value -> bar(strip, strip.errors(value), middle, y, error, em));
        rectangle(middle - 1, y - 0.6 * em, 2, 1.2 * em, "-fx-fill: -ds-ink;");
        before.ifPresent(value -> {
            double x = clamp(middle + strip.errors(value) * error, 0.35 * em);
            Polygon triangle = new Polygon(x, y + 0.36 * em, x - 0.28 * em, y + 0.8 * em, x + 0.28 * em, y + 0.8 * em);
            triangle.setStyle("-fx-fill: -ds-sheet; -fx-stroke: -ds-ink-3; -fx-stroke-width: 1;");
            getChildren().add(triangle);
        });
    }

    private void bar(FindingStrip strip, double errors, double middle, double y, double error, double em) {
        double x = clamp(middle + errors * error, error + 2);
        boolean outside = Math.abs(errors) > ERRORS / 2 - 1;
        double height = 0.62 * em;
        boolean beyondRange = !strip.fuller()
                && strip.beyond().isPresent()
                && errors >= strip.beyond().getAsDouble() + 1;
        String solid = "-fx-fill: -ds-ink;";
        String hollow = "-fx-fill: -ds-well; -fx-stroke: -ds-ink; -fx-stroke-width: 1;";
        if (errors <= -1 || beyondRange) {
            rectangle(x - error, y - height / 2, 2 * error, height, solid);
            rectangle(x - 0.5, y - height / 2, 1, height, "-fx-fill: -ds-sheet;");
        } else if (errors < 1) {
            rectangle(x - error, y - height / 2, 2 * error, height, hollow);
            double to = Math.max(x - error, Math.min(middle, x + error));
            rectangle(x - error, y - height / 2, to - x + error, height, solid);
        } else {
            rectangle(x - error, y - height / 2, 2 * error, height, hollow);
            rectangle(x - 0.5, y - height / 2, 1, height, "-fx-fill: -ds-ink;");
        }
        if (outside) {
            double side = Math.signum(errors);
            double tip = side > 0 ? getWidth() : 0;
            Polygon arrow =
                    new Polygon(tip, y, tip - side * 0.3 * em, y - 0.28 * em, tip - side * 0.3 * em, y + 0.28 * em);
            arrow.setStyle("-fx-fill: -ds-ink;");
            getChildren().add(arrow);
        }
    }

    private double clamp(double x, double margin) {
        return Math.max(margin, Math.min(getWidth() - margin, x));
    }

    private void rectangle(double x, double y, double width, double height, String style) {
        Rectangle rectangle = new Rectangle(x, y, Math.max(0, width), height);
        rectangle.setStyle(style);
        getChildren().add(rectangle);
    }
}
