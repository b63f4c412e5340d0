package org.drillsheaf.desk.pose;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.jspecify.annotations.Nullable;

/** The contacts, props or marks of a keyframe: one line each, its fields under the chosen one, and a way to add more. */
final class PartList extends VBox {
    private final PoseModel model;
    private final Words words;
    private final String key;
    private final VBox lines = new VBox();
    private final MenuButton add;
    private int chosen = -1;
    private @Nullable JsonNode showing;

    /** @param key {@code contacts}, {@code props} or {@code marks} */
    PartList(PoseModel model, Words words, String key) {
        this.model = model;
        this.words = words;
        this.key = key;
        getStyleClass().add("part-list");
        add = new MenuButton(words.text("pose." + key + ".add"));
        add.getStyleClass().add("link-menu");
        add.setAccessibleText(words.text("pose." + key + ".add"));
        for (String kind : PartItem.kinds(key)) {
            MenuItem item = new MenuItem(words.text("part." + kind));
            item.setOnAction(e -> add(kind));
            add.getItems().add(item);
        }
        getChildren().addAll(Labels.text(words.text("pose." + key), "bold"), lines, add);
        model.rows().addListener((of, before, now) -> show());
        model.frame().addListener((of, before, now) -> choose(-1));
        show();
    }

    private void add(String kind) {
        int index = model.list(key).size();
        if (model.setItem(key, index, PartItem.fresh(key, kind, index + 1))) {
            model.draft().settle();
            choose(index);
            focusLine(index);
        }
    }

    private void choose(int index) {
        chosen = index;
        showing = null;
        show();
    }

    private void show() {
        JsonNode items = model.list(key);
        if (items.equals(showing)) {
            return;
        }
        Optional<Integer> focused = focused();
        showing = items;
        lines.getChildren().clear();
        for (int i = 0; i < items.size(); i++) {
            lines.getChildren().add(line(i, items.get(i)));
            if (i == chosen && items.get(i).isObject()) {
                lines.getChildren().add(form(i, items.get(i)));
            }
        }
        focused.ifPresent(i -> focusLine(Math.min(i, items.size() - 1)));
    }

    private Optional<Integer> focused() {
        List<Button> all = buttons();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).isFocused()) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private List<Button> buttons() {
        List<Button> all = new ArrayList<>();
        lines.getChildren().forEach(n -> {
            if (n instanceof Button button) {
                all.add(button);
            }
        });
        return all;
    }

    private void focusLine(int index) {
        List<Button> all = buttons();
        if (index >= 0 && index < all.size()) {
            all.get(index).requestFocus();
        } else {
            add.requestFocus();
        }
    }

    private Button line(int index, JsonNode item) {
        String kind = words.text("part." + PartItem.kind(key, item));
        String about = PartItem.about(key, item, words);
        Button button = new Button();
        button.getStyleClass().addAll("part-line", index == chosen ? "chosen" : "plain-line");
        Label what = Labels.text(kind);
        Label where = Labels.text(about, "second", "small");
        where.setMinWidth(0);
        HBox.setHgrow(where, Priority.ALWAYS);
        where.setMaxWidth(Double.MAX_VALUE);
        where.setAlignment(Pos.CENTER_RIGHT);
        HBox row = new HBox(8, what, where);
        row.setAlignment(Pos.CENTER_LEFT);
        row.prefWidthProperty().bind(button.widthProperty().subtract(16));
        button.setGraphic(row);
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setAccessibleText(words.text("pose.item", kind, about, index + 1));
        button.setAccessibleHelp(words.text("pose.item.help"));
        button.setOnAction(e -> {
            choose(index == chosen ? -1 : index);
            focusLine(index);
        });
        button.addEventHandler(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.DELETE || e.getCode() == KeyCode.BACK_SPACE) {
                remove(index);
                e.consume();
            }
        });
        return button;
    }

    private void remove(int index) {
        if (model.removeItem(key, index)) {
            choose(-1);
            focusLine(Math.min(index, model.list(key).size() - 1));
        }
    }

    private GridPane form(int index, JsonNode item) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("part-form");
        int row = 0;
        for (Map.Entry<String, String> entry : PartItem.fields(item, words).entrySet()) {
            String name = entry.getKey().substring(entry.getKey().lastIndexOf('/') + 1);
            TextField field = new TextField(entry.getValue());
            field.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
            field.getStyleClass().add("part-field");
            GridPane.setHgrow(field, Priority.ALWAYS);
            Label label =
                    Labels.text(words.has("field." + name) ? words.text("field." + name) : name, "second", "small");
            label.setLabelFor(field);
            field.setOnAction(e -> write(index, entry.getKey(), field));
            field.focusedProperty().addListener((of, before, now) -> {
                if (!now) {
                    write(index, entry.getKey(), field);
                }
            });
            grid.add(label, 0, row);
            grid.add(field, 1, row++);
        }
        Button remove = Buttons.link(words.text("pose.remove"), () -> remove(index));
        remove.setAccessibleText(words.text("pose.remove.of", words.text("part." + PartItem.kind(key, item))));
        grid.add(remove, 1, row);
        return grid;
    }

    private void write(int index, String pointer, TextField field) {
        JsonNode item = model.list(key).path(index);
        if (!item.isObject()
                || field.getText().equals(PartItem.fields(item, words).get(pointer))) {
            return;
        }
        Optional<JsonNode> next = PartItem.with(item, pointer, field.getText());
        boolean taken = next.isPresent() && model.setItem(key, index, next.get());
        field.getStyleClass().remove("wrong");
        if (!taken) {
            field.getStyleClass().add("wrong");
            field.setAccessibleHelp(model.refusal().get().orElse(""));
        }
        model.draft().settle();
    }
}
