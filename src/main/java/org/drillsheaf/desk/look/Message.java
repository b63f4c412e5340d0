package org.drillsheaf.desk.look;

import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What the coach should know, where it concerns him: bold first, then the rest, then what can be done. */
public final class Message extends VBox {

    /**
     * @param kind {@code remark}, {@code caution}, {@code stop}, or empty for a plain one
     * @param more may be empty
     */
    public Message(String kind, String what, String more, Button... actions) {
        getStyleClass().add("message");
        if (!kind.isEmpty()) {
            getStyleClass().add(kind);
        }
        getChildren().add(kind.equals("caution") ? Labels.caution(what) : Labels.prose(what, "bold"));
        if (!more.isEmpty()) {
            getChildren().add(Labels.prose(more));
        }
        if (actions.length > 0) {
            HBox row = new HBox(8, actions);
            getChildren().add(row);
        }
    }

    /** With what can be done beside the words, for where there is little room. */
    public static Message inOneRow(String kind, String what, Button action) {
        Message message = new Message(kind, what, "");
        Label words = (Label) message.getChildren().get(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(12, words, action);
        row.setAlignment(Pos.CENTER_LEFT);
        message.getChildren().setAll(row);
        return message;
    }
}
