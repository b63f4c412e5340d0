package org.drillsheaf.desk.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.drillsheaf.desk.look.GrowingArea;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.words.Words;

/** Controls of the form that write into the draft at every key and follow it when it is taken back. */
final class FormFields {
    private final Draft draft;
    private final Words words;

    FormFields(Draft draft, Words words) {
        this.draft = draft;
        this.words = words;
    }

    /** One line of text, read from left to right as English and all ids are. */
    TextField line(Supplier<String> read, Consumer<String> write) {
        TextField field = new TextField(read.get());
        field.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        boolean[] showing = new boolean[1];
        field.textProperty().addListener((of, before, now) -> {
            if (!showing[0]) {
                write.accept(now);
            }
        });
        draft.document().addListener((of, before, now) -> {
            if (!field.getText().strip().equals(read.get())) {
                showing[0] = true;
                field.setText(read.get());
                showing[0] = false;
            }
        });
        settleOnLeaving(field);
        return field;
    }

    /** One sentence, which may be longer than its field is wide. */
    TextArea sentence(Supplier<String> read, Consumer<String> write) {
        return area(new GrowingArea(read.get(), 1), read, text -> write.accept(text.replace('\n', ' ')));
    }

    /** Several lines; Ctrl Enter begins a new line behind the one in work. */
    TextArea lines(Supplier<String> read, Consumer<String> write) {
        TextArea area = area(new GrowingArea(read.get(), 2), read, write);
        area.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ENTER && e.isControlDown()) {
                area.end();
                int end = area.getText().indexOf('\n', area.getCaretPosition());
                int at = end < 0 ? area.getLength() : end;
                area.insertText(at, "\n");
                area.positionCaret(at + 1);
                e.consume();
            }
        });
        return area;
    }

    private TextArea area(TextArea area, Supplier<String> read, Consumer<String> write) {
        area.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        boolean[] showing = new boolean[1];
        area.textProperty().addListener((of, before, now) -> {
            if (!showing[0]) {
                write.accept(now);
            }
        });
        draft.document().addListener((of, before, now) -> {
            if (!plain(area.getText()).equals(plain(read.get()))) {
                showing[0] = true;
                area.setText(read.get());
                showing[0] = false;
            }
        });
        settleOnLeaving(area);
        return area;
    }

    private static String plain(String lines) {
        return String.join("\n", lines.lines().map(String::strip).toList()).stripTrailing();
    }

    private void settleOnLeaving(javafx.scene.control.TextInputControl field) {
        field.focusedProperty().addListener((of, before, now) -> {
            if (!now) {
                draft.settle();
            }
        });
    }

    /** A number that is always read from left to right. */
    TextField number(String name, Supplier<String> read, Consumer<String> write) {
        TextField field = line(read, write);
        field.getStyleClass().add("small-number");
        field.setAccessibleRoleDescription(name);
        return field;
    }

    /** One out of several. */
    <T> ComboBox<T> choice(List<T> values, Function<T, String> text, Supplier<T> read, Consumer<T> write) {
        ComboBox<T> box = new ComboBox<>();
        box.getItems().setAll(values);
        box.setConverter(new Named<>(text));
        box.setValue(read.get());
        boolean[] showing = new boolean[1];
        box.valueProperty().addListener((of, before, now) -> {
            if (!showing[0] && now != null && !now.equals(read.get())) {
                write.accept(now);
                draft.settle();
            }
        });
        draft.document().addListener((of, before, now) -> {
            showing[0] = true;
            box.setValue(read.get());
            showing[0] = false;
        });
        return box;
    }

    /**
     * Ids as tags with a way to take each away, and a list of those that can be added.
     *
     * @param add what the list to add from is called
     */
    FlowPane tags(
            String add,
            List<String> all,
            Function<String, String> text,
            Supplier<List<String>> read,
            Consumer<String> taken,
            Consumer<String> removed) {
        FlowPane pane = new FlowPane();
        pane.getStyleClass().add("tag-row");
        Runnable show = () -> {
            List<String> now = read.get();
            pane.getChildren().clear();
            for (String id : now) {
                pane.getChildren().add(tag(text.apply(id), () -> removed.accept(id)));
            }
            List<String> rest = new ArrayList<>(all);
            rest.removeAll(now);
            if (!rest.isEmpty()) {
                pane.getChildren().add(adder(add, rest, text, taken));
            }
        };
        show.run();
        List<List<String>> shown = new ArrayList<>(List.of(read.get()));
        draft.document().addListener((of, before, now) -> {
            if (!read.get().equals(shown.get(0))) {
                shown.set(0, read.get());
                boolean focused = pane.getScene() != null
                        && pane.getScene().getFocusOwner() != null
                        && isInside(pane.getScene().getFocusOwner(), pane);
                show.run();
                if (focused && !pane.getChildren().isEmpty()) {
                    pane.getChildren().get(pane.getChildren().size() - 1).requestFocus();
                }
            }
        });
        return pane;
    }

    private static boolean isInside(javafx.scene.Node node, javafx.scene.Node parent) {
        for (javafx.scene.Node at = node; at != null; at = at.getParent()) {
            if (at == parent) {
                return true;
            }
        }
        return false;
    }

    private HBox tag(String text, Runnable remove) {
        Label label = Labels.text(text);
        Button away = new Button("\u00D7");
        away.getStyleClass().add("away");
        away.setAccessibleText(words.text("form.take-away", text));
        away.setOnAction(e -> {
            remove.run();
            draft.settle();
        });
        HBox tag = new HBox(label, away);
        tag.setAlignment(Pos.CENTER_LEFT);
        tag.getStyleClass().add("form-tag");
        return tag;
    }

    private ComboBox<String> adder(
            String add, List<String> rest, Function<String, String> text, Consumer<String> taken) {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().setAll(rest);
        box.setConverter(new Named<>(text));
        box.setPromptText(add);
        box.setAccessibleText(add);
        box.setOnHidden(e -> {
            String value = box.getValue();
            if (value != null) {
                taken.accept(value);
                draft.settle();
            }
        });
        return box;
    }
}
