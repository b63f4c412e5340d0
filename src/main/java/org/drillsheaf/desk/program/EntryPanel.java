package org.drillsheaf.desk.program;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.picture.Well;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.Alternative;
import org.drillsheaf.program.Entry;
import org.drillsheaf.program.Served;

/** Beside the columns: why a drill is there, its dose, and what could take its place at what cost. */
final class EntryPanel extends VBox {
    private static final int MOST_BARRED = 4;

    private final ProgramModel model;
    private final Words words;
    private final Runnable close;
    private final List<HBox> rows = new ArrayList<>();
    private final VBox list = new VBox();
    private final Button pin;

    EntryPanel(ProgramModel model, Words words, Phase phase, Entry entry, Runnable close) {
        this.model = model;
        this.words = words;
        this.close = close;
        getStyleClass().add("swap-panel");
        Button shut = Buttons.withKey(Buttons.link(words.text("program.close"), close), "Esc");
        HBox head = new HBox(
                8,
                Labels.text(words.text("program.in-place-of", model.name(phase)), "small", "second"),
                Labels.spring(),
                shut);
        head.setAlignment(Pos.CENTER_LEFT);
        VBox why = new VBox(4);
        entry.reasons().forEach(r -> why.getChildren()
                .add(Labels.prose(EntryView.sentence(model.trade().say(r)), "small", "second")));
        for (Served served : entry.serves()) {
            why.getChildren()
                    .add(Labels.prose(
                            words.text("program.serves", model.goal(served.goal()), served.strength(), served.adds()),
                            "small",
                            "second"));
        }
        String name = model.name(entry.drill());
        pin = Buttons.withKey(
                Buttons.small(
                        words.text(entry.pinned().isPresent() ? "program.unpin" : "program.pin"),
                        () -> model.pin(phase, entry, words.text("undo.pin", name))),
                "K");
        Button out = Buttons.withKey(
                Buttons.small(
                        words.text("program.leave-out"),
                        () -> model.leaveOut(phase, entry, words.text("undo.left-out", name))),
                "Del");
        HBox hands = new HBox(8, pin, out);
        list.getChildren().add(Labels.text(words.text("program.alternatives"), "bold"));
        if (entry.alternatives().isEmpty()) {
            list.getChildren().add(Labels.prose(words.text("program.no-alternative"), "second"));
        }
        entry.alternatives().forEach(a -> list.getChildren().add(row(phase, entry, a)));
        VBox all = new VBox(8, why, dose(phase, entry), hands, list);
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren()
                .addAll(
                        head,
                        Labels.prose(name, "heading"),
                        scroll,
                        Labels.prose(words.text("program.costs"), "small", "third"));
        setOnKeyPressed(key -> {
            if (key.getCode() == KeyCode.ESCAPE) {
                close.run();
                key.consume();
            }
        });
        model.shown().ifPresent(shown -> model.client()
                .workplace()
                .background()
                .run(
                        () -> model.barred(shown, entry, MOST_BARRED),
                        barred -> barred.forEach(b -> list.getChildren().add(barred(b))),
                        e -> {}));
    }

    private HBox row(Phase phase, Entry entry, Alternative alternative) {
        String name = model.name(alternative.drill());
        String cost = model.trade().say(alternative.words());
        Button swap = Buttons.small(words.text("program.swap-in"), () -> {
            model.swap(phase, entry, alternative.drill(), words.text("undo.swap", name));
            close.run();
        });
        swap.setAccessibleText(words.text("program.swap-in-of", name));
        swap.setFocusTraversable(false);
        VBox text = new VBox(3, Labels.prose(name, "bold"), Labels.prose(EntryView.sentence(cost), "small"), swap);
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(60);
        HBox row =
                new HBox(new Well(name, model.client().workplace().pictures().drill(alternative.drill(), false)), text);
        row.getStyleClass().add("swap-row");
        row.setFocusTraversable(true);
        row.setAccessibleRole(AccessibleRole.BUTTON);
        row.setAccessibleText(words.text("program.swap-in-of", name) + ". " + cost);
        row.setOnKeyPressed(key -> {
            int at = rows.indexOf(row);
            if (key.getCode() == KeyCode.ENTER || key.getCode() == KeyCode.SPACE) {
                swap.fire();
                key.consume();
            } else if (key.getCode() == KeyCode.DOWN && at + 1 < rows.size()) {
                rows.get(at + 1).requestFocus();
                key.consume();
            } else if (key.getCode() == KeyCode.UP && at > 0) {
                rows.get(at - 1).requestFocus();
                key.consume();
            }
        });
        rows.add(row);
        return row;
    }

    private HBox barred(ProgramModel.Barred barred) {
        String name = model.name(barred.drill());
        VBox text = new VBox(
                3,
                Labels.prose(name, "bold", "second"),
                Labels.tag(words.text("program.not-for-client"), "inverted"),
                Labels.prose(EntryView.sentence(barred.reason()), "small", "second"));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(60);
        HBox row = new HBox(new Well(name, model.client().workplace().pictures().drill(barred.drill(), false)), text);
        row.getStyleClass().add("swap-row");
        return row;
    }

    private VBox dose(Phase phase, Entry entry) {
        String undo = words.text("undo.dose", model.name(entry.drill()));
        VBox box = new VBox(
                4,
                Labels.text(words.text("program.dose"), "bold"),
                stepper("dose.sets", entry.dose().sets(), by -> model.dose(phase, entry, by, 0, 0, undo)),
                stepper(
                        "dose." + entry.dose().count(),
                        entry.dose().each(),
                        by -> model.dose(phase, entry, 0, by, 0, undo)),
                stepper("dose.effort", entry.dose().effort(), by -> model.dose(phase, entry, 0, 0, by, undo)));
        if (model.wish(phase, entry.drill()).isPresent()) {
            box.getChildren()
                    .add(Buttons.link(words.text("program.usual-dose"), () -> model.usualDose(phase, entry, undo)));
        }
        return box;
    }

    private HBox stepper(String key, int value, IntConsumer step) {
        String name = words.text(key);
        Label label = Labels.text(Words.capital(name), "second");
        label.getStyleClass().add("stepper-name");
        Button less = Buttons.small("−", () -> step.accept(-1));
        less.setAccessibleText(words.text("program.less", name));
        Button more = Buttons.small("+", () -> step.accept(1));
        more.setAccessibleText(words.text("program.more", name));
        Label number = Labels.text(Integer.toString(value), "bold");
        number.getStyleClass().add("stepper-number");
        number.setAlignment(Pos.CENTER);
        HBox row = new HBox(6, label, less, number, more);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setMaxWidth(Region.USE_PREF_SIZE);
        return row;
    }

    /** Puts the focus on the first alternative, else on what can be done. */
    void ready() {
        applyCss();
        layout();
        (rows.isEmpty() ? pin : rows.get(0)).requestFocus();
    }
}
