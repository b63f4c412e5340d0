package org.drillsheaf.desk.look;

import javafx.geometry.NodeOrientation;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Texts of a page by their part in it. */
public final class Labels {
    private Labels() {}

    /** Plain text with style classes, for example {@code second}, {@code small}, {@code bold}. */
    public static Label text(String text, String... styles) {
        Label label = new Label(text);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** Text that breaks into lines where it must. */
    public static Label prose(String text, String... styles) {
        Label label = text(text, styles);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    /** Bold text with the sign of a caution before it. */
    public static Label caution(String text) {
        Label label = prose(text, "bold");
        label.setGraphic(warningSign());
        return label;
    }

    /** A key cap; keys are read from left to right in every language. */
    public static Label key(String key) {
        Label label = text(key, "key");
        label.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        label.setMinWidth(Region.USE_PREF_SIZE);
        return label;
    }

    /** A tag: {@code inverted}, {@code outlined}, {@code dashed}, {@code caution}, or plain without. */
    public static Label tag(String text, String... looks) {
        Label label = text(text, "tag");
        label.getStyleClass().addAll(looks);
        label.setMinWidth(Region.USE_PREF_SIZE);
        if (java.util.List.of(looks).contains("caution")) {
            label.setGraphic(warningSign());
        }
        return label;
    }

    /** The sign that every caution carries, so that it is not known by its colour alone. */
    private static Region warningSign() {
        Region sign = new Region();
        sign.getStyleClass().add("warning-sign");
        return sign;
    }

    /** Takes the room that is left in a row. */
    public static Region spring() {
        Region region = new Region();
        HBox.setHgrow(region, Priority.ALWAYS);
        return region;
    }
}
