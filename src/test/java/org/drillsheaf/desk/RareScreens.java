package org.drillsheaf.desk;

import java.io.OutputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.PasswordField;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.drill.library.LibraryFiles;
import org.drillsheaf.exchange.archive.CatalogueArchive;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.TestServer;
import org.drillsheaf.store.Wire;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;

/** Photographs what a coach sees seldom: a server that is away, two desks at one field, drills that come in, long work. */
final class RareScreens {
    private static final String PASSWORD = "green kettles";

    private final DeskRun desk;
    private final Photographer photographer;
    private final Path folder;

    private RareScreens(DeskRun desk, Path folder, Path out, boolean everyLook) {
        this.desk = desk;
        this.folder = folder;
        this.photographer = new Photographer(desk, out, everyLook);
    }

    static void all(Path out, boolean everyLook) throws Exception {
        Path folder = Files.createTempDirectory("desk");
        Path archive = theirDrills(folder);
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST.lockedAfter(0))) {
            new RareScreens(desk, folder, out, everyLook).atOneDesk(archive);
        }
        atAServer(out, everyLook);
    }

    private void atOneDesk(Path archive) throws Exception {
        desk.click("Start your own record");
        desk.untilSeen("Passphrase");
        photographer.photograph("first-form");
        desk.click("Back");
        desk.click("Open the demo clinic");
        desk.untilSeen("Odile Farrant");
        batch();
        guide();
        twoDesks();
        incoming(archive);
        restore();
        photographer.look(s -> s.lockedAfter(5));
        DeskRun.fx(() -> {
            desk.window().lockOfWindow().idle().jumpTo("end");
            return true;
        });
        desk.untilSeen("5 minutes without a key.");
        desk.type("not this");
        desk.press(KeyCode.ENTER);
        desk.untilSeen("This is not the passphrase of this record.");
        photographer.inAllLooks("locked-wrong");
    }

    private void batch() throws Exception {
        desk.click("Print for several…");
        desk.untilSeen("Papers of several clients");
        desk.choose(Files.createDirectories(folder.resolve("papers")));
        photographer.photograph("batch");
        desk.click("Choose a folder and print");
        desk.untilSeen("Making the papers…");
        photographer.snap("batch-running");
        desk.untilSeen("clients got none");
        photographer.inAllLooks("batch-done");
        desk.click("Close");
    }

    private void guide() {
        desk.click("Lise Varga");
        desk.untilSeen("tests taken.");
        desk.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.N);
        photographer.photograph("new-visit");
        desk.press(KeyCode.ENTER);
        DeskRun.fx(() -> {
            desk.window().frame().orElseThrow().clients().guide();
            return true;
        });
        desk.untilSeen("A first visit, step by step");
        photographer.inAllLooks("guide");
        desk.press(KeyCode.CONTROL, KeyCode.Z);
        desk.click("All clients");
    }

    private void twoDesks() {
        OtherDesk.typedTheSameField(store(), "joaquin-mirande");
        desk.click("Joaquín Mirande");
        desk.untilSeen("Both versions stay in the record");
        desk.press(KeyCode.F8);
        photographer.inAllLooks("two-desks");
        desk.press(KeyCode.ENTER);
    }

    private Store store() {
        return DeskRun.fx(() -> desk.window().workplace().orElseThrow().store());
    }

    private void incoming(Path archive) throws Exception {
        Path ours = folder.resolve("no-clinic").resolve("exercise-library");
        own(ours, "sit-hum", "Our hum");
        desk.press(KeyCode.ALT, KeyCode.DIGIT2);
        desk.untilSeen("Copy drill");
        desk.choose(archive);
        desk.click("Bring in drills…");
        desk.untilSeen("Reading");
        photographer.snap("import-reading");
        desk.untilSeen("Nothing is written yet.");
        photographer.inAllLooks("import");
        desk.press(KeyCode.END);
        desk.untilSeen("Both sides changed the same field.");
        photographer.photograph("import-clash");
        desk.choose(Files.writeString(folder.resolve("broken.zip"), "no archive"));
        desk.click("Close");
        desk.click("Bring in drills…");
        desk.untilSeen("broken.zip");
        Photographer.pause(1500);
        photographer.photograph("import-refused");
    }

    private void restore() {
        desk.press(KeyCode.ALT, KeyCode.DIGIT3);
        desk.untilSeen("How the window looks");
        fire("Back up now");
        desk.untilSeen("Backed up:");
        desk.untilSeen("proved: opened and read");
        DeskRun.fx(() -> {
            ((Button) Seen.findStarting(desk.scene().getRoot(), "Put back…").orElseThrow()).fire();
            return true;
        });
        desk.untilSeen("Put the backup of");
        toTheEnd();
        photographer.photograph("restore");
        photographer.look(s -> s.with(DeskSettings.Theme.DARK));
        photographer.photograph("dark-restore");
        photographer.look(s -> s.with(DeskSettings.Theme.LIGHT).scaled(200));
        toTheEnd();
        photographer.photograph("large-restore");
        photographer.look(s -> s.scaled(100));
    }

    private void toTheEnd() {
        DeskRun.fx(() -> {
            Seen.walk(desk.scene().getRoot(), node -> {
                if (node instanceof ScrollPane pane) {
                    pane.setVvalue(1);
                }
            });
            return true;
        });
    }

    private void fire(String name) {
        DeskRun.fx(() -> {
            ((Button) Seen.find(desk.scene().getRoot(), name).orElseThrow()).fire();
            return true;
        });
    }

    private static void own(Path library, String id, String name) throws Exception {
        Files.createDirectories(library);
        String starter = Files.readString(Path.of("exercise-library", id + ".yaml"));
        String renamed = starter.replaceFirst(
                "(?m)^name:.*\\n(?:  .*\\n)*", "name: {en: " + name + ", es: " + name + ", ar: " + name + "}\n");
        Files.writeString(
                library.resolve(id + ".yaml"),
                renamed.replaceFirst("(?m)^reviewed-on: .*$", "reviewed-on: 2026-05-12")
                        .replaceFirst("(?m)^revision: (\\d+)$", "revision: 1\nbased-on: $1"));
    }

    /** An archive of another clinic with three drills of its own. */
    private static Path theirDrills(Path folder) throws Exception {
        Path clinic = folder.resolve("theirs");
        Path library = clinic.resolve("exercise-library");
        own(library, "wall-lean-breath", "Lean on the wall and breathe into the back");
        own(library, "tail-roll", "Roll the tail");
        own(library, "sit-hum", "Their hum");
        Path archive = folder.resolve("other-clinic.zip");
        try (OutputStream out = Files.newOutputStream(archive)) {
            CatalogueArchive.write(
                    LibraryFiles.layers(new Folders(Path.of("").toAbsolutePath(), clinic).files(), new Problems()),
                    LocalDate.now(DeskRun.TODAY),
                    Optional.empty(),
                    out,
                    done -> {});
        }
        return archive;
    }

    private static void atAServer(Path out, boolean everyLook) throws Exception {
        StoreAddress.Server server = TestServer.emptyDatabase();
        int port = URI.create(server.url().substring("jdbc:".length())).getPort();
        Path folder = Files.createTempDirectory("desk");
        try (Wire wire = new Wire(port);
                Store other = Store.create(server, Passphrase.of(PASSWORD.toCharArray()), DeskRun.TODAY)) {
            String yaml = Files.readString(Path.of("samples/clients/odile-farrant.yaml"));
            other.clients().add(ClientText.parse("odile", yaml, new Problems()).orElseThrow(), "Tamsin Rook");
            String address = server.url().replace(":" + port, ":" + wire.port()) + "?user=" + server.user()
                    + "&connectTimeout=1&loginTimeout=1";
            DeskSettings settings = DeskSettings.FIRST.lockedAfter(0).at(address, "Joran Hale");
            try (DeskRun desk = DeskRun.start(folder, settings)) {
                new RareScreens(desk, folder, out, everyLook).away(wire, other);
            }
        }
    }

    private void away(Wire wire, Store other) throws Exception {
        desk.until("the password is asked", () -> desk.scene().getFocusOwner() instanceof PasswordField);
        photographer.photograph("unlock");
        desk.type(PASSWORD);
        desk.press(KeyCode.ENTER);
        desk.untilSeen("Odile Farrant");
        desk.click("Odile Farrant");
        desk.untilSeen("16 of 16 tests taken.");
        wire.cut();
        DeskRun.fx(() -> {
            ((TextField) Seen.find(desk.scene().getRoot(), "Comfortable breath out, s")
                            .orElseThrow())
                    .setText("6");
            return true;
        });
        desk.untilSeen("1 change waits on this desk");
        photographer.inAllLooks("away");
        wire.mend();
        desk.untilSeen("✓ Saved");
        other.erase(other.clients().key("odile-farrant").orElseThrow(), "Tamsin Rook");
        desk.untilSeen("erased this client");
        photographer.inAllLooks("erased");
    }
}
