package org.drillsheaf.desk.pose;

import java.util.List;
import javafx.scene.layout.Region;

/** Shows one pane large or four in a square; the first one shown is the one that Tab goes through. */
final class FigureGrid extends Region {
    private static final double GAP = 4;

    private final List<FigurePane> panes;
    private List<FigurePane> shown;

    FigureGrid(List<FigurePane> panes) {
        this.panes = panes;
        this.shown = panes;
        getStyleClass().add("figures");
        getChildren().addAll(panes);
        setMinSize(200, 200);
    }

    void show(List<FigurePane> wanted) {
        shown = wanted;
        for (FigurePane pane : panes) {
            pane.setVisible(wanted.contains(pane));
            pane.leads(pane == wanted.get(0));
        }
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double left = getInsets().getLeft();
        double top = getInsets().getTop();
        int side = shown.size() == 1 ? 1 : 2;
        double width = (getWidth() - left - getInsets().getRight() - (side - 1) * GAP) / side;
        double height = (getHeight() - top - getInsets().getBottom() - (side - 1) * GAP) / side;
        for (int i = 0; i < shown.size(); i++) {
            shown.get(i)
                    .resizeRelocate(
                            snapPositionX(left + (width + GAP) * (i % side)),
                            snapPositionY(top + (height + GAP) * (i / side)),
                            snapSizeX(width),
                            snapSizeY(height));
        }
    }
}
