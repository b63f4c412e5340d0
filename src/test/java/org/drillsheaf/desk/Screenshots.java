package org.drillsheaf.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.drillsheaf.desk.setting.DeskSettings;

/** Photographs every page of the window, for docs/desk.md. Needs no display. The folder is the only argument. */
public final class Screenshots {
    private static final int WIDTH = 1440;
    private static final int HEIGHT = 900;

    private Screenshots() {}

    public static void main(String[] arguments) throws IOException {
        Path out = Path.of(arguments[0]);
        Path folder = Files.createTempDirectory("desk");
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST.lockedAfter(0))) {
            new Screenshots().all(desk, out);
        }
        System.exit(0);
    }

    private void all(DeskRun desk, Path out) {
        pause(2500);
        desk.photograph(out.resolve("start.png"), WIDTH, HEIGHT);
        desk.click("Open the demo clinic");
        desk.untilSeen("Odile Farrant");
        desk.photograph(out.resolve("clients.png"), WIDTH, HEIGHT);
        desk.press(KeyCode.CONTROL, KeyCode.N);
        desk.untilSeen("Add the client");
        desk.photograph(out.resolve("new-client.png"), WIDTH, HEIGHT);
        desk.click("Close");
        desk.click("Odile Farrant");
        desk.untilSeen("16 of 16 tests taken.");
        pause(4000);
        desk.photograph(out.resolve("screen.png"), WIDTH, HEIGHT);
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
        pause(1500);
        desk.photograph(out.resolve("reading.png"), WIDTH, HEIGHT);
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        desk.untilSeen("Best possible, proved.");
        pause(6000);
        desk.press(KeyCode.S);
        pause(3000);
        desk.photograph(out.resolve("program.png"), WIDTH, HEIGHT);
        desk.press(KeyCode.ESCAPE);
        desk.click("Sign program");
        desk.untilSeen("Signed by Tamsin Rook.");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT4);
        desk.untilSeen("as they are printed.");
        pause(800);
        desk.photograph(out.resolve("handout.png"), WIDTH, HEIGHT);
        desk.click("All clients");
        desk.click("Joaquín Mirande");
        desk.untilSeen("Progress");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT5);
        pause(1500);
        desk.photograph(out.resolve("progress.png"), WIDTH, HEIGHT);
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
        pause(1500);
        desk.photograph(out.resolve("reading-again.png"), WIDTH, HEIGHT);
    }

    private static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
