package org.drillsheaf.desk.screen;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.geometry.NodeOrientation;
import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
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
    private int drawn;

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
            if (getHeight() > 0) {
                layoutChildren(); // its size stays, so nothing around it has to be laid out
            }
        }
    }

    @Override
    protected void layoutChildren() {
        drawn = 0;
        scale.ifPresent(this::draw);
        getChildren().remove(drawn, getChildren().size());
    }

    private void draw(FindingStrip strip) {
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
            polygon(
                    "-fx-fill: -ds-sheet; -fx-stroke: -ds-ink-3; -fx-stroke-width: 1;",
                    x,
                    y + 0.36 * em,
                    x - 0.28 * em,
                    y + 0.8 * em,
                    x + 0.28 * em,
                    y + 0.8 * em);
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
            polygon(
                    "-fx-fill: -ds-ink;",
                    tip,
                    y,
                    tip - side * 0.3 * em,
                    y - 0.28 * em,
                    tip - side * 0.3 * em,
                    y + 0.28 * em);
        }
    }

    private double clamp(double x, double margin) {
        return Math.max(margin, Math.min(getWidth() - margin, x));
    }

    private void rectangle(double x, double y, double width, double height, String style) {
        Rectangle rectangle = shape(Rectangle.class, Rectangle::new, style);
        rectangle.setX(x);
        rectangle.setY(y);
        rectangle.setWidth(Math.max(0, width));
        rectangle.setHeight(height);
    }

    private void polygon(String style, Double... points) {
        shape(Polygon.class, Polygon::new, style).getPoints().setAll(points);
    }

    /** The next shape, the one of the last time where it will do: a new one has its colours worked out anew. */
    private <S extends Shape> S shape(Class<S> kind, Supplier<S> make, String style) {
        if (drawn < getChildren().size() && !kind.isInstance(getChildren().get(drawn))) {
            getChildren().remove(drawn, getChildren().size());
        }
        if (drawn == getChildren().size()) {
            S made = make.get();
            made.setManaged(false);
            getChildren().add(made);
        }
        S shape = kind.cast(getChildren().get(drawn++));
        shape.setStyle(style);
        return shape;
    }
}
