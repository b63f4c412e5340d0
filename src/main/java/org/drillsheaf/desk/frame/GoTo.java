package org.drillsheaf.desk.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;

/** Type a few letters and go there: a client, a drill, a place, or something to do. */
final class GoTo extends VBox {
    private static final double ROW = 30;
    private final TextField field = new TextField();
    private final ListView<Target> list = new ListView<>();

    /** Somewhere to go. */
    record Target(String name, String kind, Runnable go) {}

    /**
     * @param commands offered when nothing is typed, and by their names
     * @param find clients and drills for what is typed
     */
    GoTo(
            Words words,
            List<Target> commands,
            Function<String, List<Target>> find,
            Consumer<Runnable> chosen,
            Runnable closed) {
        getStyleClass().add("go-to");
        field.setPromptText(words.text("go-to.prompt"));
        field.setAccessibleRoleDescription(words.text("go-to.prompt"));
        list.setAccessibleText(words.text("go-to.list"));
        list.setFixedCellSize(ROW);
        list.setCellFactory(v -> new Row());
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(field, list);
        field.textProperty().addListener((of, before, now) -> fill(now, commands, find));
        fill("", commands, find);
        setOnKeyPressed(key -> {
            if (key.getCode() == KeyCode.ESCAPE) {
                closed.run();
                key.consume();
            } else if (key.getCode() == KeyCode.ENTER) {
                Target target = list.getSelectionModel().getSelectedItem();
                if (target != null) {
                    chosen.accept(target.go());
                }
                key.consume();
            }
        });
        field.addEventFilter(javafx.scene.input.KeyEvent.KEY_PRESSED, key -> {
            if (key.getCode() == KeyCode.DOWN) {
                list.getSelectionModel().selectNext();
                key.consume();
            } else if (key.getCode() == KeyCode.UP) {
                list.getSelectionModel().selectPrevious();
                key.consume();
            }
        });
        list.setOnMouseClicked(e -> {
            Target target = list.getSelectionModel().getSelectedItem();
            if (target != null) {
                chosen.accept(target.go());
            }
        });
    }

    void ready() {
        field.requestFocus();
    }

    private void fill(String typed, List<Target> commands, Function<String, List<Target>> find) {
        String wanted = typed.strip().toLowerCase(Locale.ROOT);
        List<Target> targets = new ArrayList<>();
        if (!wanted.isEmpty()) {
            targets.addAll(find.apply(typed));
        }
        commands.stream()
                .filter(c -> c.name().toLowerCase(Locale.ROOT).contains(wanted))
                .forEach(targets::add);
        list.getItems().setAll(targets);
        list.getSelectionModel().selectFirst();
    }

    private static final class Row extends ListCell<Target> {
        @Override
        protected void updateItem(Target target, boolean empty) {
            super.updateItem(target, empty);
            setText(empty || target == null ? null : target.name());
            setGraphic(empty || target == null ? null : Labels.text(target.kind(), "third", "small"));
            setContentDisplay(javafx.scene.control.ContentDisplay.RIGHT);
            setGraphicTextGap(16);
        }
    }
}
