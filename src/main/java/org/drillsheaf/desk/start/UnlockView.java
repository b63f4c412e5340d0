package org.drillsheaf.desk.start;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.CapsLockHint;
import org.drillsheaf.desk.look.Icon;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.words.Words;

/** Asks for the passphrase of a record, at the start or when the desk was locked. Shows no client's name. */
public final class UnlockView extends StackPane {
    private final PasswordField field = new PasswordField();
    private final VBox told = new VBox();
    private final Button unlock;

    /**
     * @param title for example {@code Locked at 10:57}
     * @param typed gets the letters
     * @param other a further way out, with its name
     */
    public UnlockView(
            Words words, String title, String more, Consumer<char[]> typed, Optional<Button> other, Runnable close) {
        getStyleClass().addAll("page", "locked");
        Label label = Labels.text(words.text("unlock.passphrase"), "second");
        label.setLabelFor(field);
        field.setAccessibleRoleDescription(words.text("unlock.passphrase"));
        field.setPrefColumnCount(24);
        unlock = Buttons.main(words.text("unlock.unlock"), () -> {
            typed.accept(field.getText().toCharArray());
            field.clear();
        });
        unlock.setDefaultButton(true);
        HBox row = new HBox(8, field, unlock);
        row.setAlignment(Pos.CENTER_LEFT);
        HBox links = new HBox(16, Buttons.link(words.text("unlock.close"), close));
        other.ifPresent(b -> links.getChildren().add(0, b));
        VBox box = new VBox(
                10,
                Icon.LOCK.node(2),
                Labels.prose(title, "huge"),
                Labels.prose(more, "second"),
                label,
                row,
                new CapsLockHint(words.text("unlock.caps-lock"), field),
                told,
                links);
        box.getStyleClass().add("unlock");
        box.setAlignment(Pos.CENTER_LEFT);
        getChildren().add(box);
    }

    /** Puts the focus where the passphrase is typed. */
    public void ready() {
        field.requestFocus();
    }

    public void tell(String what, String more) {
        told.getChildren().setAll(new Message("", what, more));
        field.requestFocus();
    }

    /** While the record is being opened nothing can be typed. */
    public void busy(String what) {
        told.getChildren().setAll(Labels.prose(what, "second"));
    }
}
