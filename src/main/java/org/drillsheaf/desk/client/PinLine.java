package org.drillsheaf.desk.client;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.Node;
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

/** "Still missing": what is needed, with its answer given right there, and what would help. */
final class PinLine extends VBox {
    private static final int MOST_LINKS = 3;

    private final Words words;
    private final TradeWords trade;
    private final BiConsumer<SafetyQuestion, String> answer;
    private final Consumer<MovementTest> go;
    private final Runnable next;
    private Missing shown = Missing.NOTHING;
    private boolean compact;

    PinLine(
            Words words,
            TradeWords trade,
            BiConsumer<SafetyQuestion, String> answer,
            Consumer<MovementTest> go,
            Runnable next) {
        this.words = words;
        this.trade = trade;
        this.answer = answer;
        this.go = go;
        this.next = next;
        getStyleClass().add("pin-line");
        fill();
    }

    void show(Missing missing) {
        if (!missing.equals(shown)) {
            shown = missing;
            fill();
        }
    }

    /** With little room it counts and leads on; the question itself is asked on the sheet. */
    void compact(boolean little) {
        compact = little;
        fill();
    }

    private void fill() {
        setVisible(!shown.isNothing());
        setManaged(!shown.isNothing());
        HBox line = row();
        getChildren().setAll(line);
        Label title = Labels.text(words.text("missing.title"), "bold");
        title.setMinWidth(USE_PREF_SIZE);
        line.getChildren().add(title);
        if (!shown.needed().isEmpty()) {
            line.getChildren().addAll(needed(shown.needed().get(0)));
        }
        if (!shown.helpful().isEmpty()) {
            line.getChildren().addAll(helpful());
        }
        Button forward = Buttons.withKey(Buttons.small(words.text("missing.next"), next), "F8");
        line.getChildren().addAll(Labels.spring(), forward);
    }

    private static HBox row() {
        HBox row = new HBox();
        row.getStyleClass().add("pin-row");
        return row;
    }

    private List<Node> needed(SafetyQuestion first) {
        Label counted = Labels.tag(words.text("missing.needed", shown.needed().size()), "inverted");
        if (compact) {
            return List.of(counted);
        }
        String text = first.text(List.of(words.language(), "en"));
        Button no = Buttons.small(words.text("answer.no"), () -> answer.accept(first, "no"));
        Button yes = Buttons.small(words.text("answer.yes"), () -> answer.accept(first, "yes"));
        no.setAccessibleHelp(text);
        yes.setAccessibleHelp(text);
        return List.of(counted, Labels.prose(text, "second"), no, yes);
    }

    private List<Node> helpful() {
        List<Node> line = new ArrayList<>();
        line.add(Labels.tag(words.text("missing.helpful", shown.helpful().size()), "outlined"));
        boolean alone = shown.needed().isEmpty() && !compact;
        shown.helpful().stream()
                .limit(alone ? MOST_LINKS : 1)
                .forEach(test -> line.add(Buttons.link(trade.test(test), () -> go.accept(test))));
        if (alone) {
            line.add(Labels.prose(words.text("missing.nothing-needed"), "second"));
        }
        return line;
    }
}
