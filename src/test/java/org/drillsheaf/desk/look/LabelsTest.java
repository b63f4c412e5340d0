package org.drillsheaf.desk.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.NodeOrientation;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import org.drillsheaf.desk.DeskRun;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LabelsTest {
    private static final double WIDTH = 160;
    private static final String ARABIC = "استلقوا على الظهر واثنوا الركبتين وضعوا القدمين مسطحتين بعرض الوركين.";

    @BeforeAll
    static void toolkit() {
        DeskRun.startToolkit();
    }

    /** A window in either direction: {@code INHERIT} is the usual one. */
    @ParameterizedTest
    @EnumSource(
            value = NodeOrientation.class,
            names = {"INHERIT", "RIGHT_TO_LEFT"})
    void joinedLettersBreakIntoLinesThatStayInTheirColumn(NodeOrientation window) {
        DeskRun.fx(() -> {
            Region text = Labels.proseInAnyScript(ARABIC);
            Pane pane = new Pane(text);
            Scene scene = new Scene(pane, 600, 400);
            scene.setNodeOrientation(window);
            pane.applyCss();
            text.resizeRelocate(200, 0, WIDTH, text.prefHeight(WIDTH));
            pane.layout();

            List<Node> words = text.getChildrenUnmodifiable();
            assertThat(words)
                    .extracting(word -> ((Label) word).getText().replace("\u200F", ""))
                    .containsExactly(ARABIC.split(" "));
            Bounds column = text.localToScene(text.getLayoutBounds());
            assertThat(words).allSatisfy(word -> {
                Bounds there = word.localToScene(word.getLayoutBounds());
                assertThat(there.getMinX()).isGreaterThanOrEqualTo(column.getMinX() - 0.5);
                assertThat(there.getMaxX()).isLessThanOrEqualTo(column.getMaxX() + 0.5);
                assertThat(there.getMaxY()).isLessThanOrEqualTo(column.getMaxY() + 0.5);
            });
            Bounds first = words.get(0).localToScene(words.get(0).getLayoutBounds());
            assertThat(first.getMaxX()).as("it begins at the right").isGreaterThan(column.getMaxX() - 2);
            assertThat(words.get(words.size() - 1).getLayoutY())
                    .as("in a later line")
                    .isGreaterThan(10);
            return true;
        });
    }
}
