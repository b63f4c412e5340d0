package org.drillsheaf.desk.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.Window;
import org.drillsheaf.desk.drill.DrillModel;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.ThreadBackground;
import org.drillsheaf.drill.Phase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drives the real window by keys alone. */
class DrillsWindowTest {
    private static final Clock TODAY = Clock.fixed(Instant.parse("2026-11-28T10:00:00Z"), ZoneOffset.UTC);
    /** Never closed: what still runs when the test ends must not disturb the next. */
    private static final ThreadBackground BACKGROUND = new ThreadBackground(2);

    @TempDir
    Path clinic;

    private DrillsPlace place;

    @Test
    void aStepIsChangedTheFindingAppearsIsMendedAndTheFileIsRight() throws Exception {
        try (Window window = Window.open(
                () -> {
                    Folders folders = new Folders(Path.of("").toAbsolutePath(), clinic);
                    place = new DrillsPlace(
                            folders,
                            Optional.empty(),
                            Words.in("en"),
                            Phase::title,
                            TODAY,
                            BACKGROUND,
                            new DeskRun.Answers(),
                            () -> {},
                            () -> {});
                    return place;
                },
                DeskSettings.FIRST)) {
            window.until("the drills are read", () -> place.list().isPresent());
            window.press(KeyCode.CONTROL, KeyCode.F);
            window.type("wall march");
            window.press(KeyCode.DOWN);
            window.until("the drill is open", () -> place.page().isPresent());
            DrillModel model = place.page().orElseThrow().model();
            assertThat(model.id()).isEqualTo("wall-march");
            assertThat(window.nameless()).isEmpty();

            focus(window, "#field-action");
            window.press(KeyCode.CONTROL, KeyCode.HOME);
            window.type("Posterior ");
            window.until("the finding stands beside the steps", () -> model.findings("action").stream()
                    .anyMatch(f -> f.problem().what().contains("does not start with a verb")));
            window.press(KeyCode.CONTROL, KeyCode.Z);
            window.until(
                    "it is mended",
                    () -> model.findings("action").isEmpty() && !model.looking().get());

            focus(window, "#field-name");
            window.press(KeyCode.END);
            window.type(", slowly");
            focus(window, "#field-reason");
            window.press(KeyCode.CONTROL, KeyCode.A);
            window.type("A clearer name");
            window.until("the text is looked at", () -> !model.looking().get());
            window.press(KeyCode.CONTROL, KeyCode.S);
            window.until("it is kept", () -> model.status().get().equals("Kept as version 1"));
        }

        String written = Files.readString(clinic.resolve("exercise-library/wall-march.yaml"));
        assertThat(written)
                .contains(", slowly")
                .contains("reason: A clearer name")
                .contains("based-on: ");
        assertThat(written).doesNotContain("Posterior");
    }

    private void focus(Window window, String id) {
        window.on(() -> {
            Node field = place.lookup(id);
            field.requestFocus();
            return true;
        });
    }
}
