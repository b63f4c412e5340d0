package org.drillsheaf.desk.program;

import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;

/** A plain bar with a tick: how much of what is wanted is there. The number stands beside it. */
final class BarView extends Region {
    private final double share;
    private final double tick;

    /**
     * @param value what is there
     * @param target where the tick stands
     */
    BarView(int value, int target, boolean thin) {
        double most = Math.max(1, Math.max(value, target) * (value > target ? 1.0 : 1.15));
        this.share = value / most;
        this.tick = target / most;
        getStyleClass().add("bar");
        if (thin) {
            getStyleClass().add("thin");
        }
        setMouseTransparent(true);
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        Rectangle empty = new Rectangle(0, 0, width, height);
        empty.setStyle("-fx-fill: -ds-bar-0;");
        Rectangle full = new Rectangle(0, 0, width * Math.min(1, share), height);
        full.setStyle("-fx-fill: -ds-bar;");
        Rectangle mark = new Rectangle(Math.min(width - 2, width * tick - 1), -2, 2, height + 4);
        mark.setStyle("-fx-fill: -ds-ink;");
        getChildren().setAll(empty, full, mark);
    }
}
