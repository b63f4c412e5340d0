package org.drillsheaf.desk.handout;

import java.util.function.UnaryOperator;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextFormatter;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.store.record.Content;

/** The coach's own words to the client. They belong to the visit, and stand in the handout as they were typed. */
final class NoteView extends VBox {
    /** As many signs as the client's file takes; more than a page. */
    private static final int MOST = 5000;

    private static final String PLACE = "/handout-note";

    private final ClientCase client;
    private final Words words;
    private final TextArea area = new TextArea();
    private final Label told = Labels.prose("", "small", "second");
    private boolean showing;

    NoteView(ClientCase client) {
        super(4);
        this.client = client;
        this.words = client.workplace().words();
        Label label = Labels.text(words.text("note.title"), "small", "second");
        label.setLabelFor(area);
        area.setWrapText(true);
        area.setPrefRowCount(4);
        area.setPrefColumnCount(10);
        area.setMinWidth(0);
        area.setAccessibleHelp(words.text("note.help"));
        area.setTextFormatter(new TextFormatter<>(printable()));
        area.textProperty().addListener((of, before, now) -> typed(now));
        area.focusedProperty().addListener((of, before, now) -> {
            if (!now) {
                client.endGroup();
            }
        });
        area.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        client.draft().addListener((of, before, now) -> show());
        client.visit().addListener((of, before, now) -> show());
        told.setText(words.text("note.help"));
        getChildren().addAll(label, area, told);
        show();
    }

    /** Takes no sign that no page can hold, and no more than there is room for. */
    private UnaryOperator<TextFormatter.Change> printable() {
        return change -> {
            if (showing) {
                return change;
            }
            change.setText(change.getText().replaceAll("[\\p{Cc}&&[^\n]]", ""));
            int length = change.getControlNewText().length();
            if (length > MOST && change.isAdded()) {
                told.setText(words.text("note.long", MOST));
                return null;
            }
            told.setText(words.text("note.help"));
            return change;
        };
    }

    private void typed(String text) {
        if (!showing) {
            client.edit(
                    words.text("undo.note"),
                    "note",
                    visit -> text.isBlank() ? visit.without(PLACE) : visit.with(PLACE, text));
        }
    }

    private void show() {
        Content visit = client.content();
        String kept = visit.value(PLACE).orElse("");
        if (!area.getText().equals(kept) && !(kept.isEmpty() && area.getText().isBlank())) {
            showing = true;
            area.setText(kept);
            area.positionCaret(kept.length());
            showing = false;
        }
    }

    /** Tab goes on; what is taken back is taken back in the record, not in the field alone. */
    private void pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.TAB && !key.isControlDown()) {
            area.fireEvent(
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, key.isShiftDown(), true, false, false));
            key.consume();
        } else if (key.isShortcutDown() && key.getCode() == KeyCode.Z) {
            if (key.isShiftDown()) {
                client.redo();
            } else {
                client.undo();
            }
            key.consume();
        } else if (key.isShortcutDown() && key.getCode() == KeyCode.Y) {
            client.redo();
            key.consume();
        }
    }
}
