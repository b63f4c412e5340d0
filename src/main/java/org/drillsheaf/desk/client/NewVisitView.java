package org.drillsheaf.desk.client;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.words.Words;

/** Asks for the day of a new visit; nothing is to be seen of it before and afterwards. */
final class NewVisitView extends VBox {
    private final Words words;
    private final Clock clock;
    private final Consumer<LocalDate> start;
    private final Runnable cancelled;

    /**
     * @param start gets the day
     * @param cancelled is told when there is to be none
     */
    NewVisitView(Words words, Clock clock, Consumer<LocalDate> start, Runnable cancelled) {
        this.words = words;
        this.clock = clock;
        this.start = start;
        this.cancelled = cancelled;
    }

    void ask() {
        TextField day = new TextField(LocalDate.now(clock).toString());
        day.setAccessibleRoleDescription(words.text("visits.day"));
        day.setPrefColumnCount(9);
        Label wrong = Labels.prose("", "bold");
        Button go = Buttons.main(words.text("visits.start"), () -> {
            Optional<LocalDate> date = date(day.getText());
            if (date.isEmpty()) {
                wrong.setText(words.text("visits.day-wrong"));
            } else {
                close();
                start.accept(date.get());
            }
        });
        go.setDefaultButton(true);
        Button cancel = Buttons.plain(words.text("start.back"), () -> {
            close();
            cancelled.run();
        });
        cancel.setCancelButton(true);
        FlowPane row = new FlowPane(8, 6, Labels.text(words.text("visits.day")), day, go, cancel, wrong);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setRowValignment(VPos.CENTER);
        row.getStyleClass().add("message");
        StyleClass.set(this, ClientMessages.SAID, true);
        getChildren().setAll(row);
        day.requestFocus();
        day.selectAll();
    }

    private void close() {
        getChildren().clear();
        StyleClass.set(this, ClientMessages.SAID, false);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
