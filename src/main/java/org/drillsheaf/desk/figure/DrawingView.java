package org.drillsheaf.desk.figure;

import java.util.Optional;
import javafx.geometry.NodeOrientation;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import org.drillsheaf.figure.draw.Drawing;
import org.jspecify.annotations.Nullable;

/**
 * Shows a drawing as large as its place allows, in the middle. A picture is paper: it is never mirrored with the window, and its
 * ground is the style class {@code drawing}.
 */
public final class DrawingView extends Region {
    private final Canvas canvas = new Canvas();
    private @Nullable Drawing drawing;

    /** @param words what the picture shows, for those who cannot see it */
    public DrawingView(String words) {
        getStyleClass().add("drawing");
        setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(words);
        canvas.setManaged(false);
        canvas.setMouseTransparent(true);
        getChildren().add(canvas);
    }

    /** What is shown; empty shows the bare ground. */
    public void show(Optional<Drawing> shown) {
        drawing = shown.orElse(null);
        requestLayout();
    }

    public Optional<Drawing> shown() {
        return Optional.ofNullable(drawing);
    }

    @Override
    protected void layoutChildren() {
        double left = snappedLeftInset();
        double top = snappedTopInset();
        double width = Math.max(0, getWidth() - left - snappedRightInset());
        double height = Math.max(0, getHeight() - top - snappedBottomInset());
        canvas.setWidth(width);
        canvas.setHeight(height);
        canvas.relocate(left, top);
        GraphicsContext surface = canvas.getGraphicsContext2D();
        surface.clearRect(0, 0, width, height);
        Drawing now = drawing;
        if (now == null || width < 1 || height < 1) {
            return;
        }
        double scale = Math.min(width / now.widthMm(), height / now.heightMm());
        surface.save();
        surface.translate((width - scale * now.widthMm()) / 2, (height - scale * now.heightMm()) / 2);
        WindowPainter.paint(now, surface, scale);
        surface.restore();
    }
}
