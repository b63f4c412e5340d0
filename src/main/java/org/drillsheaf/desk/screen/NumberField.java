package org.drillsheaf.desk.screen;

import java.util.Optional;
import java.util.regex.Pattern;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextFormatter;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.words.Words;

/**
 * A field for one number of the screen. Takes digits, one minus, point or comma, and shows the one that its language writes;
 * letters are keys of the sheet.
 */
final class NumberField extends StackPane {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,3}(\\.\\d{1,2})?");
    private static final String PART_OF_A_NUMBER = "[-−]?\\d{0,3}([.,]\\d{0,2})?";

    private final Words words;
    private final TextField field = new TextField();
    private final Label pain = Labels.text("P", "pain-mark");
    private boolean quiet;

    NumberField(String name, Words words, Runnable typed) {
        this.words = words;
        field.getStyleClass().add("number-field");
        field.setAccessibleRoleDescription(name);
        field.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        field.setPromptText("–");
        String sign = words.decimalSign();
        field.setTextFormatter(new TextFormatter<>(change -> {
            change.setText(change.getText().replace("-", "−").replace(",", sign).replace(".", sign));
            return change.getControlNewText().matches(PART_OF_A_NUMBER) ? change : null;
        }));
        field.textProperty().addListener((of, before, now) -> {
            dress(now);
            if (!quiet) {
                typed.run();
            }
        });
        selectWholeOnClick();
        pain.setMouseTransparent(true);
        pain.setVisible(false);
        StackPane.setAlignment(pain, Pos.CENTER_LEFT);
        StackPane.setMargin(pain, new javafx.geometry.Insets(0, 0, 0, 6));
        setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        getChildren().addAll(field, pain);
        dress("");
    }

    /** A click into the field means its whole value, as coming by keys does; what is typed next takes its place. */
    private void selectWholeOnClick() {
        field.addEventHandler(MouseEvent.MOUSE_CLICKED, e -> {
            if (field.getSelection().getLength() == 0) {
                field.selectAll();
            }
        });
    }

    private void dress(String text) {
        StyleClass.set(field, "not-tested", text.isEmpty());
    }

    TextField field() {
        return field;
    }

    /** The number; empty when nothing or only part of one is there. */
    Optional<Double> number() {
        String text = Words.plain(field.getText());
        return NUMBER.matcher(text).matches() ? Optional.of(Double.parseDouble(text)) : Optional.empty();
    }

    boolean isEmpty() {
        return field.getText().isEmpty();
    }

    /** Shows a value as written in the record, without telling anybody. */
    void show(Optional<String> written) {
        String text = written.map(words::number).orElse("");
        if (!text.equals(field.getText())) {
            quiet = true;
            field.setText(text);
            quiet = false;
        }
    }

    void pain(boolean painful) {
        pain.setVisible(painful);
    }

    boolean isWrong() {
        return field.getStyleClass().contains("wrong");
    }

    void wrong(boolean isWrong) {
        StyleClass.set(field, "wrong", isWrong);
    }
}
