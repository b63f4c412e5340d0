package org.drillsheaf.desk.look;

import java.util.concurrent.atomic.AtomicReference;
import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import org.jspecify.annotations.Nullable;

/** Scrolls so far that something can be seen, and no further. */
public final class IntoSight {
    /** Dots above and below what has the keys that are seen too, such as the rest of a question. */
    private static final double NEIGHBOURS = 48;

    private IntoSight() {}

    /**
     * Whatever gets the keys in a window is brought into sight, as soon as it is laid out: who works with the keys alone must
     * see where they go. It stays in sight when its page gets lower, be it by a message above or by larger letters.
     */
    public static void follow(Scene scene) {
        AtomicReference<@Nullable Node> next = new AtomicReference<>();
        AtomicReference<@Nullable ScrollPane> around = new AtomicReference<>();
        ChangeListener<Bounds> resized = (of, before, now) -> {
            if (now.getHeight() < before.getHeight()) {
                next.set(scene.getFocusOwner());
                Platform.requestNextPulse();
            }
        };
        scene.focusOwnerProperty().addListener((of, before, now) -> {
            next.set(now);
            ScrollPane entered = around(now);
            ScrollPane left = around.getAndSet(entered);
            if (left != null) {
                left.viewportBoundsProperty().removeListener(resized);
            }
            if (entered != null) {
                entered.viewportBoundsProperty().addListener(resized);
            }
            Platform.requestNextPulse();
        });
        scene.addPostLayoutPulseListener(() -> {
            Node focused = next.getAndSet(null);
            if (focused != null && focused.getScene() == scene) {
                bring(focused, Math.min(NEIGHBOURS, focused.getBoundsInLocal().getHeight()));
            }
        });
    }

    private static @Nullable ScrollPane around(@Nullable Node node) {
        for (Node n = node; n != null; n = n.getParent()) {
            if (n instanceof ScrollPane pane) {
                return pane;
            }
        }
        return null;
    }

    /**
     * What it lies in must be laid out.
     *
     * @param margin dots of its neighbours that shall be seen too
     */
    public static void bring(Node node, double margin) {
        for (Node around = node.getParent(); around != null; around = around.getParent()) {
            if (around instanceof ScrollPane pane) {
                bring(node, pane, margin);
            }
        }
    }

    private static void bring(Node node, ScrollPane pane, double margin) {
        Bounds place = pane.getContent().sceneToLocal(node.localToScene(node.getBoundsInLocal()));
        Bounds all = pane.getContent().getBoundsInLocal();
        Bounds view = pane.getViewportBounds();
        double beside = place.getHeight() + 2 * margin > view.getHeight() ? 0 : margin;
        pane.setVvalue(value(
                pane.getVvalue(),
                place.getMinY() - beside,
                place.getMaxY() + beside,
                all.getHeight(),
                view.getHeight()));
        pane.setHvalue(value(pane.getHvalue(), place.getMinX(), place.getMaxX(), all.getWidth(), view.getWidth()));
    }

    /**
     * Where a scroll bar from 0 to 1 has to stand. What is larger than the view stays where it is while it fills half of it; else
     * it is seen from its beginning.
     */
    private static double value(double now, double from, double to, double all, double view) {
        double hidden = all - view;
        if (hidden <= 0 || view <= 0) {
            return now;
        }
        double start = now * hidden;
        if (to - from > view) {
            double seen = Math.min(to, start + view) - Math.max(from, start);
            return seen >= view / 2 ? now : Math.max(0, Math.min(1, from / hidden));
        }
        double wanted = from < start ? from : to > start + view ? to - view : start;
        return Math.max(0, Math.min(1, wanted / hidden));
    }
}
