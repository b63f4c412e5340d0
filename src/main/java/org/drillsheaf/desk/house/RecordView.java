package org.drillsheaf.desk.house;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.frame.FrameView;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.store.sql.StoreAddress;
import org.drillsheaf.store.sql.StoreFailure;
import org.drillsheaf.store.upkeep.Backup;

/** Where the record lies, its backups, and a new passphrase. */
final class RecordView extends VBox {
    private static final int SHORTEST_PASSPHRASE = 8;

    private final Workplace workplace;
    private final Words words;
    private final FrameView.Actions actions;
    private final Label backups = Labels.prose("", "second");
    private final Label told = Labels.prose("", "bold");

    RecordView(Workplace workplace, FrameView.Actions actions) {
        this.workplace = workplace;
        this.words = workplace.words();
        this.actions = actions;
        getStyleClass().add("house-part");
        boolean file = workplace.store().address() instanceof StoreAddress.File;
        Button now = Buttons.plain(words.text("record.back-up"), this::backUp);
        if (!file) {
            Readiness.of(now).set(Optional.of(words.text("record.server")));
        }
        HBox row = new HBox(12, now, backups);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren()
                .addAll(
                        Labels.text(words.text("house.record"), "heading"),
                        Labels.prose(workplace.store().address().shown(), "second"),
                        row,
                        told);
        if (file) {
            getChildren().addAll(Labels.prose(words.text("house.record-more"), "second"), passphrase());
            look();
        }
    }

    private void look() {
        workplace.background().run(() -> workplace.store().backups().list(), this::show, this::failed);
    }

    private void show(List<Backup> made) {
        backups.setText(made.stream()
                .findFirst()
                .map(b -> words.count(
                        "record.backups",
                        made.size(),
                        words.date(b.made().atZone(ZoneId.systemDefault()).toLocalDate()),
                        words.time(b.made().atZone(ZoneId.systemDefault()).toLocalTime())))
                .orElse(words.text("record.no-backup")));
    }

    private void backUp() {
        told.setText(words.text("record.backing-up"));
        workplace
                .background()
                .run(
                        () -> workplace.store().backups().make(),
                        made -> {
                            told.setText(words.text(
                                    "record.backed-up", made.address().file().toString()));
                            look();
                        },
                        this::failed);
    }

    private void failed(Exception failure) {
        told.setText(
                failure instanceof StoreFailure store
                        ? store.problem().what() + ". " + store.problem().remedy() + "."
                        : String.valueOf(failure.getMessage()));
    }

    private GridPane passphrase() {
        PasswordField old = new PasswordField();
        PasswordField fresh = new PasswordField();
        PasswordField again = new PasswordField();
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        field(grid, 0, "record.old-passphrase", old);
        field(grid, 1, "record.new-passphrase", fresh);
        field(grid, 2, "start.again", again);
        Button change = Buttons.plain(words.text("record.change-passphrase"), () -> {
            if (fresh.getText().length() < SHORTEST_PASSPHRASE) {
                told.setText(words.text("start.passphrase.short", SHORTEST_PASSPHRASE));
            } else if (!fresh.getText().equals(again.getText())) {
                told.setText(words.text("start.again.differs"));
            } else {
                actions.passphrase(old.getText().toCharArray(), fresh.getText().toCharArray(), told::setText);
            }
        });
        grid.add(change, 1, 3);
        return grid;
    }

    private void field(GridPane grid, int row, String key, PasswordField field) {
        Label label = Labels.text(words.text(key), "second");
        label.setLabelFor(field);
        field.setAccessibleRoleDescription(words.text(key));
        grid.addRow(row, label, field);
    }
}
