package org.drillsheaf.desk.frame;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.catalogue.DrillsPage;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.ClientsPage;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.handout.BatchView;
import org.drillsheaf.desk.handout.HandoutSheet;
import org.drillsheaf.desk.house.HousePage;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Icon;
import org.drillsheaf.desk.program.ProgramSheet;
import org.drillsheaf.desk.progress.ProgressSheet;
import org.drillsheaf.desk.reading.ReadingSheet;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.store.record.ClientSummary;
import org.drillsheaf.store.sql.StoreAddress;

/** The whole window once a record is open: menu, rail with the places, the page, the status line. */
public final class FrameView extends StackPane {
    private static final int MOST_FOUND = 12;

    private Workplace workplace;
    private final Words words;
    private final Actions actions;
    private final BorderPane frame = new BorderPane();
    private final StatusLine status;
    private final Map<Place, ToggleButton> rail = new EnumMap<>(Place.class);
    private final Map<Place, Page> pages = new EnumMap<>(Place.class);
    private Place place = Place.CLIENTS;

    /** Where one can be. */
    public enum Place {
        CLIENTS(Icon.CLIENTS, "place.clients"),
        DRILLS(Icon.DRILLS, "place.drills"),
        HOUSE(Icon.HOUSE, "place.house");

        private final Icon icon;
        private final String key;

        Place(Icon icon, String key) {
            this.icon = icon;
            this.key = key;
        }
    }

    /** What the frame asks of the window. */
    public interface Actions {
        DeskSettings settings();

        void settings(DeskSettings changed);

        void lock();

        /**
         * Gives the record another passphrase; it is closed and opened again for that.
         *
         * @param told gets what is wrong
         */
        void passphrase(char[] old, char[] fresh, Consumer<String> told);

        /**
         * Puts a backup in the record's place; the record is closed and opened again for that, and the file before is set
         * aside.
         *
         * @param passphrase of the backup; empty for the one of now
         */
        void restore(StoreAddress.File backup, Optional<char[]> passphrase);

        /** Reads drills, tests and phases again, since a file of them has changed; open clients follow. */
        void readAgain();

        /** Closes the record and goes back to the first page. */
        void leave();

        void quit();
    }

    public FrameView(Workplace workplace, Actions actions) {
        this.workplace = workplace;
        this.words = workplace.words();
        this.actions = actions;
        this.status = new StatusLine(
                words,
                words.text(workplace.store().address() instanceof StoreAddress.File ? "where.file" : "where.server"));
        frame.getStyleClass().add("page");
        frame.setTop(top());
        frame.setLeft(rail());
        frame.setBottom(status);
        setAlignment(frame, Pos.TOP_LEFT); // whatever finds no room, menu, head and last line stay in sight
        frame.setMinSize(0, 0);
        getChildren().add(frame);
        addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        workplace.store().backups().keepMaking(failure -> workplace
                .background()
                .show(() -> status.tell(failure.problem().message())));
        go(Place.CLIENTS);
    }

    private Node top() {
        Button goTo = Buttons.withKey(Buttons.plain(words.text("go-to.button"), this::openGoTo), "Ctrl K");
        goTo.getStyleClass().addAll("bare", "second", "small");
        MenuBar menu = menu();
        HBox.setHgrow(menu, Priority.ALWAYS);
        HBox top = new HBox(menu, goTo);
        top.setAlignment(Pos.CENTER_LEFT);
        top.getStyleClass().add("top");
        return top;
    }

    private MenuBar menu() {
        Menu file = new Menu(words.text("menu.file"));
        file.getItems()
                .addAll(
                        item("menu.new-client", "Shortcut+N", () -> clients().newClient()),
                        item("menu.lock", "Shortcut+L", actions::lock),
                        item("menu.leave", "", actions::leave),
                        new SeparatorMenuItem(),
                        item("menu.quit", "Shortcut+Q", actions::quit));
        Menu edit = new Menu(words.text("menu.edit"));
        edit.getItems()
                .addAll(
                        item("menu.undo", "Shortcut+Z", () -> page().undo()),
                        item("menu.redo", "Shortcut+Shift+Z", () -> page().redo()));
        Menu visit = new Menu(words.text("menu.visit"));
        visit.getItems()
                .add(item("menu.new-visit", "Shortcut+Shift+N", () -> clients().newVisit()));
        for (int sheet = 0; sheet < 4; sheet++) {
            int number = sheet;
            visit.getItems().add(item("menu.sheet-" + (sheet + 1), "Shortcut+" + (sheet + 1), () -> clients()
                    .sheet(number)));
        }
        visit.getItems().add(item("menu.progress", "Shortcut+5", () -> clients().sheet(4)));
        Menu window = new Menu(words.text("menu.window"));
        window.getItems()
                .addAll(
                        item("menu.larger", "Shortcut+Plus", () -> resize(25)),
                        item("menu.smaller", "Shortcut+Minus", () -> resize(-25)),
                        item(
                                "menu.usual-size",
                                "Shortcut+0",
                                () -> actions.settings(actions.settings().scaled(100))));
        Menu help = new Menu(words.text("menu.help"));
        help.getItems().add(item("menu.first-visit", "", () -> clients().guide()));
        MenuBar bar = new MenuBar(file, edit, visit, window, help);
        bar.setAccessibleText(words.text("menu.name"));
        bar.setMinWidth(Region.USE_PREF_SIZE);
        return bar;
    }

    private MenuItem item(String key, String shortcut, Runnable action) {
        MenuItem item = new MenuItem(words.text(key));
        if (!shortcut.isEmpty()) {
            item.setAccelerator(KeyCombination.keyCombination(shortcut));
        }
        item.setOnAction(e -> action.run());
        return item;
    }

    private Node rail() {
        VBox box = new VBox();
        box.getStyleClass().add("rail");
        ToggleGroup group = new ToggleGroup();
        for (Place each : Place.values()) {
            ToggleButton button = new ToggleButton(words.text(each.key), each.icon.node(1.6));
            button.setToggleGroup(group);
            button.setOnAction(e -> go(each));
            rail.put(each, button);
            box.getChildren().add(button);
        }
        Region room = new Region();
        VBox.setVgrow(room, Priority.ALWAYS);
        Button lock = new Button(words.text("rail.lock"), Icon.LOCK.node(1.6));
        lock.setOnAction(e -> actions.lock());
        box.getChildren().addAll(room, lock);
        return box;
    }

    /** Goes to a place. */
    public void go(Place wanted) {
        place = wanted;
        status.tell(""); // what was told belongs to where the coach was
        Objects.requireNonNull(rail.get(wanted)).setSelected(true);
        Page page = pages.computeIfAbsent(wanted, this::page);
        frame.setCenter(page.node());
        status.hints(page.hints());
        page.shown();
    }

    /** The page that is to be seen. */
    private Page page() {
        return pages.computeIfAbsent(place, this::page);
    }

    private Page page(Place wanted) {
        return switch (wanted) {
            case CLIENTS -> new ClientsPage(workplace, status, this::clientKeys, FrameView::sheets, BatchView::new);
            case DRILLS -> new DrillsPage(workplace, actions::readAgain, this::drillKeys);
            case HOUSE -> new HousePage(workplace, actions);
        };
    }

    /** What happens to a client in the background changes no keys of another place. */
    private void clientKeys() {
        if (place == Place.CLIENTS) {
            status.hints(clients().hints());
        }
    }

    private void drillKeys() {
        Page drills = pages.get(Place.DRILLS);
        if (place == Place.DRILLS && drills != null) {
            status.hints(drills.hints());
        }
    }

    private static List<Sheet> sheets(ClientCase client, Consumer<MovementTest> goTo, IntConsumer open) {
        return List.of(
                new ReadingSheet(client, goTo, open),
                new ProgramSheet(client, open),
                new HandoutSheet(client),
                new ProgressSheet(client, open));
    }

    /** The place of the clients, which is always there. */
    public ClientsPage clients() {
        return (ClientsPage) pages.computeIfAbsent(Place.CLIENTS, this::page);
    }

    private void resize(int by) {
        DeskSettings now = actions.settings();
        actions.settings(now.scaled(now.scalePercent() + by));
    }

    private void pressed(KeyEvent key) {
        if (getChildren().size() > 1) {
            return;
        }
        if (new KeyCodeCombination(KeyCode.K, KeyCombination.SHORTCUT_DOWN).match(key)) {
            openGoTo();
            key.consume();
        } else if (key.isAltDown() && key.getCode().isDigitKey()) {
            int number = key.getCode().ordinal() - KeyCode.DIGIT1.ordinal();
            if (number >= 0 && number < Place.values().length) {
                go(Place.values()[number]);
                key.consume();
            }
        } else if (key.getCode() == KeyCode.F6) {
            nextGroup(key.isShiftDown());
            key.consume();
        } else if (new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN).match(key)) {
            page().redo();
            key.consume();
        } else if (page().pressed(key)) {
            key.consume();
        }
    }

    /** Menu, rail, page: F6 goes round. */
    private void nextGroup(boolean back) {
        List<Node> groups = List.of(frame.getTop(), frame.getLeft(), frame.getCenter());
        Node owner = getScene().getFocusOwner();
        int now = 2;
        for (int i = 0; i < groups.size(); i++) {
            for (Node n = owner; n != null; n = n.getParent()) {
                if (n == groups.get(i)) {
                    now = i;
                }
            }
        }
        int next = Math.floorMod(now + (back ? -1 : 1), groups.size());
        if (next == 2) {
            page().shown();
        } else {
            firstFocusable(groups.get(next)).ifPresent(Node::requestFocus);
        }
    }

    private static Optional<Node> firstFocusable(Node node) {
        if (node.isFocusTraversable() && node.isVisible()) {
            return Optional.of(node);
        }
        if (node instanceof javafx.scene.Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Optional<Node> found = firstFocusable(child);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    private void openGoTo() {
        List<GoTo.Target> commands = new ArrayList<>();
        for (Place each : Place.values()) {
            commands.add(new GoTo.Target(words.text(each.key), words.text("go-to.place"), () -> go(each)));
        }
        commands.add(new GoTo.Target(words.text("menu.new-client"), words.text("go-to.command"), () -> clients()
                .newClient()));
        commands.add(new GoTo.Target(words.text("menu.lock"), words.text("go-to.command"), actions::lock));
        Node before = getScene().getFocusOwner();
        StackPane veil = new StackPane();
        veil.getStyleClass().add("veil");
        Runnable close = () -> {
            getChildren().remove(veil);
            if (before != null) {
                before.requestFocus();
            }
        };
        GoTo panel = new GoTo(
                words,
                commands,
                this::find,
                go -> {
                    getChildren().remove(veil);
                    go.run();
                },
                close);
        veil.getChildren().add(panel);
        veil.setOnMousePressed(e -> {
            if (e.getTarget() == veil) {
                close.run();
            }
        });
        getChildren().add(veil);
        panel.ready();
    }

    private List<GoTo.Target> find(String typed) {
        List<GoTo.Target> found = new ArrayList<>();
        for (ClientSummary client : workplace.store().search().clients(typed, MOST_FOUND)) {
            found.add(new GoTo.Target(client.name(), words.text("go-to.client"), () -> openClient(client.key())));
        }
        return found;
    }

    /** Says something in the status line. */
    public void tell(String text) {
        status.tell(text);
    }

    /** Goes on with what the house knows now. */
    public void renew(Workplace now) {
        workplace = now;
        clients().renew(now);
    }

    /** Opens a client's page. */
    public void openClient(UUID key) {
        go(Place.CLIENTS);
        clients().open(key);
    }

    /** The window is locked: nothing that was painted of a client is kept. */
    public void locked() {
        clients().locked();
    }

    /** Puts the focus where the work goes on. */
    public void ready() {
        page().shown();
    }

    /** The pages go, and with them whatever they listen to. */
    public void close() {
        pages.values().forEach(Page::close);
    }
}
