package org.drillsheaf.desk.client;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.frame.StatusLine;
import org.drillsheaf.desk.history.History;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.ClientSummary;
import org.drillsheaf.store.record.ClientText;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;
import org.drillsheaf.store.sql.StoreFailure;
import org.jspecify.annotations.Nullable;

/** The place of the clients: the list, or one client's page. */
public final class ClientsPage implements Page {
    /** Under this the list and a panel do not fit beside each other. */
    private static final double LEAST_WIDTH_EM = 74;

    private Workplace workplace;
    private final StatusLine status;
    private final Runnable hintsChanged;
    private Evaluator evaluator;
    private final ClientListView list;
    private final ClientView.SheetMaker sheets;
    private final PrintingMaker printing;
    private final BorderPane pane = new BorderPane();
    private final Lane opening;
    private @Nullable ClientView view;
    private @Nullable Region panel;
    private List<Hint> panelHints = List.of();
    private boolean guided;

    public ClientsPage(
            Workplace workplace,
            StatusLine status,
            Runnable hintsChanged,
            ClientView.SheetMaker sheets,
            PrintingMaker printing) {
        this.workplace = workplace;
        this.status = status;
        this.hintsChanged = hintsChanged;
        this.sheets = sheets;
        this.printing = printing;
        this.evaluator = new Evaluator(workplace.knowledge());
        this.opening = new Lane(workplace.background());
        this.list = new ClientListView(workplace, this::open, this::newClient, this::printSeveral, this::guide);
        pane.getStyleClass().add("page");
        pane.setCenter(list);
        pane.widthProperty().addListener((of, before, now) -> arrange());
        list.font().addListener((of, before, now) -> arrange());
    }

    /** Makes the panel that prints for several clients. */
    public interface PrintingMaker {
        /**
         * @param clients those of the list
         * @param close leaves the panel
         */
        Region make(Workplace workplace, Supplier<List<ClientSummary>> clients, Runnable close);
    }

    private void printSeveral() {
        Region panel = printing.make(workplace, list::found, this::closePanel);
        beside(panel, List.of(new Hint("Esc", workplace.words().text("hint.close"))));
        panel.applyCss();
        panel.requestFocus();
    }

    /** A panel stands beside the list, or in its place where both would be too narrow to be read. */
    private void beside(Region panel, List<Hint> hints) {
        this.panel = panel;
        panelHints = hints;
        hintsChanged.run();
        arrange();
    }

    private void arrange() {
        Region open = panel;
        if (view != null) {
            return;
        }
        if (open != null && pane.getWidth() < LEAST_WIDTH_EM * list.em()) {
            pane.setRight(null);
            pane.setCenter(open);
        } else {
            pane.setCenter(list);
            pane.setRight(open);
        }
    }

    private void closePanel() {
        panel = null;
        arrange();
        hintsChanged.run();
        list.ready();
    }

    /** Opens a client's page at the last visit. */
    public void open(UUID key) {
        if (view != null && view.client().key().equals(key)) {
            pane.setCenter(view);
            return;
        }
        opening.run(() -> workplace.store().clients().load(key), this::opened, this::failed);
    }

    private void opened(Optional<ClientRecord> found) {
        Words words = workplace.words();
        if (found.isEmpty()) {
            list.find();
            list.tell(words.text("clients.gone"), words.text("clients.gone-more"), Optional.empty());
        } else if (found.get().visits().isEmpty()) {
            Button start = Buttons.plain(words.text("visits.start"), () -> firstVisit(found.get()));
            list.tell(words.text("clients.first-visit"), words.text("clients.first-visit-more"), Optional.of(start));
        } else {
            list.quiet();
            show(found.get());
        }
    }

    private void firstVisit(ClientRecord record) {
        LocalDate today = LocalDate.now(workplace.clock());
        PartKey visit = PartKey.visit(today);
        Content dated = Content.emptyMap().with("/date", today.toString());
        long version = record.part(visit).map(Part::version).orElse(0L);
        opening.run(
                () -> {
                    workplace.store().clients().save(record.key(), visit, version, dated, workplace.coach());
                    return workplace.store().clients().load(record.key());
                },
                this::opened,
                this::failed);
    }

    /** The open client is no longer in the record. */
    private void erased(String who) {
        Words words = workplace.words();
        backToList();
        list.tell(words.text("clients.erased", who), words.text("clients.erased-more"), Optional.empty());
    }

    /** Goes on with what the house knows now; the open client stays where it is, and keeps what can be taken back. */
    public void renew(Workplace now) {
        workplace = now;
        evaluator = new Evaluator(now.knowledge());
        ClientView before = view;
        if (before == null) {
            return;
        }
        History<ClientDraft> history = before.client().history();
        LocalDate date = before.client().visit().get();
        closeView();
        opening.run(
                () -> now.store().clients().load(history.now().key()),
                found -> found.ifPresent(record -> {
                    show(new ClientCase(now, evaluator, record, date, history));
                    sheet(before.openSheet());
                }),
                this::failed);
    }

    private void show(ClientRecord record) {
        closeView();
        List<LocalDate> visits = record.visits();
        show(new ClientCase(workplace, evaluator, record, visits.get(visits.size() - 1)));
    }

    private void show(ClientCase client) {
        client.saved().addListener((of, before, now) -> status.saved(now));
        client.news().addListener((of, before, now) -> status.tell(now));
        client.erasedBy().addListener((of, before, now) -> now.ifPresent(this::erased));
        ClientView shown = new ClientView(client, sheets, this::backToList, hintsChanged);
        view = shown;
        panel = null;
        pane.setCenter(shown);
        pane.setRight(null);
        if (pane.getScene() != null) {
            hintsChanged.run();
            shown.shown();
        }
        if (guided) {
            guided = false;
            shown.guide();
        }
    }

    private void failed(Exception failure) {
        status.tell(
                failure instanceof StoreFailure store
                        ? store.problem().what() + ". " + store.problem().remedy()
                        : String.valueOf(failure.getMessage()));
    }

    private void backToList() {
        closeView();
        pane.setCenter(list);
        hintsChanged.run();
        list.find();
        list.ready();
    }

    private void closeView() {
        if (view != null) {
            view.close();
            view = null;
        }
    }

    /** Opens the panel for a new client. */
    public void newClient() {
        if (view != null) {
            backToList();
        }
        PersonView person = new PersonView(
                workplace.words(),
                workplace.knowledge(),
                Content.emptyMap(),
                Content.emptyList(),
                this::add,
                this::closePanel);
        beside(
                person,
                List.of(
                        new Hint(
                                workplace.words().text("key.space"),
                                workplace.words().text("hint.tick")),
                        new Hint("Enter", workplace.words().text("person.add")),
                        new Hint("Esc", workplace.words().text("hint.close"))));
        person.ready();
    }

    private void add(Content person, Content conditions) {
        LocalDate today = LocalDate.now(workplace.clock());
        opening.run(
                () -> {
                    String id = freeId(person.value("/name").orElse("client"));
                    Map<PartKey, Content> parts = new HashMap<>();
                    parts.put(PartKey.CLIENT, person.with("/id", id).with("/coach", workplace.coach()));
                    parts.put(PartKey.CONDITIONS, conditions);
                    parts.put(PartKey.visit(today), Content.emptyMap().with("/date", today.toString()));
                    UUID key = workplace.store().clients().add(new ClientText(id, parts), workplace.coach());
                    workplace.store().search().refresh(key);
                    return workplace.store().clients().load(key);
                },
                (Optional<ClientRecord> found) -> found.ifPresent(this::show),
                this::failed);
    }

    private String freeId(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String base = plain.isEmpty() ? "client" : plain;
        String id = base;
        for (int number = 2; workplace.store().clients().key(id).isPresent(); number++) {
            id = base + "-" + number;
        }
        return id;
    }

    @Override
    public void undo() {
        if (view != null) {
            view.client().undo();
        }
    }

    @Override
    public void redo() {
        if (view != null) {
            view.client().redo();
        }
    }

    public void newVisit() {
        if (view != null) {
            view.newVisit();
        }
    }

    /** Opens a sheet of the open client, 0 to 4. */
    public void sheet(int number) {
        if (view != null) {
            view.open(number);
        }
    }

    /** Shows the guided first visit, now or with the next client that is opened. */
    public void guide() {
        if (view != null) {
            view.guide();
        } else {
            guided = true;
            newClient();
        }
    }

    /** The open client. */
    public Optional<ClientView> openClient() {
        return Optional.ofNullable(view);
    }

    @Override
    public Parent node() {
        return pane;
    }

    /** The window is locked: what was painted of a client goes; it is painted again when the coach is back. */
    public void locked() {
        if (view != null) {
            view.locked();
        }
    }

    @Override
    public List<Hint> hints() {
        if (view != null) {
            return view.hints();
        }
        return panel != null
                ? panelHints
                : List.of(
                        new Hint("↓ Enter", workplace.words().text("hint.open")),
                        new Hint("Ctrl N", workplace.words().text("menu.new-client")));
    }

    @Override
    public void shown() {
        if (view == null) {
            list.ready();
        } else {
            view.shown();
        }
    }

    @Override
    public boolean pressed(KeyEvent key) {
        return view != null && view.pressed(key);
    }

    @Override
    public void close() {
        closeView();
        list.close();
    }
}
