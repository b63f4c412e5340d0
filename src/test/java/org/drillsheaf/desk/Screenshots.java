package org.drillsheaf.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.UnaryOperator;
import javafx.scene.input.KeyCode;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.program.WishesEdit;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.Pin;
import org.drillsheaf.store.record.PartKey;

/** Photographs every page of the window, for docs/desk.md. Needs no display. The folder is the only argument. */
public final class Screenshots {
    private static final int WIDTH = 1440;
    private static final int HEIGHT = 900;

    private final DeskRun desk;
    private final Path out;

    private Screenshots(DeskRun desk, Path out) {
        this.desk = desk;
        this.out = out;
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createTempDirectory("desk");
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST.lockedAfter(0))) {
            new Screenshots(desk, Path.of(arguments[0])).all();
        }
        System.exit(0);
    }

    private void all() {
        desk.until(
                "the first page shows its drawing",
                () -> Seen.pictures(desk.scene().getRoot()) > 0);
        photograph("start");
        desk.click("Open the demo clinic");
        desk.untilSeen("Odile Farrant");
        photograph("clients");
        desk.press(KeyCode.CONTROL, KeyCode.N);
        desk.untilSeen("Add the client");
        photograph("new-client");
        desk.click("Close");
        visit();
        looks();
        clash();
        drills();
        desk.press(KeyCode.ALT, KeyCode.DIGIT3);
        desk.untilSeen("How the window looks");
        pause(800);
        photograph("house");
        desk.press(KeyCode.CONTROL, KeyCode.L);
        photograph("locked");
    }

    private void visit() {
        desk.click("Joaquín Mirande");
        desk.untilSeen("tests taken.");
        pause(500);
        photograph("screen");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
        pause(500);
        photograph("reading");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        desk.untilSeen("drills in four phases");
        desk.press(KeyCode.S);
        desk.untilSeen("What could take its place");
        photograph("program");
        desk.press(KeyCode.ESCAPE);
        desk.click("Sign program");
        desk.untilSeen("Signed by Tamsin Rook.");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT4);
        desk.untilSeen("as they are printed.");
        photograph("handout");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT5);
        pause(1000);
        photograph("progress");
    }

    private void drills() {
        desk.press(KeyCode.ALT, KeyCode.DIGIT2);
        desk.untilSeen("Copy drill");
        desk.press(KeyCode.CONTROL, KeyCode.F);
        desk.type("wall march");
        desk.press(KeyCode.DOWN);
        desk.untilSeen("Words and tags");
        pause(6000);
        photograph("drill");
        desk.click("Pose and picture");
        pause(4000);
        photograph("pose");
        look(s -> s.with(DeskSettings.Theme.DARK));
        photograph("dark-pose");
        look(s -> s.with(DeskSettings.Theme.LIGHT));
    }

    private void looks() {
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        look(s -> s.with(DeskSettings.Theme.DARK));
        photograph("dark-program");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT1);
        photograph("dark-screen");
        look(s -> s.with(DeskSettings.Theme.LIGHT).mirrored(true));
        photograph("right-to-left");
        look(s -> s.mirrored(false).scaled(200));
        photograph("large-screen");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        pause(500);
        photograph("large-program");
        look(s -> s.scaled(100));
        look(s -> s.inLanguage("es"));
        desk.untilSeen("Joaquín Mirande");
        desk.click("Joaquín Mirande");
        desk.untilSeen("pruebas hechas.");
        photograph("spanish");
        look(s -> s.inLanguage("en"));
        desk.untilSeen("Joaquín Mirande");
    }

    /** A client who owns nothing and lies nowhere, with a drill pinned that needs both. */
    private void clash() {
        desk.click("Odile Farrant");
        desk.untilSeen("16 of 16 tests taken.");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        desk.untilSeen("drills in four phases");
        DeskRun.fx(() -> {
            ClientCase client = desk.window()
                    .frame()
                    .orElseThrow()
                    .clients()
                    .openClient()
                    .orElseThrow()
                    .client();
            client.change(
                    "avoid lying",
                    "",
                    d -> d.with(
                            PartKey.CLIENT,
                            d.person().with("/avoid/0", "supine").with("/avoid/1", "side-lying")));
            client.edit(
                    "pin of Knees bent, roll the tail up",
                    "",
                    v -> WishesEdit.pin(v, Pin.Kind.MUST_HAVE, "tail-roll", Phase.SETTLE));
            return true;
        });
        desk.untilSeen("Nothing fits");
        photograph("clash");
    }

    private void look(UnaryOperator<DeskSettings> change) {
        DeskRun.fx(() -> {
            desk.window().settings(change.apply(desk.window().settings()));
            return true;
        });
        pause(600);
    }

    private void photograph(String name) {
        for (int wait = 0;
                wait < 100 && DeskRun.fx(() -> Seen.emptyWells(desk.scene().getRoot())) > 0;
                wait++) {
            pause(300);
        }
        pause(300);
        desk.photograph(out.resolve(name + ".png"), WIDTH, HEIGHT);
    }

    /** Pictures and papers come when they are drawn; a photograph waits for them. */
    private static void pause(long milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
