package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillsheaf.desk.setting.DeskSettings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/** A desk that is killed while values are typed, and opened again. */
class KilledDeskTest {
    @TempDir
    Path folder;

    @Test
    void everyValueThatTheWindowShowedAsSavedIsThereAfterAKill(TestReporter reporter) throws Exception {
        Path said = folder.resolve("said.txt");
        Process killed = TypingDesk.start(folder, said);
        try {
            while (killed.isAlive() && Files.readAllLines(said).size() < 6) {
                Thread.sleep(20);
            }
        } finally {
            killed.destroyForcibly().waitFor();
        }
        assertThat(killed.exitValue()).as("the signal that cannot be caught").isEqualTo(128 + 9);
        List<String> lines = Files.readAllLines(said);
        int saved = Integer.parseInt(lines.get(lines.size() - 1));
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST)) {
            desk.click("Open the demo clinic");
            desk.click("Odile Farrant");
            desk.untilSeen("16 of 16 tests taken.");
            int found = DeskRun.fx(() -> TypingDesk.sum(TypingDesk.client(desk)));
            reporter.publishEntry("shown as saved", saved + ", found " + found);
            assertThat(found).isGreaterThanOrEqualTo(saved);
        }
    }
}
