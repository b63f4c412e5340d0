package org.drillsheaf.desk.incoming;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.geometry.Orientation;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.Seen;
import org.drillsheaf.desk.Window;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.ThreadBackground;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.exchange.archive.CatalogueArchive;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drills of another clinic come in: seen before, taken or left one by one, taken back in one step. */
class ImportWindowTest {
    private static final ThreadBackground BACKGROUND = new ThreadBackground(2);

    private static final Clock AFTER_ALL_REVIEWS = Clock.fixed(Instant.parse("2026-11-28T10:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    @AfterAll
    static void stop() {
        BACKGROUND.close();
    }

    private Folders clinic(String name) {
        return new Folders(Path.of("").toAbsolutePath(), folder.resolve(name));
    }

    /** A drill of the starter catalogue with another name, as a clinic's own. */
    private void own(Folders clinic, String id, String name) throws Exception {
        Path drills = Files.createDirectories(clinic.clinic().resolve("exercise-library"));
        String starter = Files.readString(clinic.catalogue().resolve(id + ".yaml"));
        String renamed = starter.replaceFirst(
                "(?m)^name:.*\\n(?:  .*\\n)*", "name: {en: " + name + ", es: " + name + ", ar: " + name + "}\n");
        assertThat(renamed).isNotEqualTo(starter);
        Files.writeString(
                drills.resolve(id + ".yaml"),
                renamed.replaceFirst("(?m)^revision: (\\d+)$", "revision: 1\nbased-on: $1"));
    }

    private Path archiveOf(Folders clinic) throws Exception {
        Path archive = folder.resolve("theirs.zip");
        try (OutputStream out = Files.newOutputStream(archive)) {
            CatalogueArchive.write(
                    LibraryFiles.layers(clinic.files(), new Problems()),
                    LocalDate.of(2026, 6, 4),
                    Optional.empty(),
                    out,
                    done -> {});
        }
        return archive;
    }

    private static void fire(Window window, String name) {
        window.until("“" + name + "” is there", () -> Seen.find(window.scene().getRoot(), name)
                .isPresent());
        window.on(() -> {
            var node = Seen.find(window.scene().getRoot(), name).orElseThrow();
            if (node instanceof Button button) {
                button.fire();
            } else {
                ((ToggleButton) node).fire();
            }
            return true;
        });
    }

    private static void untilSeen(Window window, String text) {
        window.until(
                "“" + text + "” is to be seen",
                () -> Seen.texts(window.scene().getRoot()).stream().anyMatch(t -> t.contains(text)));
    }

    @Test
    void eachDrillIsTakenOrLeftAndAllOfItTakenBackInOneStep() throws Exception {
        Folders theirs = clinic("theirs");
        own(theirs, "wall-lean-breath", "Lean and breathe");
        own(theirs, "tail-roll", "Roll the tail");
        own(theirs, "sit-hum", "Their hum");
        Path archive = archiveOf(theirs);
        Folders ours = clinic("ours");
        own(ours, "sit-hum", "Our hum");
        Path drills = ours.clinic().resolve("exercise-library");
        String ourHum = Files.readString(drills.resolve("sit-hum.yaml"));
        AtomicInteger changed = new AtomicInteger();
        ImportView[] view = new ImportView[1];

        try (Window window = Window.open(
                () -> {
                    view[0] = new ImportView(
                            new ImportModel(ours, Optional.empty(), AFTER_ALL_REVIEWS),
                            Words.in("en"),
                            BACKGROUND,
                            changed::incrementAndGet,
                            () -> {},
                            () -> {});
                    return view[0];
                },
                DeskSettings.FIRST)) {
            window.on(() -> {
                view[0].look(archive);
                return true;
            });
            window.until("the file is read", () -> Seen.texts(window.scene().getRoot()).stream()
                    .anyMatch(t -> t.contains("Nothing is written yet.")));
            assertThat(window.on(() -> Seen.texts(window.scene().getRoot())))
                    .anyMatch(t -> t.contains("0 new, 2 changed, 1 where both sides changed the same field"));
            untilSeen(window, "Bring in 2 drills");
            assertThat(window.nameless()).isEmpty();
            assertThat(window.on(view[0]::hints)).extracting(Page.Hint::key).containsExactly("↑ ↓", "Space");
            assertThat(drills.resolve("tail-roll.yaml"))
                    .as("nothing is written before")
                    .doesNotExist();

            window.look(DeskSettings.FIRST.scaled(250));
            window.until(
                    "with large letters what was decided stands below the name, in the list",
                    () -> window.scene().getRoot().lookupAll(".list-view .scroll-bar").stream()
                            .noneMatch(bar ->
                                    bar.isVisible() && ((ScrollBar) bar).getOrientation() == Orientation.HORIZONTAL));
            window.look(DeskSettings.FIRST);
            window.press(KeyCode.SPACE);
            untilSeen(window, "Bring in one drill");
            window.press(KeyCode.SPACE);
            window.press(KeyCode.END);
            untilSeen(window, "Both sides changed the same field.");
            fire(window, "Take theirs");
            fire(window, "Bring in 3 drills");
            untilSeen(window, "3 drills came in.");
            assertThat(drills.resolve("tail-roll.yaml")).content().contains("Roll the tail");
            assertThat(drills.resolve("sit-hum.yaml")).content().contains("Their hum");
            window.until("the catalogue was told", () -> changed.get() == 1);
            assertThat(window.on(view[0]::hints)).as("nothing to take or leave").isEmpty();

            fire(window, "Take the import back");
            untilSeen(window, "Taken back.");
            assertThat(drills.resolve("tail-roll.yaml")).doesNotExist();
            assertThat(drills.resolve("sit-hum.yaml")).hasContent(ourHum);
        }
    }

    @Test
    void aFileThatIsNoArchiveIsRefusedWithItsReason() throws Exception {
        Path broken = Files.writeString(folder.resolve("broken.zip"), "no archive");

        ImportModel.Preview preview = new ImportModel(clinic("ours"), Optional.empty(), AFTER_ALL_REVIEWS)
                .look(broken, new org.drillsheaf.desk.work.Going());

        assertThat(preview.changes()).isEmpty();
        assertThat(preview.problems()).isNotEmpty().allSatisfy(p -> assertThat(p.file())
                .contains("broken.zip"));
    }
}
