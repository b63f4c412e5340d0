package org.drillsheaf.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.input.KeyCode;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.program.WishesEdit;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.Pin;
import org.drillsheaf.store.record.PartKey;

/**
 * Photographs every page of the window, for docs/desk.md. Needs no display. The first argument is the folder; {@code everyday}
 * or {@code rare} takes only a part, {@code every-look} photographs each page also dark, large and from right to left.
 */
public final class Screenshots {
    private final DeskRun desk;
    private final Photographer photographer;

    private Screenshots(DeskRun desk, Path out, boolean everyLook) {
        this.desk = desk;
        this.photographer = new Photographer(desk, out, everyLook);
    }

    public static void main(String[] arguments) throws Exception {
        Path out = Path.of(arguments[0]);
        List<String> wanted = List.of(arguments);
        if (!wanted.contains("rare")) {
            try (DeskRun desk = DeskRun.start(Files.createTempDirectory("desk"), DeskSettings.FIRST.lockedAfter(0))) {
                new Screenshots(desk, out, wanted.contains("every-look")).all();
            }
        }
        if (!wanted.contains("everyday")) {
            RareScreens.all(out, wanted.contains("every-look"));
        }
        System.exit(0);
    }

    private void all() {
        desk.until(
                "the first page shows its drawing",
                () -> Seen.pictures(desk.scene().getRoot()) > 0);
        photographer.inAllLooks("start");
        desk.click("Open the demo clinic");
        desk.untilSeen("Odile Farrant");
        photographer.inAllLooks("clients");
        desk.press(KeyCode.CONTROL, KeyCode.N);
        desk.untilSeen("Add the client");
        photographer.inAllLooks("new-client");
        desk.click("Close");
        visit();
        looks();
        clash();
        drills();
        desk.press(KeyCode.ALT, KeyCode.DIGIT3);
        desk.untilSeen("How the window looks");
        Photographer.pause(800);
        photographer.inAllLooks("house");
        desk.press(KeyCode.CONTROL, KeyCode.L);
        photographer.inAllLooks("locked");
    }

    private void visit() {
        desk.click("Joaquín Mirande");
        desk.untilSeen("drills in four phases");
        photographer.inAllLooks("screen");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
        Photographer.pause(500);
        photographer.inAllLooks("reading");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        desk.untilSeen("drills in four phases");
        desk.press(KeyCode.S);
        desk.untilSeen("What could take its place");
        photographer.inAllLooks("program");
        desk.press(KeyCode.ESCAPE);
        desk.click("Sign program");
        desk.untilSeen("Signed by Tamsin Rook.");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT4);
        desk.untilSeen("as they are printed.");
        photographer.inAllLooks("handout");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT5);
        Photographer.pause(1000);
        photographer.inAllLooks("progress");
    }

    private void drills() {
        desk.press(KeyCode.ALT, KeyCode.DIGIT2);
        desk.untilSeen("Copy drill");
        desk.press(KeyCode.CONTROL, KeyCode.F);
        desk.type("wall march");
        desk.press(KeyCode.DOWN);
        desk.untilSeen("Words and tags");
        desk.untilSeen("The real page");
        photographer.inAllLooks("drill");
        desk.click("Pose and picture");
        Photographer.pause(4000);
        photographer.inAllLooks("pose");
        photographer.look(s -> s.with(DeskSettings.Theme.DARK));
        photographer.photograph("dark-pose");
        photographer.look(s -> s.with(DeskSettings.Theme.LIGHT));
    }

    private void looks() {
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        photographer.look(s -> s.with(DeskSettings.Theme.DARK));
        photographer.photograph("dark-program");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT1);
        photographer.photograph("dark-screen");
        photographer.look(s -> s.with(DeskSettings.Theme.LIGHT).mirrored(true));
        photographer.photograph("right-to-left");
        photographer.look(s -> s.mirrored(false).scaled(200));
        photographer.photograph("large-screen");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        Photographer.pause(500);
        photographer.photograph("large-program");
        photographer.look(s -> s.scaled(100));
        photographer.look(s -> s.inLanguage("es"));
        desk.untilSeen("Joaquín Mirande");
        desk.click("Joaquín Mirande");
        desk.untilSeen("ejercicios en cuatro fases");
        photographer.photograph("spanish");
        photographer.look(s -> s.inLanguage("en"));
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
        photographer.inAllLooks("clash");
    }
}
