package org.drillsheaf.desk.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.Side;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.Norm;
import org.drillsheaf.screen.TestChange;
import org.drillsheaf.screen.Unit;

/** One test in the table of the screen: its fields left and right, with where each value stands. */
final class ScreenRow extends VBox {
    /** Not a style class: with one the toolkit would work out the look of everything in the row anew at each change of place. */
    private static final PseudoClass CURRENT = PseudoClass.getPseudoClass("current");

    private final ScreenModel model;
    private final Words words;
    private final MovementTest test;
    private final HBox line = new HBox();
    private final List<Cell> cells = new ArrayList<>();
    private final TradeWords trade;
    private final Label last = Labels.text("", "col-last");
    private final Label since = Labels.text("", "col-since");
    private final Label error = Labels.prose("", "field-error", "bold");
    private final Label oneValue = new Label();
    private final Label position = Labels.text("", "small", "second");
    private final KnownHeight height = new KnownHeight();
    private final KnownHeight least = new KnownHeight();
    private List<ScreenModel.State> shown = List.of();
    private Optional<ScreenModel.Past> shownPast = Optional.empty();
    private @org.jspecify.annotations.Nullable Segments<Boolean> mark;

    /** One field with its strip and its word. */
    record Cell(ScreenEntry entry, NumberField number, StripView strip, Label word, String name) {}

    /** What a row asks of the table. */
    interface Table {
        void entered(MovementTest test, ScreenEntry entry);

        void next(Cell from);

        void vertical(Cell from, int step);

        void nextPosition(Cell from);
    }

    ScreenRow(ScreenModel model, Words words, MovementTest test, boolean starts, Table table) {
        this.model = model;
        this.words = words;
        this.trade = model.trade();
        this.test = test;
        line.getStyleClass().add("screen-row");
        if (starts) {
            line.getStyleClass().add("starts");
        }
        String shown = starts ? words.text("position." + ScreenModel.position(test)) : "";
        position.setText(shown);
        compact(false);
        Label name = Labels.prose(trade.test(test), "test-name");
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        String suffix = test.unit() == Unit.POINTS
                ? words.text("screen.of", Math.round(test.highest()))
                : test.unit().suffix().strip();
        Label unit = Labels.text(suffix, "col-unit");
        line.getChildren().addAll(Labels.text(shown, "col-position"), name, unit);
        List<ScreenEntry> entries = ScreenEntry.of(test);
        HBox sides = new HBox();
        sides.getStyleClass().add("sides");
        sides.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT); // left stays on its own side of the window
        sides.setAlignment(Pos.CENTER_LEFT);
        for (ScreenEntry entry : entries) {
            Cell cell = cell(entry, table);
            cells.add(cell);
            sides.getChildren().add(side(cell));
        }
        if (entries.size() == 1) {
            sides.getChildren().add(beside());
        }
        line.getChildren().addAll(sides, last, since);
        error.setManaged(false);
        error.setVisible(false);
        getChildren().addAll(position, line, error);
    }

    private HBox side(Cell cell) {
        HBox box = new HBox(cell.number());
        box.getStyleClass().add("col-side");
        if (cell.entry().part().isPresent()) {
            cell.word().setMinWidth(Region.USE_PREF_SIZE);
            FlowPane words = new FlowPane(
                    6, 0, Labels.text(partName(cell.entry()), "small", "second", "part-name"), cell.word());
            words.setPrefWrapLength(1); // below each other where there is no room
            words.setRowValignment(VPos.CENTER);
            words.setAlignment(Pos.CENTER_LEFT);
            HBox.setHgrow(words, Priority.ALWAYS);
            box.getChildren().add(words);
        } else {
            box.getChildren().addAll(cell.strip(), cell.word());
        }
        return box;
    }

    private String partName(ScreenEntry entry) {
        return test.norm() instanceof Norm.Pair pair
                ? pair.parts().stream()
                        .filter(p -> entry.part().equals(Optional.of(p.id())))
                        .map(trade::part)
                        .findFirst()
                        .orElse("")
                : "";
    }

    /** The right place of a test with one value: its mark, or that there is only one. */
    private Region beside() {
        HBox box = new HBox();
        box.getStyleClass().add("col-side");
        if (test.marks().isEmpty()) {
            oneValue.getStyleClass().addAll("small", "third");
            box.getChildren().add(oneValue);
            return box;
        }
        String name = test.marks().get(0);
        String shown = words.text("mark." + name);
        Segments<Boolean> segments = new Segments<>(
                shown,
                List.of(false, true),
                yes -> words.text(yes ? "answer.yes" : "answer.no"),
                yes -> model.mark(cells.get(0).entry(), name, yes, words.text("undo.mark", shown)));
        mark = segments;
        box.getChildren().addAll(segments, Labels.prose(shown, "small", "second"));
        return box;
    }

    private Cell cell(ScreenEntry entry, Table table) {
        String side = entry.side().map(s -> words.text("side." + s.id())).orElse(partName(entry));
        String name = side.isEmpty() ? trade.test(test) : trade.test(test) + ", " + side;
        Cell[] made = new Cell[1];
        NumberField number = new NumberField(name + ", " + test.unit().suffix().strip(), words, () -> typed(made[0]));
        Label word = Labels.prose("", "finding-word");
        Cell cell = new Cell(entry, number, new StripView(), word, name);
        made[0] = cell;
        number.field().focusedProperty().addListener((of, before, now) -> {
            if (now) {
                number.field().selectAll();
                table.entered(test, entry);
            } else {
                left(cell);
            }
        });
        number.field().addEventFilter(KeyEvent.KEY_PRESSED, key -> pressed(key, cell, table));
        return cell;
    }

    private void typed(Cell cell) {
        cell.number().wrong(false);
        hideError();
        model.type(
                cell.entry(), cell.number().number(), cell.number().isEmpty(), words.text("undo.value", cell.name()));
    }

    private void pressed(KeyEvent key, Cell cell, Table table) {
        if (key.getCode() == KeyCode.ENTER && key.isShortcutDown()) {
            table.nextPosition(cell);
        } else if (key.getCode() == KeyCode.ENTER) {
            table.next(cell);
        } else if (key.getCode() == KeyCode.DOWN) {
            table.vertical(cell, 1);
        } else if (key.getCode() == KeyCode.UP) {
            table.vertical(cell, -1);
        } else if (key.getCode() == KeyCode.Z && key.isShortcutDown()) {
            // The field would take back its own letters only, and write them as a new step.
            if (key.isShiftDown()) {
                model.client().redo();
            } else {
                model.client().undo();
            }
        } else if (key.getCode() == KeyCode.P && plain(key)) {
            model.togglePain(cell.entry(), words.text("undo.pain", cell.name()));
        } else if (key.getCode() == KeyCode.N && plain(key)) {
            quiet();
            model.notTested(cell.entry(), words.text("undo.not-tested", cell.name()));
        } else if (key.getCode() == KeyCode.ESCAPE) {
            cell.number().show(model.state(cell.entry()).written());
            cell.number().field().selectAll();
        } else {
            return;
        }
        key.consume();
    }

    private static boolean plain(KeyEvent key) {
        return !key.isShortcutDown() && !key.isAltDown();
    }

    /** Says on leaving what cannot be true; a value that was half typed is not there. */
    private void left(Cell cell) {
        model.client().endGroup();
        Optional<Double> number = cell.number().number();
        boolean empty = cell.number().isEmpty();
        boolean possible = number.map(
                        n -> cell.entry().isPossible(n) && cell.entry().isOnStep(n))
                .orElse(empty);
        if (possible) {
            quiet();
            return;
        }
        cell.number().wrong(true);
        model.notTested(cell.entry(), words.text("undo.not-tested", cell.name()));
        boolean tooFine = number.filter(cell.entry()::isPossible).isPresent();
        String unit = test.unit().suffix();
        say(
                tooFine
                        ? words.text(
                                "screen.too-fine",
                                trade.test(test),
                                words.number(test.step().toPlainString()) + unit)
                        : words.text(
                                "screen.not-possible",
                                trade.test(test),
                                minus(test.lowest()),
                                minus(test.highest()) + unit));
        cell.number().field().setAccessibleHelp(error.getText());
    }

    /** Says something below the row, until something is typed into it or it is left. */
    void say(String what) {
        error.setText(what);
        error.setManaged(true);
        error.setVisible(true);
    }

    /** What was said goes, unless something is still wrong. */
    private void quiet() {
        if (error.isVisible() && cells.stream().noneMatch(c -> c.number().isWrong())) {
            hideError();
        }
    }

    private static String minus(double value) {
        return Long.toString(Math.round(value)).replace('-', '−');
    }

    private void hideError() {
        error.setManaged(false);
        error.setVisible(false);
        shown = List.of(); // what the error had taken the place of is said again
    }

    @Override
    public void requestLayout() {
        height.forget();
        least.forget();
        super.requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return height.at(width, super::computePrefHeight);
    }

    @Override
    protected double computeMinHeight(double width) {
        return least.at(width, super::computeMinHeight);
    }

    /** Shows what stands in the visit now; at most keys only one row has something new to say. */
    void show() {
        List<ScreenModel.State> states =
                cells.stream().map(c -> model.state(c.entry())).toList();
        for (int i = 0; i < states.size(); i++) {
            if (!isBeingTyped(cells.get(i), states.get(i))) {
                cells.get(i).number().show(states.get(i).written());
            }
        }
        if (!states.equals(shown)) {
            shown = states;
            for (int i = 0; i < states.size(); i++) {
                show(cells.get(i), states.get(i));
            }
            // A finding with a further word needs the room beside it.
            oneValue.setText(cells.get(0).word().getText().contains(",") ? "" : words.text("screen.one-value"));
        }
        if (mark != null) {
            mark.take(cells.get(0)
                    .entry()
                    .mark(model.client().content(), test.marks().get(0))
                    .orElse(null));
        }
        Optional<ScreenModel.Past> past = Optional.of(model.past(test));
        if (!past.equals(shownPast)) {
            shownPast = past;
            show(past.get());
        }
    }

    private void show(Cell cell, ScreenModel.State state) {
        cell.number().pain(state.painful());
        cell.strip().show(state.strip(), state.value(), state.before());
        boolean otherPartSaysIt = cell.entry().part().isPresent() && cell != cells.get(cells.size() - 1);
        cell.word()
                .setText(otherPartSaysIt ? "" : state.finding().map(trade::kind).orElse(""));
        StyleClass.set(cell.word(), "limited", state.isLimited());
        cell.number()
                .field()
                .setAccessibleHelp(
                        state.finding().map(f -> trade.say(f.words())).orElse(""));
    }

    private void show(ScreenModel.Past past) {
        String carried = past.carriedOver()
                .map(d -> words.text("screen.carried", words.day(d)))
                .orElse("");
        last.setText(model.last(test));
        since.setText(carried.isEmpty() ? since(past.changes()) : carried);
    }

    /** What is being typed, or was left wrong, stays as the coach wrote it. */
    private static boolean isBeingTyped(Cell cell, ScreenModel.State state) {
        Optional<Double> number = cell.number().number();
        boolean half = !cell.number().isEmpty()
                && number.filter(n -> cell.entry().isPossible(n) && cell.entry().isOnStep(n))
                        .isEmpty();
        boolean same = number.isPresent() && number.equals(state.written().map(Double::parseDouble));
        return same
                || half && (cell.number().field().isFocused() || cell.number().isWrong());
    }

    private String since(Map<Optional<Side>, TestChange> changes) {
        if (changes.isEmpty()) {
            return "";
        }
        List<String> kinds =
                changes.values().stream().map(c -> change(c.kind())).distinct().toList();
        if (kinds.size() == 1) {
            return changes.size() == 1 || kinds.get(0).equals(change(TestChange.Kind.NO_REAL_CHANGE))
                    ? kinds.get(0)
                    : words.text("screen.both", kinds.get(0));
        }
        List<String> parts = new ArrayList<>();
        changes.forEach((side, change) -> parts.add(
                side.map(s -> words.text("side.short." + s.id()) + " ").orElse("") + change(change.kind())));
        return String.join(", ", parts);
    }

    private String change(TestChange.Kind kind) {
        return words.text(
                "change." + kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
    }

    /** With little room the position stands above its first test. */
    void compact(boolean little) {
        boolean head = little && !position.getText().isEmpty();
        position.setManaged(head);
        position.setVisible(head);
    }

    MovementTest test() {
        return test;
    }

    List<Cell> cells() {
        return cells;
    }

    void current(boolean isCurrent) {
        line.pseudoClassStateChanged(CURRENT, isCurrent);
    }
}
