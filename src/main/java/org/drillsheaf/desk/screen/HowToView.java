package org.drillsheaf.desk.screen;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.picture.Well;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.FindingStrip;
import org.drillsheaf.screen.MovementTest;

/** How the test of the current row is taken: its picture, its steps, its numbers, and what the signs of the table mean. */
final class HowToView extends VBox {
    private final ScreenModel model;
    private final Words words;
    private Optional<ScreenEntry> shown = Optional.empty();

    HowToView(ScreenModel model, Words words) {
        this.model = model;
        this.words = words;
        getStyleClass().addAll("side-panel", "how-to");
    }

    void show(ScreenEntry entry) {
        if (shown.equals(Optional.of(entry))) {
            return;
        }
        shown = Optional.of(entry);
        MovementTest test = entry.test();
        getChildren().clear();
        getChildren()
                .addAll(
                        new HBox(6, Labels.text(words.text("how-to.title"), "small", "second"), Labels.key("F1")),
                        Labels.prose(model.trade().test(test, entry.side()), "heading"));
        if (test.pose().isPresent()) {
            Well well = new Well(
                    words.text("how-to.picture", model.trade().test(test)),
                    model.client()
                            .workplace()
                            .pictures()
                            .test(test, entry.side().equals(Optional.of(Side.LEFT))));
            getChildren().add(well);
        }
        int number = 1;
        TradeWords trade = model.trade();
        for (LocalText step : test.method().steps()) {
            HBox line = new HBox(6, Labels.text(number++ + ".", "second"), Labels.prose(trade.words(step)));
            getChildren().add(line);
        }
        getChildren().add(Labels.prose(trade.words(test.method().ends()), "second"));
        facts(entry);
        marks(entry);
        legend();
    }

    private void facts(ScreenEntry entry) {
        MovementTest test = entry.test();
        GridPane grid = new GridPane();
        grid.setHgap(12);
        grid.setVgap(3);
        grid.getStyleClass().add("narrow-rule");
        int row = 0;
        fact(grid, row++, "how-to.sign", model.trade().words(test.method().sign()));
        Optional<FindingStrip> strip = model.state(entry).strip();
        if (strip.isPresent()) {
            fact(grid, row++, "how-to.cutoff", model.trade().say(strip.get().saidCutoff()));
            fact(
                    grid,
                    row++,
                    "how-to.error",
                    "± " + model.trade().say(strip.get().saidError()));
        }
        OptionalDouble before = model.state(entry).before();
        if (before.isPresent()) {
            fact(grid, row++, "how-to.before", model.last(test));
        }
        if (test.method().doubts().isPresent()) {
            fact(
                    grid,
                    row,
                    "how-to.doubts",
                    model.trade().words(test.method().doubts().get()));
        }
        getChildren().add(grid);
    }

    private void fact(GridPane grid, int row, String key, String value) {
        javafx.scene.control.Label name = Labels.text(words.text(key), "small", "third");
        name.setMinWidth(USE_PREF_SIZE);
        GridPane.setValignment(name, javafx.geometry.VPos.TOP);
        grid.addRow(row, name, Labels.prose(value, "small"));
    }

    /** Marks of a test with sides, such as tingling; those of one value stand in the table. */
    private void marks(ScreenEntry entry) {
        if (entry.side().isEmpty()) {
            return;
        }
        for (String mark : entry.test().marks()) {
            String name = words.text("mark." + mark);
            CheckBox box = new CheckBox(
                    name + ", " + words.text("side." + entry.side().get().id()));
            box.setSelected(entry.mark(model.client().content(), mark).orElse(false));
            box.setOnAction(e -> model.mark(entry, mark, box.isSelected(), words.text("undo.mark", name)));
            getChildren().add(box);
        }
    }

    /** What limited, at the line and full look like, from a test that has a cut-off. */
    private void legend() {
        Optional<FindingStrip> scale = model.client()
                .evaluation()
                .get()
                .flatMap(Evaluation::visit)
                .flatMap(v -> model.tests().stream()
                        .filter(t -> t.id().equals("straight-leg-raise"))
                        .findFirst()
                        .flatMap(t -> FindingStrip.of(v.client(), v.reading().age(), t)));
        if (scale.isEmpty()) {
            return;
        }
        VBox box = new VBox(2);
        box.getStyleClass().add("narrow-rule");
        FindingStrip strip = scale.get();
        double error = strip.line() * strip.test().step().doubleValue();
        String[] kinds = {"limited", "at-the-line", "full"};
        double[] places = {-2.2, -0.3, 2.2};
        for (int i = 0; i < kinds.length; i++) {
            StripView view = new StripView();
            view.show(
                    scale,
                    OptionalDouble.of(strip.cutoff() + places[i] * error),
                    i == 2 ? OptionalDouble.of(strip.cutoff() + 0.6 * error) : OptionalDouble.empty());
            HBox line = new HBox(
                    10,
                    view,
                    Labels.prose(words.text("legend." + kinds[i].toLowerCase(Locale.ROOT)), "small", "second"));
            line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
            box.getChildren().add(line);
        }
        getChildren().add(box);
    }
}
