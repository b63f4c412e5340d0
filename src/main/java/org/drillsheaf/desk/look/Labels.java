package org.drillsheaf.desk.look;

import java.text.Bidi;
import javafx.geometry.NodeOrientation;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Texts of a page by their part in it. */
public final class Labels {
    private static final String RIGHT_TO_LEFT = "\u200F";

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

    /**
     * Prose in any script, in its own direction whatever that of the window is. Where it breaks a line of joined letters, the
     * toolkit (21, with Pango) paints the whole text into the first line, over whatever stands beside; so each word is a label.
     */
    public static Region proseInAnyScript(String text, String... styles) {
        if (!Bidi.requiresBidi(text.toCharArray(), 0, text.length())) {
            return prose(text, styles);
        }
        FlowPane words = new FlowPane();
        boolean leftToRight = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT).baseIsLeftToRight();
        words.setNodeOrientation(leftToRight ? NodeOrientation.LEFT_TO_RIGHT : NodeOrientation.RIGHT_TO_LEFT);
        words.getStyleClass().add("single-words");
        words.setAccessibleRole(AccessibleRole.TEXT);
        words.setAccessibleText(text);
        for (String word : text.strip().split("\\s+")) {
            // Without the marks a full stop would stand before its word.
            words.getChildren().add(text(leftToRight ? word : RIGHT_TO_LEFT + word + RIGHT_TO_LEFT, styles));
        }
        return words;
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
