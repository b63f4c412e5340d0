package org.drillsheaf.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.event.Event;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.Seen;
import org.drillsheaf.desk.setting.DeskSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window hears the keys of its menu from the moment it stands, even if a busy machine has not painted it yet. */
class FirstKeyTest {
    @TempDir
    Path folder;

    @Test
    void aKeyOfTheMenuIsHeardBeforeTheFirstFrame() {
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST)) {
            desk.click("Open the demo clinic");
            desk.untilSeen("Odile Farrant");
            List<String> seen = DeskRun.fx(() -> {
                desk.window()
                        .settings(desk.window().settings().inLanguage("es")); // a new window in the old one's place
                Event.fireEvent(desk.scene().getFocusOwner(), controlN());
                return Seen.texts(desk.scene().getRoot());
            });
            assertThat(seen).contains("Añadir el cliente");
        }
    }

    private static KeyEvent controlN() {
        return new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.N, false, true, false, false);
    }
}
