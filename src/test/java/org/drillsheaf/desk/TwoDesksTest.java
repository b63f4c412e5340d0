package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.drillsheaf.Problems;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.TestServer;
import org.drillsheaf.store.Wire;
import org.drillsheaf.store.change.Changes;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.sql.Passphrase;
import org.drillsheaf.store.sql.StoreAddress;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/** Two real windows over one PostgreSQL server, each with connections of its own. */
class TwoDesksTest {
    private static final String HIP = "Sway-back stance, hip ahead, cm";
    private static final String BREATH = "Comfortable breath out, s";
    private static final String PASSWORD = "green kettles";

    @TempDir
    Path folder;

    private HouseServer server;

    /** The clinic's server with one client in its record. */
    private record HouseServer(StoreAddress.Server address) {
        int port() {
            return URI.create(address.url().substring("jdbc:".length())).getPort();
        }

        String direct() {
            return address.url() + "?user=" + address.user();
        }

        /** The same server at the far end of a wire. */
        String through(Wire wire) {
            return direct().replace(":" + port(), ":" + wire.port()) + "&connectTimeout=1&loginTimeout=1";
        }
    }

    @BeforeEach
    void fillTheServer() throws Exception {
        server = new HouseServer(TestServer.emptyDatabase());
        String yaml = Files.readString(Path.of("samples/clients/odile-farrant.yaml"));
        try (Store store = Store.create(server.address(), Passphrase.of(PASSWORD.toCharArray()), DeskRun.TODAY)) {
            store.clients().add(ClientText.parse("odile", yaml, new Problems()).orElseThrow(), "Tamsin Rook");
        }
    }

    @Test
    void whatOneDeskTypesAppearsAtTheOtherAndTheSameFieldIsDecidedByTheCoach(TestReporter reporter) throws Exception {
        try (DeskRun tamsin = open("Tamsin Rook", server.direct());
                DeskRun joran = open("Joran Hale", server.direct())) {
            long start = System.nanoTime();
            typeAtOnce(joran, HIP, "7");
            tamsin.until(
                    "the other desk's value is there",
                    () -> field(tamsin, HIP).getText().equals("7"));
            reporter.publishEntry("ms from the key to the other window", millisecondsSince(start));
            tamsin.untilSeen("Joran Hale changed Sway-back stance, hip ahead: 7 cm now, 2 cm before.");

            // Both type before either has heard of the other.
            DeskRun.fx(() -> {
                replace(tamsin, BREATH, "6");
                replace(joran, BREATH, "8");
                return true;
            });
            List<DeskRun> both = List.of(tamsin, joran);
            tamsin.until("one of the two is asked", () -> both.stream().anyMatch(TwoDesksTest::isAsked));
            DeskRun asked = DeskRun.fx(() ->
                    both.stream().filter(TwoDesksTest::isAsked).findFirst().orElseThrow());
            String mine = asked == tamsin ? "6" : "8";
            String other = asked == tamsin ? "joran" : "tamsin";
            assertThat(DeskRun.fx(() -> Seen.texts(asked.scene().getRoot())))
                    .anyMatch(t -> t.toLowerCase(java.util.Locale.ROOT).startsWith(other))
                    .contains("Comfortable breath out", "Keep " + mine + " s");
            asked.toFront();
            asked.press(KeyCode.F8);
            asked.press(KeyCode.ENTER);
            tamsin.until("both windows show what was decided", () -> both.stream()
                    .allMatch(d -> field(d, BREATH).getText().equals(mine) && !isAsked(d)));
        }
    }

    /** At worst a change is committed just after a question; then the next one hears of it, and the window loads the client. */
    @Test
    void theRecordIsAskedOftenEnoughForAChangeToBeThereWithinTwoSeconds() {
        assertThat(Changes.ASKED_EVERY.multipliedBy(2)).isLessThanOrEqualTo(Duration.ofSeconds(1));
    }

    @Test
    void withoutTheServerACoachGoesOnAndIsToldAndAnErasedClientLeavesTheDesk() throws Exception {
        try (Wire wire = new Wire(server.port());
                Store other = Store.open(server.address(), Passphrase.of(PASSWORD.toCharArray()), DeskRun.TODAY);
                DeskRun desk = open("Joran Hale", server.through(wire))) {
            UUID odile = other.clients().key("odile-farrant").orElseThrow();
            wire.cut();
            typeAtOnce(desk, HIP, "7");
            desk.untilSeen("The server of the house has not answered since 10:42.");
            desk.untilSeen("Go on working: 1 change waits on this desk");
            desk.untilSeen("The server is away; what you save waits here, encrypted");
            typeAtOnce(desk, BREATH, "6");
            desk.untilSeen("Go on working: 2 changes wait on this desk");
            desk.click("Try now");
            desk.untilSeen("Trying…");
            wire.mend();
            desk.until(
                    "the message goes by itself",
                    () -> Seen.texts(desk.scene().getRoot()).stream().noneMatch(t -> t.startsWith("The server")));
            desk.untilSeen("✓ Saved");
            assertThat(other.clients().load(odile).orElseThrow().yaml()).contains("hip: 7");

            other.erase(odile, "Tamsin Rook");
            desk.untilSeen("Tamsin Rook erased this client from the record.");
            assertThat(DeskRun.fx(() -> Seen.texts(desk.scene().getRoot()))).doesNotContain("Odile Farrant");
        }
    }

    private DeskRun open(String coach, String address) throws Exception {
        Path own = Files.createDirectory(folder.resolve(coach.substring(0, 2)));
        DeskRun desk = DeskRun.start(own, DeskSettings.FIRST.at(address, coach));
        desk.toFront();
        desk.until("the password is asked", () -> desk.scene().getFocusOwner() instanceof PasswordField);
        desk.untilSeen("The record of the house: database ");
        assertThat(DeskRun.fx(() -> Seen.texts(desk.scene().getRoot()))).noneMatch(text -> text.contains("jdbc:"));
        desk.type(PASSWORD);
        desk.press(KeyCode.ENTER);
        desk.untilSeen("Odile Farrant");
        desk.click("Odile Farrant");
        desk.untilSeen("16 of 16 tests taken.");
        return desk;
    }

    private static void typeAtOnce(DeskRun desk, String name, String text) {
        DeskRun.fx(() -> {
            replace(desk, name, text);
            return true;
        });
    }

    /** Types over what stands in a field, on the toolkit's thread. */
    private static void replace(DeskRun desk, String name, String text) {
        TextField field = field(desk, name);
        field.requestFocus();
        field.selectAll();
        for (char sign : text.toCharArray()) {
            Event.fireEvent(
                    field,
                    new KeyEvent(
                            KeyEvent.KEY_TYPED,
                            String.valueOf(sign),
                            "",
                            KeyCode.UNDEFINED,
                            false,
                            false,
                            false,
                            false));
        }
    }

    private static TextField field(DeskRun desk, String name) {
        Node found = Seen.find(desk.scene().getRoot(), name).orElseThrow();
        return (TextField) found;
    }

    private static boolean isAsked(DeskRun desk) {
        return Stream.of("Keep 6 s", "Keep 8 s")
                .anyMatch(text -> Seen.texts(desk.scene().getRoot()).contains(text));
    }

    private static String millisecondsSince(long start) {
        return Long.toString((System.nanoTime() - start) / 1_000_000);
    }
}
