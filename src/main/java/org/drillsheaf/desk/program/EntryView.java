package org.drillsheaf.desk.program;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.Dragboard;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.Side;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.picture.Well;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.AssignedDose;
import org.drillsheaf.program.Entry;

/** One drill in a phase: picture, name, dose, minutes, and why it is there. */
final class EntryView extends HBox {
    private final Phase phase;
    private final Entry entry;

    /** What can be done with an entry by the mouse. */
    interface Hands {
        void take(EntryView entry);

        void drop(Phase phase, String drill, EntryView before);
    }

    EntryView(ProgramModel model, Words words, Phase phase, Entry entry, Hands hands) {
        this.phase = phase;
        this.entry = entry;
        getStyleClass().add("entry");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.BUTTON);
        String name = model.name(entry.drill());
        String dose = dose(words, entry);
        String why = entry.reasons().isEmpty()
                ? ""
                : sentence(model.trade().say(entry.reasons().get(0)));
        setAccessibleText(words.text("program.entry", name, dose, entry.minutes(), model.name(phase)));
        setAccessibleHelp(why);
        Well well = new Well(
                name,
                model.client()
                        .workplace()
                        .pictures()
                        .drill(
                                entry.drill(),
                                entry.side().filter(s -> s == Side.LEFT).isPresent()));
        Label minutes = Labels.text(words.text("program.minutes", entry.minutes()), "bold");
        minutes.setMinWidth(Region.USE_PREF_SIZE);
        HBox doses = new HBox(6, Labels.prose(dose, "small"), Labels.spring(), minutes);
        VBox text = new VBox(2, Labels.prose(name, "bold"), doses, Labels.prose(why, "small", "second"));
        HBox tags = new HBox(4);
        entry.pinned()
                .ifPresent(p -> tags.getChildren().add(Labels.tag(words.text("program.pin." + p.id()), "inverted")));
        if (entry.familiar()) {
            tags.getChildren().add(Labels.tag(words.text("program.known"), "dashed"));
        }
        entry.variant().ifPresent(v -> tags.getChildren().add(Labels.tag(words.text("program.changed"), "outlined")));
        model.wish(phase, entry.drill())
                .ifPresent(w -> tags.getChildren().add(Labels.tag(words.text("program.your-dose"), "outlined")));
        if (!tags.getChildren().isEmpty()) {
            text.getChildren().add(tags);
        }
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMinWidth(60);
        setAlignment(Pos.TOP_LEFT);
        getChildren().addAll(well, text);
        setOnMouseClicked(e -> hands.take(this));
        drag(hands);
    }

    private void drag(Hands hands) {
        setOnDragDetected(e -> {
            Dragboard board = startDragAndDrop(TransferMode.MOVE);
            ClipboardContent content = new ClipboardContent();
            content.putString(phase.id() + " " + entry.drill());
            board.setContent(content);
            e.consume();
        });
        setOnDragOver(e -> {
            if (isOfThisPhase(e.getDragboard())) {
                e.acceptTransferModes(TransferMode.MOVE);
                if (!getStyleClass().contains("drop-above")) {
                    getStyleClass().add("drop-above");
                }
            }
            e.consume();
        });
        setOnDragExited(e -> getStyleClass().remove("drop-above"));
        setOnDragDropped(e -> {
            boolean fits = isOfThisPhase(e.getDragboard());
            if (fits) {
                hands.drop(phase, e.getDragboard().getString().split(" ", 2)[1], this);
            }
            e.setDropCompleted(fits);
            e.consume();
        });
    }

    private boolean isOfThisPhase(Dragboard board) {
        return board.hasString() && board.getString().startsWith(phase.id() + " ");
    }

    /** A dose in a few words, for example {@code 3 × 5 breaths, effort 4}. */
    static String dose(Words words, Entry entry) {
        AssignedDose dose = entry.dose();
        String side = dose.sides().equals("each-side")
                ? " " + words.text("dose.each-side")
                : dose.sides().equals("one-side")
                        ? " "
                                + entry.side()
                                        .map(s -> words.text("dose.only." + s.id()))
                                        .orElse("")
                        : "";
        return words.text("dose", dose.sets(), dose.each(), words.text("dose." + dose.count()) + side, dose.effort());
    }

    static String sentence(String clause) {
        return clause.isEmpty() || clause.endsWith(".") ? Words.capital(clause) : Words.capital(clause) + ".";
    }

    Phase phase() {
        return phase;
    }

    Entry entry() {
        return entry;
    }

    void selected(boolean isSelected) {
        getStyleClass().remove("selected");
        if (isSelected) {
            getStyleClass().add("selected");
        }
    }
}
