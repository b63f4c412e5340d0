package org.drillsheaf.desk.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/** The goals by phase, which the coach may weigh anew. */
final class GoalsView extends VBox {
    private final ReadingModel model;
    private final Words words;
    private final List<List<WeightCell>> cells = new ArrayList<>();
    private final Label reason = Labels.prose("", "small");
    private List<ReadingModel.GoalRow> shown = List.of();

    GoalsView(ReadingModel model, Words words) {
        this.model = model;
        this.words = words;
        getStyleClass().add("column-left");
    }

    void show() {
        List<ReadingModel.GoalRow> rows = model.goals();
        if (rows.equals(shown) && !getChildren().isEmpty()) {
            return;
        }
        int[] focused = focused();
        shown = rows;
        cells.clear();
        getChildren().setAll(head(rows));
        if (rows.isEmpty()) {
            getChildren().add(Labels.prose(words.text("goals.none"), "second"));
            return;
        }
        getChildren().add(columns());
        for (int r = 0; r < rows.size(); r++) {
            getChildren().add(row(rows.get(r), r));
        }
        getChildren().addAll(reason, Labels.prose(words.text("goals.legend"), "small", "third"));
        if (focused.length == 2 && focused[0] < cells.size()) {
            cells.get(focused[0]).get(focused[1]).requestFocus();
        }
    }

    private String name(Phase phase) {
        return model.trade().phase(phase);
    }

    private int[] focused() {
        for (int r = 0; r < cells.size(); r++) {
            for (int c = 0; c < cells.get(r).size(); c++) {
                if (cells.get(r).get(c).isFocused()) {
                    return new int[] {r, c};
                }
            }
        }
        return new int[0];
    }

    private HBox head(List<ReadingModel.GoalRow> rows) {
        HBox head = new HBox(10, Labels.text(words.text("goals.title"), "bold"), Labels.spring());
        long changed = rows.stream()
                .flatMap(r -> r.weights().stream())
                .filter(ReadingModel.Weight::isChanged)
                .count();
        if (changed > 0) {
            head.getChildren().add(Buttons.link(words.count("goals.back", (int) changed), this::takeAllBack));
        }
        head.getStyleClass().add("goal-row-height");
        return head;
    }

    private void takeAllBack() {
        for (ReadingModel.GoalRow row : List.copyOf(shown)) {
            for (ReadingModel.Weight weight : row.weights()) {
                if (weight.isChanged()) {
                    model.weigh(weight.phase(), row.goal(), OptionalInt.empty(), words.text("undo.goals"));
                }
            }
        }
    }

    private HBox columns() {
        HBox line = new HBox(Labels.spring());
        for (Phase phase : Phase.values()) {
            boolean now = model.phaseNow().filter(phase::equals).isPresent();
            Label name = Labels.text(name(phase), "small", now ? "bold" : "second", "goal-column");
            line.getChildren().add(name);
        }
        return line;
    }

    private HBox row(ReadingModel.GoalRow row, int number) {
        Label name = Labels.prose(row.name(), "goal-name");
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(name);
        line.getStyleClass().add("goal-row");
        line.setAlignment(Pos.CENTER_LEFT);
        List<WeightCell> inRow = new ArrayList<>();
        for (ReadingModel.Weight weight : row.weights()) {
            WeightCell cell = new WeightCell(
                    weight,
                    words.text(
                            "goals.cell",
                            row.name(),
                            name(weight.phase()),
                            weight.need().weight(),
                            weight.suggested()));
            cell.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
            cell.setMinWidth(Region.USE_PREF_SIZE);
            cell.focusedProperty().addListener((of, before, now) -> {
                if (now) {
                    why(row, weight);
                }
            });
            int column = inRow.size();
            cell.setOnKeyPressed(key -> pressed(key, row, weight, number, column));
            cell.setOnMouseClicked(e -> {
                cell.requestFocus();
                set(row, weight, OptionalInt.of(cell.at(e.getX())));
            });
            inRow.add(cell);
            line.getChildren().add(cell);
        }
        cells.add(inRow);
        return line;
    }

    private void why(ReadingModel.GoalRow row, ReadingModel.Weight weight) {
        reason.setText(words.text(
                "goals.why",
                row.name(),
                name(weight.phase()),
                weight.need().weight(),
                model.trade()
                        .say(Saying.joined(Saying.Joint.SEMICOLON, weight.need().reasons()))));
    }

    private void pressed(KeyEvent key, ReadingModel.GoalRow row, ReadingModel.Weight weight, int number, int column) {
        String text = key.getText();
        if (text.matches("[0-5]") && !key.isShortcutDown() && !key.isAltDown()) {
            set(row, weight, OptionalInt.of(Integer.parseInt(text)));
        } else if (key.getCode() == KeyCode.BACK_SPACE) {
            set(row, weight, OptionalInt.empty());
        } else if (key.getCode() == KeyCode.UP) {
            focus(number - 1, column);
        } else if (key.getCode() == KeyCode.DOWN) {
            focus(number + 1, column);
        } else if (key.getCode() == KeyCode.LEFT) {
            focus(number, column - 1);
        } else if (key.getCode() == KeyCode.RIGHT) {
            focus(number, column + 1);
        } else {
            return;
        }
        key.consume();
    }

    private void set(ReadingModel.GoalRow row, ReadingModel.Weight weight, OptionalInt wanted) {
        boolean suggested = wanted.isPresent() && wanted.getAsInt() == weight.suggested();
        model.weigh(
                weight.phase(),
                row.goal(),
                suggested ? OptionalInt.empty() : wanted,
                words.text("undo.goal", row.name(), name(weight.phase())));
    }

    private void focus(int row, int column) {
        if (row >= 0
                && row < cells.size()
                && column >= 0
                && column < cells.get(row).size()) {
            cells.get(row).get(column).requestFocus();
        }
    }

    /** Puts the focus into the table. */
    boolean ready() {
        if (cells.isEmpty()) {
            return false;
        }
        cells.get(0).get(0).requestFocus();
        return true;
    }
}
