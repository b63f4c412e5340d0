package org.drillsheaf.desk.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.WorkBar;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.store.record.ClientSummary;

/** Printing for all clients of the list at once: which papers, where to, how far it is, and who got none and why. */
public final class BatchView extends VBox {
    private static final List<DocumentKind> KINDS =
            List.of(DocumentKind.CLIENT_HANDOUT, DocumentKind.REMINDER_CARD, DocumentKind.PRACTICE_LOG);
    private static final int MOST_REASONS = 100;

    private final Workplace workplace;
    private final Words words;
    private final Supplier<List<ClientSummary>> clients;
    /** A name in Arabic letters at the beginning does not turn the sentence round. */
    private static final String FROM_LEFT = "\u200E";

    private final List<CheckBox> kinds = new ArrayList<>();
    private final VBox told = new VBox(6);
    private final WorkBar bar;
    private final Button print;

    /**
     * @param clients those of the list, when the printing begins
     * @param close leaves the panel
     */
    public BatchView(Workplace workplace, Supplier<List<ClientSummary>> clients, Runnable close) {
        this.workplace = workplace;
        this.words = workplace.words();
        this.clients = clients;
        this.bar = new WorkBar(words, workplace.background());
        this.print = Buttons.main(words.text("batch.print"), this::print);
        getStyleClass().addAll("side-panel", "batch");
        getChildren()
                .addAll(
                        Labels.text(words.text("batch.title"), "heading"),
                        Labels.prose(words.text("batch.more"), "second"));
        for (DocumentKind kind : KINDS) {
            CheckBox box = new CheckBox(words.text("document." + kind.id()));
            box.setSelected(kind == DocumentKind.CLIENT_HANDOUT);
            kinds.add(box);
            getChildren().add(box);
        }
        ScrollPane scroll = new ScrollPane(told);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Button leave = Buttons.plain(words.text("import.close"), close);
        leave.setCancelButton(true);
        getChildren().addAll(new HBox(8, print, leave), bar, scroll);
    }

    @Override
    public void requestFocus() {
        kinds.get(0).requestFocus();
    }

    private void print() {
        List<DocumentKind> wanted = new ArrayList<>();
        for (int i = 0; i < KINDS.size(); i++) {
            if (kinds.get(i).isSelected()) {
                wanted.add(KINDS.get(i));
            }
        }
        if (wanted.isEmpty() || bar.isRunning()) {
            return;
        }
        List<ClientSummary> all = clients.get();
        workplace.dialogs().folder(words.text("batch.folder")).ifPresent(folder -> {
            told.getChildren().clear();
            bar.run(
                    words.text("batch.printing"),
                    going -> new Batch(workplace).print(all, wanted, folder, going),
                    this::done,
                    e -> told.getChildren()
                            .setAll(new Message(
                                    "caution",
                                    Optional.ofNullable(e.getMessage()).orElse(e.toString()),
                                    "")));
        });
    }

    private void done(Batch.Outcome outcome) {
        String counted = outcome.printed().isEmpty()
                ? words.text("batch.none")
                : words.count("batch.done", outcome.printed().size());
        told.getChildren()
                .setAll(Labels.prose(
                        outcome.stopped() ? words.text("batch.stopped") + " " + counted : counted, "bold"));
        if (!outcome.left().isEmpty()) {
            told.getChildren()
                    .add(Labels.prose(words.count("batch.left", outcome.left().size()), "second"));
        }
        outcome.left().stream().limit(MOST_REASONS).forEach(reason -> told.getChildren()
                .add(Labels.prose(FROM_LEFT + reason, "small")));
        if (outcome.left().size() > MOST_REASONS) {
            told.getChildren()
                    .add(Labels.text(
                            words.text("own.more-lines", outcome.left().size() - MOST_REASONS), "small", "third"));
        }
    }
}
