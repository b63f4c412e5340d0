package org.drillsheaf.desk.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.Window;
import org.drillsheaf.desk.setting.DeskSettings;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** More than finds room: where the keys go stays in sight, and a sentence is as high as its lines. */
class LongPagesTest {
    private static final String SENTENCE = "Trains one leg to carry you while the other one swings, as in every step.";

    @BeforeAll
    static void toolkit() {
        DeskRun.startToolkit();
    }

    @Test
    void whatGetsTheKeysComesIntoSight() {
        List<Button> buttons = DeskRun.fx(() -> IntStream.range(0, 60)
                .mapToObj(i -> new Button("Question " + i))
                .toList());
        BorderPane page = DeskRun.fx(() -> new BorderPane(new ScrollPane(new VBox(buttons.toArray(new Node[0])))));
        try (Window window = Window.open(() -> page, DeskSettings.FIRST)) {
            window.on(() -> {
                IntoSight.follow(window.scene());
                buttons.get(55).requestFocus();
                return true;
            });
            window.until("the button far below is in sight", () -> isInSight(buttons.get(55)));
            window.on(() -> {
                Button message = new Button("The server is away");
                message.setPrefHeight(400);
                page.setTop(message);
                return true;
            });
            window.until("the page is lower", () -> page.getCenter().getLayoutY() > 300);
            window.until("the button is in sight below a message", () -> isInSight(buttons.get(55)));
            window.on(() -> {
                buttons.get(2).requestFocus();
                return true;
            });
            window.until("the button far above is in sight", () -> isInSight(buttons.get(2)));
        }
    }

    private static boolean isInSight(Node node) {
        Bounds place = node.localToScene(node.getLayoutBounds());
        return place.getMinY() >= 0 && place.getMaxY() <= node.getScene().getHeight();
    }

    @Test
    void aSentenceBreaksAndItsFieldGrows() {
        GrowingArea area = DeskRun.fx(() -> new GrowingArea(SENTENCE, 1));
        TextField after = DeskRun.fx(TextField::new);
        VBox page = DeskRun.fx(() -> new VBox(area, after));
        try (Window window = Window.open(() -> page, DeskSettings.FIRST)) {
            window.until("it is laid out", () -> area.getWidth() > 1000);
            double oneLine = window.on(area::getHeight);
            window.on(() -> {
                area.setMaxWidth(200);
                return true;
            });
            window.until("it has grown", () -> area.getHeight() > 1.8 * oneLine);
            double textHeight =
                    window.on(() -> area.lookup(".text").getLayoutBounds().getHeight());
            assertThat(area.getHeight()).as("no line is hidden").isGreaterThanOrEqualTo(textHeight);

            window.on(() -> {
                area.requestFocus();
                area.end();
                return true;
            });
            window.press(KeyCode.ENTER);
            assertThat(area.getText()).as("Enter begins no line").isEqualTo(SENTENCE);
            window.press(KeyCode.TAB);
            assertThat(after.isFocused()).as("Tab goes on").isTrue();
        }
    }
}
