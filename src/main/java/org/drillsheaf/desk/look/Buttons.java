package org.drillsheaf.desk.look;

import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.layout.Region;

/** Buttons named by what they do. */
public final class Buttons {
    private Buttons() {}

    public static Button plain(String text, Runnable action) {
        return made(text, action);
    }

    /** The one main button of a sheet. */
    public static Button main(String text, Runnable action) {
        return made(text, action, "main");
    }

    public static Button small(String text, Runnable action) {
        return made(text, action, "small-button");
    }

    public static Button link(String text, Runnable action) {
        return made(text, action, "link");
    }

    /** The same button with the key that does it beside its name. */
    public static Button withKey(Button button, String key) {
        button.setGraphic(Labels.key(key));
        button.setContentDisplay(ContentDisplay.RIGHT);
        button.setAccessibleText(button.getText() + ", " + key);
        return button;
    }

    private static Button made(String text, Runnable action, String... styles) {
        Button button = new Button(text);
        button.getStyleClass().addAll(styles);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(e -> action.run());
        return button;
    }
}
