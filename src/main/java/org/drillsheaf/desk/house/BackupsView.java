package org.drillsheaf.desk.house;

import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.frame.FrameView;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.CapsLockHint;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.WorkBar;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Going;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.Backup;

/** The backups of the record's file: make one, and put one back. Each was proved when it was made. */
final class BackupsView extends VBox {
    private static final int MOST_SHOWN = 6;

    private final Workplace workplace;
    private final Words words;
    private final FrameView.Actions actions;
    private final VBox list = new VBox(4);
    private final VBox told = new VBox(6);
    private final WorkBar bar;

    BackupsView(Workplace workplace, FrameView.Actions actions) {
        super(8);
        this.workplace = workplace;
        this.words = workplace.words();
        this.actions = actions;
        this.bar = new WorkBar(words, workplace.background());
        Button now = Buttons.plain(words.text("record.back-up"), this::backUp);
        getChildren().addAll(new HBox(now), bar, told, list);
        look();
    }

    private void look() {
        workplace.background().run(() -> workplace.store().backups().list(), this::show, this::failed);
    }

    private void show(List<Backup> made) {
        list.getChildren().clear();
        if (made.isEmpty()) {
            list.getChildren().add(Labels.prose(words.text("record.no-backup"), "second"));
        }
        made.stream().limit(MOST_SHOWN).forEach(backup -> list.getChildren().add(row(backup)));
        if (made.size() > MOST_SHOWN) {
            list.getChildren().add(Labels.text(words.text("record.older", made.size() - MOST_SHOWN), "small", "third"));
        }
    }

    private String day(Backup backup) {
        LocalDateTime time = backup.made().atZone(ZoneId.systemDefault()).toLocalDateTime();
        return words.date(time.toLocalDate()) + ", " + words.time(time.toLocalTime());
    }

    private FlowPane row(Backup backup) {
        Label day = Labels.text(day(backup));
        day.getStyleClass().add("backup-day");
        Label size = Labels.text(words.text("record.size", Math.max(1, backup.bytes() / 1024)), "second");
        Button back = Buttons.small(words.text("record.put-back"), () -> ask(backup));
        back.setAccessibleText(words.text("record.put-back") + ": " + day(backup));
        FlowPane row = new FlowPane(12, 4, day, size, Labels.tag(words.text("record.proved"), "outlined"), back);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private void backUp() {
        told.getChildren().clear();
        bar.run(
                words.text("record.backing-up"),
                going -> workplace.store().backups().make(going::at),
                made -> {
                    tell(words.text("record.backed-up", made.address().file().toString()));
                    look();
                },
                this::failed);
    }

    /** What will happen, before it does. */
    private void ask(Backup backup) {
        PasswordField passphrase = new PasswordField();
        passphrase.setPromptText(words.text("record.passphrase-then"));
        passphrase.setAccessibleRoleDescription(words.text("record.passphrase-then"));
        passphrase.setPrefColumnCount(24);
        Button go = Buttons.plain(
                words.text("record.put-back-now"),
                () -> actions.restore(
                        backup.address(),
                        passphrase.getText().isEmpty()
                                ? Optional.empty()
                                : Optional.of(passphrase.getText().toCharArray())));
        Button leave = Buttons.plain(
                words.text("record.leave"), () -> told.getChildren().clear());
        Message question = new Message(
                "caution", words.text("record.put-back-question", day(backup)), words.text("record.put-back-more"));
        question.getChildren()
                .addAll(
                        passphrase,
                        new CapsLockHint(words.text("unlock.caps-lock"), passphrase),
                        new HBox(8, go, leave));
        told.getChildren().setAll(question);
        leave.requestFocus();
    }

    private void tell(String text) {
        told.getChildren().setAll(Labels.prose(text, "bold"));
    }

    private void failed(Exception failure) {
        tell(
                failure instanceof Going.Stopped
                        ? words.text("work.stopped")
                        : failure instanceof StoreFailure store
                                ? store.problem().what() + ". "
                                        + store.problem().remedy() + "."
                                : String.valueOf(failure.getMessage()));
    }
}
