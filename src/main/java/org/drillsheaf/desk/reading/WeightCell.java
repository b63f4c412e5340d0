package org.drillsheaf.desk.reading;

import javafx.scene.AccessibleRole;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** The weight of a goal in a phase as five bars; a line below the bars shows what is suggested when it differs. */
final class WeightCell extends HBox {
    static final int MOST = 5;

    private final ReadingModel.Weight weight;

    WeightCell(ReadingModel.Weight weight, String name) {
        super(2);
        this.weight = weight;
        getStyleClass().add("weight");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SPINNER);
        setAccessibleText(name);
        for (int i = 1; i <= MOST; i++) {
            Region bar = new Region();
            bar.getStyleClass().add("weight-bar");
            if (i <= weight.need().weight()) {
                bar.getStyleClass().add("full");
            }
            if (weight.isChanged() && i == Math.max(1, weight.suggested())) {
                bar.getStyleClass().add("suggested");
            }
            getChildren().add(bar);
        }
        if (weight.isChanged()) {
            getStyleClass().add("changed");
        }
    }

    ReadingModel.Weight weight() {
        return weight;
    }

    /** The weight under a place in the cell, 0 before the first bar. */
    int at(double x) {
        int bars = 0;
        for (javafx.scene.Node bar : getChildren()) {
            if (x >= bar.getBoundsInParent().getMinX()) {
                bars++;
            }
        }
        return bars;
    }
}
