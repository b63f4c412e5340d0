package org.drillsheaf.desk.house;

import java.time.ZoneId;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.frame.FrameView;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.CapsLockHint;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.store.sql.StoreAddress;

/** Where the record lies, its backups or the desks at it, and a new passphrase. */
final class RecordView extends VBox {
    private static final int SHORTEST_PASSPHRASE = 8;

    private final Workplace workplace;
    private final Words words;
    private final FrameView.Actions actions;
    private final Label told = Labels.prose("", "bold");

    RecordView(Workplace workplace, FrameView.Actions actions) {
        this.workplace = workplace;
        this.words = workplace.words();
        this.actions = actions;
        getStyleClass().add("house-part");
        boolean file = workplace.store().address() instanceof StoreAddress.File;
        getChildren()
                .addAll(
                        Labels.text(words.text("house.record"), "heading"),
                        Labels.prose(workplace.store().address().shown(), "second"));
        if (file) {
            getChildren()
                    .addAll(
                            Labels.prose(words.text("house.record-more"), "second"),
                            new BackupsView(workplace, actions),
                            passphrase(),
                            told);
        } else {
            getChildren().addAll(desks(), told);
        }
    }

    /** Which desks have the record of a server open. */
    private VBox desks() {
        VBox desks = new VBox(4, Labels.prose(words.text("record.server"), "second"));
        workplace
                .background()
                .run(
                        () -> workplace.store().openDesks(),
                        open -> open.forEach(desk -> desks.getChildren()
                                .add(Labels.text(words.text(
                                        "record.desk",
                                        desk.from().isEmpty() ? words.text("record.this-machine") : desk.from(),
                                        words.time(desk.since()
                                                .atZone(ZoneId.systemDefault())
                                                .toLocalTime()))))),
                        e -> told.setText(String.valueOf(e.getMessage())));
        return desks;
    }

    private GridPane passphrase() {
        PasswordField old = new PasswordField();
        PasswordField fresh = new PasswordField();
        PasswordField again = new PasswordField();
        GridPane grid = new GridPane();
        grid.getStyleClass().addAll("form", "narrow-rule");
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
        grid.add(new CapsLockHint(words.text("unlock.caps-lock"), old, fresh, again), 1, 3);
        grid.add(change, 1, 4);
        return grid;
    }

    private void field(GridPane grid, int row, String key, PasswordField field) {
        Label label = Labels.prose(words.text(key), "second", "house-name");
        label.setLabelFor(field);
        field.setAccessibleRoleDescription(words.text(key));
        grid.addRow(row, label, field);
    }
}
