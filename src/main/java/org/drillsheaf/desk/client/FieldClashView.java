package org.drillsheaf.desk.client;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;

/** Fields that were changed at two desks: each with both values, and a button to keep the one or take the other. */
final class FieldClashView extends VBox {
    private static final int LONGEST_VALUE = 60;

    private final ClientCase client;
    private final Words words;
    private final TradeWords trade;
    private Optional<Button> first = Optional.empty();

    FieldClashView(ClientCase client, OpenClash clash) {
        this.client = client;
        this.words = client.workplace().words();
        this.trade = new TradeWords(words, client.evaluator().knowledge().vocabulary());
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
        String name = name(part, field.path());
        Label label = Labels.text(name, "bold");
        Button mine = button("two-desks.mine", name, field, field.mine(), true);
        Button theirs = button("two-desks.theirs", name, field, field.theirs(), false);
        first = first.or(() -> Optional.of(mine));
        HBox row = new HBox(8, label, mine, theirs);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private Button button(String key, String name, OpenClash.Field field, Optional<Content> value, boolean mine) {
        String shown = value.map(v -> value(field.path(), v)).orElse(words.text("two-desks.nothing"));
        Button button = Buttons.small(words.text(key, shown), () -> client.decide(field, mine));
        button.setAccessibleText(name + ": " + button.getText());
        return button;
    }

    /** Puts the focus on the first decision. */
    void ready() {
        first.ifPresent(Button::requestFocus);
    }

    private Optional<MovementTest> test(String path) {
        String[] steps = path.split("/");
        return steps.length < 3 || !steps[1].equals("screen")
                ? Optional.empty()
                : Optional.ofNullable(client.evaluator()
                        .knowledge()
                        .vocabulary()
                        .reading()
                        .battery()
                        .tests()
                        .get(steps[2]));
    }

    /** What a field is called on the sheet where it is typed. */
    private String name(PartKey part, String path) {
        Optional<MovementTest> test = test(path);
        if (test.isPresent()) {
            String side = path.contains("/left")
                    ? ", " + words.text("side.left")
                    : path.contains("/right") ? ", " + words.text("side.right") : "";
            return trade.test(test.get()) + side;
        }
        String[] steps = path.split("/");
        if (path.startsWith("/safety/")) {
            return client.evaluator().knowledge().vocabulary().reading().safetyGate().questions().stream()
                    .filter(q -> q.id().equals(steps[2]))
                    .findFirst()
                    .map(q -> question(q))
                    .orElse(steps[2]);
        }
        if (path.startsWith("/coach")) {
            return words.text("two-desks.wishes");
        }
        if (part.equals(PartKey.CONDITIONS)) {
            return words.text("person.conditions");
        }
        String key = "person." + path.substring(1);
        return part.equals(PartKey.CLIENT) && words.has(key)
                ? words.text(key)
                : path.substring(1).replace('/', ' ');
    }

    private String question(SafetyQuestion question) {
        return question.text(List.of(words.language(), "en"));
    }

    private String value(String path, Content value) {
        String written = value.value("").orElse("");
        if (written.equals("no") || written.equals("yes") || written.equals("not-sure")) {
            return words.text("answer." + written);
        }
        if (written.matches("-?\\d+(\\.\\d+)?")) {
            return words.number(written) + test(path).map(t -> t.unit().suffix()).orElse("");
        }
        if (!written.isEmpty()) {
            return written;
        }
        String parts = String.join(", ", new TreeSet<>(value.fields().values()));
        return parts.length() > LONGEST_VALUE ? parts.substring(0, LONGEST_VALUE) + " …" : parts;
    }
}
