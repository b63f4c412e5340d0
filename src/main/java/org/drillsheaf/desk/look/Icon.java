package org.drillsheaf.desk.look;

import javafx.scene.layout.Region;
import javafx.scene.shape.FillRule;
import javafx.scene.shape.SVGPath;

/** A small drawn sign. Paths, so that no font and no picture file is needed. */
public enum Icon {
    CLIENTS("M10 2a4.2 4.2 0 1 0 0 8.4a4.2 4.2 0 1 0 0-8.4zM10 3.5a2.7 2.7 0 1 1 0 5.4a2.7 2.7 0 1 1 0-5.4zM2.5"
            + " 19c0-4.6 3-7.2 7.5-7.2s7.5 2.6 7.5 7.2h-1.6c0-3.6-2.2-5.6-5.9-5.6s-5.9 2-5.9 5.6z"),
    DRILLS("M3 2h14v16h-14zM4.5 3.5v13h2.2v-13zM8.1 3.5v5.8h3.8v-5.8zM8.1 10.7v5.8h3.8v-5.8zM13.3 3.5v13h2.2v-13z"),
    HOUSE("M10 1.6l8.6 7.6l-1 1.1l-1.3-1.1v9.2h-12.6v-9.2l-1.3 1.1l-1-1.1zM10 3.6l-4.8"
            + " 4.3v9h2.9v-5.6h3.8v5.6h2.9v-9zM9.5 12.7v4.2h1v-4.2z"),
    LOCK("M5 8.2v-2.2a5 5 0 0 1 10 0v2.2h2v10.2h-14v-10.2zM6.5 8.2h7v-2.2a3.5 3.5 0 0 0-7 0zM4.5"
            + " 9.7v7.2h11v-7.2zM9.3 12h1.4v3h-1.4z");

    private final String path;

    Icon(String path) {
        this.path = path;
    }

    /** A new node of this sign, about {@code em} high; its colour comes from the class {@code icon}. */
    public Region node(double em) {
        SVGPath shape = new SVGPath();
        shape.setContent(path);
        shape.setFillRule(FillRule.EVEN_ODD);
        Region region = new Region();
        region.setShape(shape);
        region.getStyleClass().add("icon");
        String size = em + "em";
        region.setStyle("-fx-min-width: " + size + "; -fx-pref-width: " + size + "; -fx-max-width: " + size
                + "; -fx-min-height: " + size + "; -fx-pref-height: " + size + "; -fx-max-height: " + size + ";");
        return region;
    }
}
