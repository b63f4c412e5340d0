package org.drillsheaf.desk.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.drillsheaf.desk.look.IntoSight;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.PhasePlan;
import org.drillsheaf.program.Program;
import org.jspecify.annotations.Nullable;

/** The phases of a program as columns, the drill that is chosen in them with its panel beside, and the keys between drills. */
final class PhaseBoard extends BorderPane implements EntryView.Hands {
    private final ProgramModel model;
    private final Words words;
    private final Parent sheet;
    private final List<PhaseColumn> columns = new ArrayList<>();
    private @Nullable Program drawn;
    private Optional<EntryView> selected = Optional.empty();
    private boolean waitsForEntries;
    private boolean little;

    /** @param sheet while the focus is anywhere in it, a program that is drawn anew may take the focus */
    PhaseBoard(ProgramModel model, Words words, Parent sheet) {
        this.model = model;
        this.words = words;
        this.sheet = sheet;
        setMinHeight(0);
    }

    /** Draws the program, unless it is the one that is drawn already. */
    void show(ProgramModel.Shown shown) {
        if (shown.program() != drawn) {
            draw(shown);
        }
    }

    /** There is no program. */
    void empty(Node instead) {
        drawn = null;
        setCenter(instead);
    }

    /** With little room; what is drawn is drawn anew. */
    void compact(boolean now) {
        little = now;
        drawn = null;
    }

    /** Puts the focus on the chosen drill, else on the first one, now or as soon as there is one. */
    boolean ready() {
        Optional<EntryView> first = selected.or(() -> entries().stream().findFirst());
        waitsForEntries = first.isEmpty();
        first.ifPresent(Node::requestFocus);
        return first.isPresent();
    }

    private void draw(ProgramModel.Shown shown) {
        Optional<String> before = selected.map(s -> s.phase().id() + s.entry().drill());
        boolean hadFocus = selected.filter(EntryView::isFocused).isPresent() || sheetHasFocus();
        drawn = shown.program();
        columns.clear();
        selected = Optional.empty();
        setRight(null);
        HBox row = new HBox();
        int target = shown.built().planning().needs().client().minutesPerSession();
        for (PhasePlan plan : shown.program().phases()) {
            PhaseColumn column = new PhaseColumn(model, words, plan, target, little, this);
            HBox.setHgrow(column, Priority.ALWAYS);
            columns.add(column);
            row.getChildren().add(column);
        }
        ScrollPane scroll = new ScrollPane(row);
        scroll.setFitToHeight(true);
        scroll.setFitToWidth(true);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        setCenter(scroll);
        for (EntryView entry : entries()) {
            entry.focusedProperty().addListener((of, old, now) -> {
                if (now) {
                    select(entry);
                }
            });
            entry.setOnKeyPressed(key -> {
                if (pressed(key, entry)) {
                    key.consume();
                }
            });
        }
        entries().stream()
                .filter(e ->
                        before.equals(Optional.of(e.phase().id() + e.entry().drill())))
                .findFirst()
                .or(() -> before.isPresent() || waitsForEntries
                        ? entries().stream().findFirst()
                        : Optional.empty())
                .ifPresent(e -> {
                    select(e);
                    if (hadFocus || waitsForEntries) {
                        waitsForEntries = false;
                        inPlace();
                        e.requestFocus();
                    }
                });
    }

    private boolean sheetHasFocus() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        for (Node n = owner; n != null; n = n.getParent()) {
            if (n == sheet) {
                return true;
            }
        }
        return false;
    }

    private void inPlace() {
        sheet.applyCss();
        sheet.layout();
    }

    private List<EntryView> entries() {
        return columns.stream().flatMap(c -> c.entries().stream()).toList();
    }

    private void select(EntryView entry) {
        selected.ifPresent(s -> s.selected(false));
        selected = Optional.of(entry);
        entry.selected(true);
    }

    @Override
    public void take(EntryView entry) {
        entry.requestFocus();
        select(entry);
        panel(entry, false);
    }

    private void panel(EntryView entry, boolean focus) {
        EntryPanel panel = new EntryPanel(model, words, entry.phase(), entry.entry(), () -> {
            setRight(null);
            entry.requestFocus();
        });
        setRight(panel);
        inPlace(); // the columns are narrower now
        IntoSight.bring(entry, 0);
        if (focus) {
            panel.ready();
        }
    }

    @Override
    public void drop(Phase phase, String drill, EntryView before) {
        List<EntryView> inPhase = columns.get(phase.ordinal()).entries();
        model.move(phase, drill, inPhase.indexOf(before), words.text("undo.order", model.name(drill)));
    }

    private boolean pressed(KeyEvent key, EntryView entry) {
        String name = model.name(entry.entry().drill());
        if (key.isAltDown() && (key.getCode() == KeyCode.UP || key.getCode() == KeyCode.DOWN)) {
            List<EntryView> inPhase = columns.get(entry.phase().ordinal()).entries();
            int to = inPhase.indexOf(entry) + (key.getCode() == KeyCode.UP ? -1 : 1);
            model.move(entry.phase(), entry.entry().drill(), to, words.text("undo.order", name));
            return true;
        }
        if (key.isShortcutDown() || key.isAltDown()) {
            return false;
        }
        switch (key.getCode()) {
            case S, ENTER -> panel(entry, true);
            case K -> model.pin(entry.phase(), entry.entry(), words.text("undo.pin", name));
            case DELETE -> model.leaveOut(entry.phase(), entry.entry(), words.text("undo.left-out", name));
            case PLUS, ADD, EQUALS -> model.dose(entry.phase(), entry.entry(), 1, 0, 0, words.text("undo.dose", name));
            case MINUS, SUBTRACT -> model.dose(entry.phase(), entry.entry(), -1, 0, 0, words.text("undo.dose", name));
            case UP -> step(entry, -1);
            case DOWN -> step(entry, 1);
            case LEFT -> sideways(entry, -1);
            case RIGHT -> sideways(entry, 1);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void step(EntryView from, int by) {
        List<EntryView> inPhase = columns.get(from.phase().ordinal()).entries();
        int to = inPhase.indexOf(from) + by;
        if (to >= 0 && to < inPhase.size()) {
            inPhase.get(to).requestFocus();
        }
    }

    private void sideways(EntryView from, int by) {
        int row = columns.get(from.phase().ordinal()).entries().indexOf(from);
        for (int c = from.phase().ordinal() + by; c >= 0 && c < columns.size(); c += by) {
            List<EntryView> there = columns.get(c).entries();
            if (!there.isEmpty()) {
                there.get(Math.min(row, there.size() - 1)).requestFocus();
                return;
            }
        }
    }
}
