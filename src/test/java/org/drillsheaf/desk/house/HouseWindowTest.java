package org.drillsheaf.desk.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import org.drillsheaf.desk.DeskRun;
import org.drillsheaf.desk.Seen;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.handout.StyleText;
import org.drillsheaf.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The place of the house in the real window: logo, own files, backups. */
class HouseWindowTest {
    @TempDir
    Path folder;

    @Test
    void aHouseChangesItsLogoItsPhasesAndPutsABackupBack() throws Exception {
        try (DeskRun desk = DeskRun.start(folder, DeskSettings.FIRST.lockedAfter(0))) {
            desk.click("Open the demo clinic");
            desk.untilSeen("Odile Farrant");
            desk.press(KeyCode.ALT, KeyCode.DIGIT3);
            desk.untilSeen("The clinic on paper");
            logo(desk);
            phases(desk);
            backup(desk);
        }
    }

    private void logo(DeskRun desk) throws Exception {
        Path bad =
                Files.writeString(folder.resolve("bad.svg"), "<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>");
        String delivered = style(desk).logo().map(String::new).orElseThrow();
        desk.choose(bad);
        fire(desk, "Choose a logo…");
        desk.untilSeen("bad.svg");
        assertThat(style(desk).logo().map(String::new))
                .as("what cannot be printed is not kept")
                .contains(delivered);

        Path good = Files.writeString(
                folder.resolve("Our Mark.svg"),
                "<svg xmlns='http://www.w3.org/2000/svg' width='40' height='10'><rect width='40' height='10'/></svg>");
        desk.choose(good);
        fire(desk, "Choose a logo…");
        desk.untilSeen("Saved. The next paper carries it.");
        assertThat(style(desk).logo().map(String::new))
                .hasValueSatisfying(l -> assertThat(l).contains("width='40'"));
        assertThat(style(desk).yaml()).contains("logo.svg");

        fire(desk, "Remove the logo");
        desk.untilSeen("no logo");
        assertThat(style(desk).yaml()).doesNotContain("logo.svg");
    }

    private static StyleText style(DeskRun desk) {
        return HouseStyleSetting.style(
                store(desk),
                DeskRun.fx(() -> desk.window().workplace().orElseThrow().folders()));
    }

    private static Store store(DeskRun desk) {
        return DeskRun.fx(() -> desk.window().workplace().orElseThrow().store());
    }

    @SuppressWarnings("unchecked")
    private void phases(DeskRun desk) throws Exception {
        DeskRun.fx(() -> {
            ((ComboBox<String>) Seen.find(desk.scene().getRoot(), "Which file").orElseThrow()).setValue("phases.yaml");
            return true;
        });
        fire(desk, "Make our own");
        desk.untilSeen("0 lines differ");
        Path own = folder.resolve("no-clinic/phases.yaml");
        String ours = Files.readString(own);
        Files.writeString(own, ours.replaceFirst("minutes: \\[8, 12]", "minutes: [12, 8]"));
        fire(desk, "Check and use");
        desk.untilSeen("One line differs");
        desk.untilSeen("phases.yaml:");

        Files.writeString(own, ours.replaceFirst("minutes: \\[8, 12]", "minutes: [8, 13]"));
        fire(desk, "Check and use");
        desk.untilSeen("All is well; it counts from now on.");
        desk.until("the desk works with it", () -> desk.window()
                .workplace()
                .orElseThrow()
                .knowledge()
                .vocabulary()
                .phases()
                .rows()
                .get(0)
                .toString()
                .contains("13"));

        fire(desk, "Take the delivered one again: phases.yaml");
        desk.untilSeen("The delivered one counts again.");
        assertThat(own).doesNotExist();
        assertThat(folder.resolve("no-clinic/phases.yaml.before")).exists();
    }

    private void backup(DeskRun desk) {
        fire(desk, "Back up now");
        desk.untilSeen("proved: opened and read");
        Store before = store(desk);
        int clients = before.clients().list().size();
        before.erase(before.clients().key("sami-haddad").orElseThrow(), "Tamsin Rook");
        DeskRun.fx(() -> Seen.findStarting(desk.scene().getRoot(), "Put back…").map(n -> {
            ((javafx.scene.control.Button) n).fire();
            return n;
        }));
        desk.untilSeen("Put the backup of");
        assertThat(DeskRun.fx(
                        () -> Optional.ofNullable(desk.scene().getFocusOwner()).map(Seen::name)))
                .as("the safe answer has the focus")
                .contains("Leave all as it is");
        fire(desk, "Put it back");
        desk.untilSeen("The backup is in place.");
        assertThat(store(desk)).isNotSameAs(before);
        assertThat(store(desk).clients().list())
                .as("who was erased stays erased")
                .hasSize(clients - 1);
    }

    private static void fire(DeskRun desk, String name) {
        desk.until("“" + name + "” is there", () -> Seen.find(desk.scene().getRoot(), name)
                .isPresent());
        DeskRun.fx(() -> {
            ((javafx.scene.control.Button)
                            Seen.find(desk.scene().getRoot(), name).orElseThrow())
                    .fire();
            return true;
        });
    }
}
