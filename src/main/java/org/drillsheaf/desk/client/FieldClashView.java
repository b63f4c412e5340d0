package org.drillsheaf.desk.client;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;

/** Fields that were changed at two desks: each with both values, and a button to keep the one or take the other. */
final class FieldClashView extends VBox {
    private final ClientCase client;
    private final Words words;
    private final FieldWords fields;
    private Optional<Button> first = Optional.empty();

    FieldClashView(ClientCase client, OpenClash clash) {
        this.client = client;
        this.words = client.workplace().words();
        this.fields = new FieldWords(words, client.evaluator().knowledge());
        getStyleClass().add("message");
        var theirs = clash.clash().theirs();
        ZoneId here = client.workplace().clock().getZone();
        String at = words.time(LocalTime.ofInstant(theirs.savedAt(), here));
        getChildren()
                .addAll(
                        Labels.prose(words.count("two-desks.title", clash.open().size(), theirs.savedBy(), at), "bold"),
                        Labels.prose(words.text("two-desks.more")));
        for (OpenClash.Field field : clash.open()) {
            getChildren().add(row(clash.clash().part(), field));
        }
    }

    private HBox row(PartKey part, OpenClash.Field field) {
        String name = fields.name(part, field.path());
        Label label = Labels.text(name, "bold");
        Button mine = button("two-desks.mine", name, field, field.mine(), true);
        Button theirs = button("two-desks.theirs", name, field, field.theirs(), false);
        first = first.or(() -> Optional.of(mine));
        HBox row = new HBox(8, label, mine, theirs);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Button button(String key, String name, OpenClash.Field field, Optional<Content> value, boolean mine) {
        String shown = value.map(v -> fields.value(field.path(), v)).orElse(words.text("two-desks.nothing"));
        Button button = Buttons.small(words.text(key, shown), () -> client.decide(field, mine));
        button.setAccessibleText(name + ": " + button.getText());
        return button;
    }

    /** Puts the focus on the first decision. */
    void ready() {
        first.ifPresent(Button::requestFocus);
    }
}
