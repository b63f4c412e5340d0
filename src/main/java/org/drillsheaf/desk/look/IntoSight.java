package org.drillsheaf.desk.look;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls so far that something can be seen, and no further. What it lies in must be laid out. */
public final class IntoSight {
    private IntoSight() {}

    /** @param margin dots of its neighbours that shall be seen too */
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
        pane.setVvalue(value(
                pane.getVvalue(),
                place.getMinY() - margin,
                place.getMaxY() + margin,
                all.getHeight(),
                view.getHeight()));
        pane.setHvalue(value(pane.getHvalue(), place.getMinX(), place.getMaxX(), all.getWidth(), view.getWidth()));
    }

    /** Where a scroll bar from 0 to 1 has to stand; what is larger than the view is seen from its beginning. */
    private static double value(double now, double from, double to, double all, double view) {
        double hidden = all - view;
        if (hidden <= 0 || view <= 0) {
            return now;
        }
        double start = now * hidden;
        double wanted = from < start ? from : to > start + view ? Math.min(from, to - view) : start;
        return Math.max(0, Math.min(1, wanted / hidden));
    }
}
