package org.drillsheaf.desk.client;

import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.SafetyQuestion;

/** "Still missing": what is needed, with its answer given right there, and what would help. */
final class PinLine extends HBox {
    private static final int MOST_LINKS = 3;

    private final Words words;
    private final BiConsumer<SafetyQuestion, String> answer;
    private final Consumer<MovementTest> go;
    private final Runnable next;
    private Missing shown = Missing.NOTHING;

    PinLine(Words words, BiConsumer<SafetyQuestion, String> answer, Consumer<MovementTest> go, Runnable next) {
        this.words = words;
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

    private void fill() {
        setVisible(!shown.isNothing());
        setManaged(!shown.isNothing());
        getChildren().setAll(Labels.text(words.text("missing.title"), "bold"));
        if (!shown.needed().isEmpty()) {
            SafetyQuestion first = shown.needed().get(0);
            javafx.scene.control.Label question = Labels.text(first.text(List.of(words.language(), "en")), "second");
            question.setMinWidth(60);
            Button no = Buttons.small(words.text("answer.no"), () -> answer.accept(first, "no"));
            Button yes = Buttons.small(words.text("answer.yes"), () -> answer.accept(first, "yes"));
            no.setAccessibleHelp(first.text(List.of(words.language(), "en")));
            yes.setAccessibleHelp(first.text(List.of(words.language(), "en")));
            getChildren()
                    .addAll(
                            Labels.tag(
                                    words.text("missing.needed", shown.needed().size()), "inverted"),
                            question,
                            no,
                            yes);
        }
        if (!shown.helpful().isEmpty()) {
            getChildren()
                    .add(Labels.tag(
                            words.text("missing.helpful", shown.helpful().size()), "outlined"));
            shown.helpful().stream()
                    .limit(shown.needed().isEmpty() ? MOST_LINKS : 1)
                    .forEach(test ->
                            getChildren().add(Buttons.link(new TradeWords(words).test(test), () -> go.accept(test))));
            if (shown.needed().isEmpty()) {
                getChildren().add(Labels.text(words.text("missing.nothing-needed"), "second"));
            }
        }
        Region spring = Labels.spring();
        getChildren().addAll(spring, Buttons.withKey(Buttons.small(words.text("missing.next"), next), "F8"));
    }
}
