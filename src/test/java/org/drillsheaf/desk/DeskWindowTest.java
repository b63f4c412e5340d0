package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.drillsheaf.desk.setting.DeskSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The real window, driven by keys and clicks. */
class DeskWindowTest {
    @TempDir
    Path folder;

    @Test
    void everyControlOfEveryPageHasANameForScreenReaders() {
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST)) {
            assertThat(namelessControls(desk)).as("first page").isEmpty();
            desk.click("Open the demo clinic");
            desk.untilSeen("Odile Farrant");
            assertThat(namelessControls(desk)).as("clients").isEmpty();
            desk.press(KeyCode.CONTROL, KeyCode.N);
            desk.untilSeen("Add the client");
            assertThat(namelessControls(desk)).as("new client").isEmpty();
            desk.click("Close");
            desk.click("Odile Farrant");
            desk.untilSeen("16 of 16 tests taken.");
            assertThat(namelessControls(desk)).as("screen").isEmpty();
            desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
            desk.untilSeen("Goals by phase");
            assertThat(namelessControls(desk)).as("reading").isEmpty();
            desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
            desk.untilSeen("Best possible, proved.");
            desk.press(KeyCode.S);
            desk.untilSeen("What could take its place");
            assertThat(namelessControls(desk)).as("program").isEmpty();
            desk.press(KeyCode.CONTROL, KeyCode.DIGIT4);
            desk.untilSeen("Waits for your signature");
            assertThat(namelessControls(desk)).as("handout").isEmpty();
            desk.press(KeyCode.CONTROL, KeyCode.DIGIT5);
            desk.untilSeen("Print the report");
            assertThat(namelessControls(desk)).as("progress").isEmpty();
            desk.press(KeyCode.ALT, KeyCode.DIGIT2);
            desk.untilSeen("Choose a drill from the list.");
            assertThat(namelessControls(desk)).as("drills").isEmpty();
            desk.press(KeyCode.ALT, KeyCode.DIGIT3);
            desk.untilSeen("How the window looks");
            assertThat(namelessControls(desk)).as("house").isEmpty();
        }
    }

    private static java.util.List<String> namelessControls(DeskRun desk) {
        desk.settle();
        return DeskRun.fx(() -> {
            java.util.List<String> nameless = new java.util.ArrayList<>();
            Seen.walk(desk.scene().getRoot(), node -> {
                if (node.isFocusTraversable() && Seen.name(node).isEmpty()) {
                    nameless.add(path(node));
                }
            });
            return nameless;
        });
    }

    private static String path(Node node) {
        StringBuilder path = new StringBuilder();
        for (Node n = node; n != null; n = n.getParent()) {
            path.insert(0, "/" + n.getClass().getSimpleName() + n.getStyleClass());
        }
        return path.toString();
    }
}
