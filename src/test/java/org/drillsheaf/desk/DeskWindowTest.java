package org.drillsheaf.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.MenuBar;
import javafx.scene.control.PasswordField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.util.Duration;
import org.assertj.core.api.SoftAssertions;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.ClientView;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.start.Opening;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.store.Store;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Walks every page of the real window, in English and in Spanish. */
class DeskWindowTest {
    private static final String CLIENT = "Joaquín Mirande";

    @TempDir
    Path folder;

    private final SoftAssertions found = new SoftAssertions();
    private DeskRun desk;
    private Words words;
    private Path sheet;

    @Test
    void everyControlOfEveryPageHasANameForScreenReadersInTheLanguageOfTheWindow() throws Exception {
        sheet = OtherDesk.sheetWithOneNewName(
                new Folders(Path.of("").toAbsolutePath(), folder.resolve("no-clinic")), folder.resolve("sheet.csv"));
        try (DeskRun run = DeskRun.start(folder, DeskSettings.FIRST)) {
            desk = run;
            speak("en");
            firstPage();
            desk.click(words.text("start.demo"));
            desk.untilSeen(CLIENT);
            pages();
            speak("es");
            desk.untilSeen(CLIENT);
            pages();
        }
        Path record = folder.resolve("demo-clinic.mv.db");
        try (DeskRun run = DeskRun.start(
                folder.resolve("later"), DeskSettings.FIRST.inLanguage("es").at(record.toString(), "Tamsin Rook"))) {
            desk = run;
            look("the passphrase of a known record");
            desk.click(words.text("unlock.other"));
            firstPage();
        }
        found.assertAll();
    }

    private void speak(String language) {
        words = Words.in(language);
        DeskRun.fx(() -> {
            desk.window().settings(desk.window().settings().inLanguage(language));
            return true;
        });
    }

    private void firstPage() {
        look("first page");
        for (String form : List.of("start.first", "start.bring", "start.join")) {
            desk.click(words.text(form));
            desk.untilSeen(words.text("start.coach"));
            look(form);
            desk.click(words.text("start.back"));
        }
    }

    private void pages() throws Exception {
        look("clients");
        desk.click(words.text("batch.open"));
        desk.untilSeen(words.text("batch.more"));
        look("papers of several clients");
        desk.click(words.text("import.close"));
        newClient();
        firstVisit();
        desk.press(KeyCode.CONTROL, KeyCode.K);
        desk.until("the list of places", () -> has("go-to.list"));
        look("go to");
        desk.press(KeyCode.ESCAPE);
        visit();
        desk.press(KeyCode.ALT, KeyCode.DIGIT2);
        drills();
        desk.press(KeyCode.ALT, KeyCode.DIGIT3);
        desk.untilSeen(words.text("house.look"));
        look("house");
        DeskRun.fx(() -> {
            PauseTransition idle = desk.window().lockOfWindow().idle();
            idle.jumpTo(Duration.seconds(30));
            movesUnderTheMouse(desk.scene().getRoot());
            assertThat(idle.getCurrentTime()).as("nobody was there").isGreaterThanOrEqualTo(Duration.seconds(30));
            idle.jumpTo("end"); // as if nobody had been there for some minutes
            return true;
        });
        desk.until("the lock", () -> desk.scene().getFocusOwner() instanceof PasswordField);
        look("lock");
        desk.type(Opening.DEMO_PASSPHRASE);
        desk.press(KeyCode.ENTER);
        desk.untilSeen(words.text("house.look"));
        desk.press(KeyCode.ALT, KeyCode.DIGIT1);
        desk.click(words.text("client.all"));
        desk.untilSeen(CLIENT);
    }

    /** As the toolkit tells it when the page changes below a mouse that rests. */
    private static void movesUnderTheMouse(Node page) {
        Event.fireEvent(
                page,
                new MouseEvent(
                        MouseEvent.MOUSE_ENTERED_TARGET,
                        9,
                        9,
                        9,
                        9,
                        MouseButton.NONE,
                        0,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        true,
                        null));
    }

    private void newClient() {
        desk.press(KeyCode.CONTROL, KeyCode.N);
        desk.untilSeen(words.text("person.add"));
        DeskRun.fx(() -> {
            @SuppressWarnings("unchecked")
            ComboBox<String> conditions =
                    (ComboBox<String>) Seen.find(desk.scene().getRoot(), words.text("conditions.add"))
                            .orElseThrow();
            conditions.setValue("hypermobility");
            return true;
        });
        look("new client with a condition");
        desk.click(words.text("person.close"));
    }

    private void firstVisit() throws Exception {
        String name = "Newcomer " + words.language();
        OtherDesk.addedAClient(store(), "newcomer-" + words.language(), name);
        desk.click(name);
        desk.untilSeen(words.text("clients.first-visit"));
        look("a client without a visit");
        desk.click(words.text("visits.start"));
        untilRead();
        desk.click(words.text("client.all"));
    }

    private void untilRead() {
        desk.until("the visit is read", () -> view().filter(
                        v -> v.client().evaluation().get().isPresent())
                .isPresent());
    }

    private Store store() {
        return DeskRun.fx(() -> desk.window().workplace().orElseThrow().store());
    }

    private void visit() {
        OtherDesk.typedTheSameField(store(), "joaquin-mirande");
        desk.click(CLIENT);
        desk.untilSeen(words.text("two-desks.more"));
        look("two desks changed one field");
        desk.press(KeyCode.F8);
        desk.press(KeyCode.ENTER);
        untilRead();
        desk.click(words.text("safety.unfold"));
        look("screen");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT2);
        desk.untilSeen(words.text("goals.title"));
        look("reading");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT3);
        desk.until("the program is built", () -> view().orElseThrow().client().isBuiltForNow());
        look("program");
        everyGateStandsAtTheFootOfItsPhase();
        desk.press(KeyCode.S);
        desk.untilSeen(words.text("program.alternatives"));
        look("what could take a drill's place");
        desk.press(KeyCode.ESCAPE);
        desk.press(KeyCode.K);
        desk.untilSeen(words.text("program.pin.must-have"));
        look("a pinned drill");
        nothingFits();
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT4);
        desk.untilSeen(words.text("handout.not-signed"));
        look("handout");
        desk.press(KeyCode.CONTROL, KeyCode.DIGIT5);
        desk.until("progress", () -> view().orElseThrow().openSheet() == 4);
        look("progress");
        desk.press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.N);
        desk.untilSeen(words.text("visits.day"));
        look("new visit");
        desk.press(KeyCode.ESCAPE);
    }

    /** However many drills are scrolled above it. */
    private void everyGateStandsAtTheFootOfItsPhase() {
        DeskRun.fx(() -> {
            Set<Node> columns = desk.scene().getRoot().lookupAll(".phase-column");
            found.assertThat(columns).hasSize(4);
            for (Node column : columns) {
                Bounds foot = column.lookup(".gate-foot")
                        .localToScene(column.lookup(".gate-foot").getLayoutBounds());
                Bounds whole = column.localToScene(column.getLayoutBounds());
                found.assertThat(foot.getHeight()).as("height of a gate").isGreaterThan(20);
                found.assertThat(whole.getMaxY() - foot.getMaxY())
                        .as("from a gate to the end of its column")
                        .isBetween(0.0, 20.0);
            }
            return true;
        });
    }

    /** The pinned drill is done lying, and no way of lying is allowed. */
    private void nothingFits() {
        ClientCase client = view().orElseThrow().client();
        DeskRun.fx(() -> {
            Content person = client.draft().get().person();
            client.change(
                    "avoid lying",
                    "",
                    d -> d.with(
                            PartKey.CLIENT, person.with("/avoid/0", "supine").with("/avoid/1", "side-lying")));
            return true;
        });
        desk.untilSeen(words.text("clash.nothing-fits"));
        look("nothing fits");
        DeskRun.fx(() -> {
            client.undo();
            client.undo();
            return true;
        });
        desk.until("the program fits again", client::isBuiltForNow);
    }

    private void drills() {
        desk.until("the drills are read", () -> has("drills.copy"));
        look("drills");
        desk.press(KeyCode.CONTROL, KeyCode.F);
        desk.type("wall march");
        desk.press(KeyCode.DOWN);
        desk.untilSeen(words.text("tab.words"));
        look("a drill");
        for (String tab : List.of("tab.pose", "tab.translations", "tab.versions")) {
            desk.click(words.text(tab));
            look(tab);
        }
        desk.choose(sheet);
        desk.click(words.text("drills.bring-in"));
        desk.untilSeen(words.count("import.bring-in", 1));
        look("drills that come in");
        found.assertThat(DeskRun.fx(() -> Seen.texts(desk.scene().getRoot())))
                .as("the last line names the keys of the list, not those of a drill")
                .contains(words.text("import.hint"))
                .doesNotContain(words.text("drills.hint.finding"), words.text("drills.hint.keep"));
        desk.click(words.text("import.close"));
    }

    private Optional<ClientView> view() {
        return desk.window().frame().flatMap(frame -> frame.clients().openClient());
    }

    private boolean has(String key) {
        return Seen.find(desk.scene().getRoot(), words.text(key)).isPresent();
    }

    private void look(String page) {
        desk.settle();
        found.assertThat(DeskRun.fx(this::nameless))
                .as(page + ", without a name, " + words.language())
                .isEmpty();
        if (!words.language().equals("en")) {
            found.assertThat(DeskRun.fx(this::english))
                    .as(page + ", in English")
                    .isEmpty();
        }
    }

    private List<String> nameless() {
        List<String> nameless = new ArrayList<>();
        Seen.walk(desk.scene().getRoot(), node -> {
            boolean inChoice = node.getParent() instanceof ComboBoxBase<?>;
            if (node.isFocusTraversable() && !inChoice && Seen.name(node).isBlank()) {
                nameless.add(path(node));
            }
        });
        return nameless;
    }

    /** Texts and names that are those of the English window. */
    private List<String> english() {
        List<String> said = new ArrayList<>(Seen.texts(desk.scene().getRoot()));
        Seen.walk(desk.scene().getRoot(), node -> {
            said.add(String.valueOf(node.getAccessibleText()));
            said.add(String.valueOf(node.getAccessibleRoleDescription()));
            said.add(String.valueOf(node.getAccessibleHelp()));
            if (node instanceof ComboBox<?> box) {
                said.addAll(choices(box));
            }
            if (node instanceof MenuBar bar) {
                bar.getMenus()
                        .forEach(menu -> menu.getItems().forEach(item -> said.add(String.valueOf(item.getText()))));
            }
        });
        List<Pattern> english = englishOnly();
        return said.stream()
                .filter(text -> english.stream().anyMatch(p -> p.matcher(text).matches()))
                .distinct()
                .toList();
    }

    private static <T> List<String> choices(ComboBox<T> box) {
        return box.getItems().stream().map(box.getConverter()::toString).toList();
    }

    /** The English texts that have another wording here and begin with a word; what is filled in stands for anything. */
    private List<Pattern> englishOnly() {
        Map<String, String> here = words.all();
        Stream<Pattern> phases =
                Stream.of(Phase.values()).map(phase -> Pattern.compile(phase.title(), Pattern.CASE_INSENSITIVE));
        Stream<Pattern> texts = Words.in("en").all().entrySet().stream()
                .filter(text -> !here.containsValue(text.getValue()))
                .filter(text -> text.getValue().matches("(?s)\\W*\\p{L}{3}.*"))
                .map(text -> Pattern.compile(
                        "\\Q" + text.getValue().replaceAll("\\{\\d}", "\\\\E.*\\\\Q") + "\\E", Pattern.DOTALL));
        return Stream.concat(phases, texts).toList();
    }

    private static String path(Node node) {
        StringBuilder path = new StringBuilder();
        for (Node n = node; n != null; n = n.getParent()) {
            path.insert(0, "/" + n.getClass().getSimpleName() + n.getStyleClass());
        }
        return path.toString();
    }
}
