package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.screen.ScreenModel;
import org.drillsheaf.desk.screen.ScreenSheet;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;

/** One client's page: who it is, the line of visits, what is still missing, and the sheets of the chosen visit. */
public final class ClientView extends BorderPane {
    private static final double LEAST_WIDTH_EM = 76;

    /** Under this the strips leave their room to numbers and words. */
    private static final double STRIPS_WIDTH_EM = 46;

    private final ClientCase client;
    private final Words words;
    private final ClientHead head;
    private final VisitLine line;
    private final ClientMessages messages;
    private final PinLine pins;
    private final NewVisitView day;
    private final Sheaf sheaf;
    private final ScreenSheet screen;
    private final ScreenModel answers;
    private final Runnable hintsChanged;
    private List<Page.Hint> hints = List.of();
    private boolean compact;

    /**
     * @param back closes the page
     * @param hintsChanged tells that another sheet has other keys
     */
    public ClientView(ClientCase client, SheetMaker maker, Runnable back, Runnable hintsChanged) {
        this.client = client;
        this.words = client.workplace().words();
        this.hintsChanged = hintsChanged;
        this.sheaf = new Sheaf(this::sheetOpened);
        this.answers = new ScreenModel(client);
        this.screen = new ScreenSheet(client, this::showHints);
        this.line = new VisitLine(words, client::choose);
        this.pins = new PinLine(
                words,
                answers.trade(),
                (question, answer) -> answers.answer(question, answer, words.text("undo.safety")),
                test -> goTo(test),
                this::nextMissing);
        List<Sheet> all = new ArrayList<>(List.of(screen));
        all.addAll(maker.make(client, this::goTo, this::open));
        sheaf.add(all);
        this.head = new ClientHead(client, this::editPerson, back);
        this.messages = new ClientMessages(client, this::guideStep);
        this.day = new NewVisitView(words, client.workplace().clock(), this::addVisit, this::shown);
        HBox.setHgrow(line, Priority.ALWAYS);
        Button visit = Buttons.plain(words.text("menu.new-visit"), () -> newVisit());
        HBox visits = new HBox(line, visit);
        visits.setAlignment(Pos.CENTER_LEFT);
        visits.getStyleClass().add("visits");
        if (sheaf.size() > 4) {
            visits.getChildren().add(Buttons.plain(sheaf.sheet(4).name(), () -> open(4)));
        }
        VBox top = new VBox(head, visits, day, messages, pins);
        top.getStyleClass().add("sheet");
        setTop(top);
        setCenter(sheaf);
        widthProperty().addListener((of, old, now) -> fit());
        line.heightProperty().addListener((of, old, now) -> fit());
        client.evaluation().addListener((of, old, now) -> show());
        client.built().addListener((of, old, now) -> show());
        client.kept().addListener((of, old, now) -> show());
        client.draft().addListener((of, old, now) -> show());
        client.visit().addListener((of, old, now) -> {
            showLine();
            show();
        });
        showLine();
        show();
    }

    /** Under about 76 em of width the sheets are laid out for little room, and closed edges share one row. */
    private void fit() {
        double em = line.em();
        boolean little = em > 0 && getWidth() < LEAST_WIDTH_EM * em;
        getStyleClass().remove("tiny");
        if (em > 0 && getWidth() < STRIPS_WIDTH_EM * em) {
            getStyleClass().add("tiny");
        }
        if (em > 0 && little != compact) {
            compact = little;
            getStyleClass().remove("compact");
            if (little) {
                getStyleClass().add("compact");
            }
            line.compact(little);
            head.compact(little);
            sheaf.compact(little);
            pins.compact(little);
            messages.compact(little);
        }
    }

    /** Makes the further sheets of a client. */
    public interface SheetMaker {
        /**
         * @param goTo opens the screen at a test
         * @param open opens a sheet by its number, 0 to 4
         */
        List<Sheet> make(ClientCase client, Consumer<MovementTest> goTo, java.util.function.IntConsumer open);
    }

    public ClientCase client() {
        return client;
    }

    /** Opens a sheet, 0 to 4. */
    public void open(int number) {
        sheaf.open(number);
    }

    public int openSheet() {
        return sheaf.openNumber();
    }

    private void goTo(MovementTest test) {
        open(0);
        screen.show(test.id());
    }

    private void showLine() {
        Optional<LocalDate> planned = client.content().value("/next/date").map(LocalDate::parse);
        line.show(
                client.draft().get().visits(),
                client.visit().get(),
                LocalDate.now(client.workplace().clock()),
                planned);
    }

    private void show() {
        head.show();
        messages.show();
        pins.show(Missing.of(client.evaluation().get().flatMap(Evaluation::reading)));
        sheaf.show();
        showHints();
    }

    /** The keys of a sheet change with what is asked in it; told only when they do. */
    private void showHints() {
        List<Page.Hint> now = hints();
        if (!now.equals(hints)) {
            hints = now;
            hintsChanged.run();
        }
    }

    private void sheetOpened() {
        hints = hints();
        hintsChanged.run();
    }

    /** What comes next in a first visit. */
    private String guideStep() {
        Optional<Reading> reading = client.evaluation().get().flatMap(Evaluation::reading);
        if (reading.isEmpty() || !reading.get().safety().isClear()) {
            return "guide.safety";
        }
        if (answers.taken() < 4) {
            return "guide.screen";
        }
        if (sheaf.openNumber() < 1) {
            return "guide.reading";
        }
        if (client.signed().isEmpty()) {
            return sheaf.openNumber() < 2 ? "guide.program" : "guide.sign";
        }
        return "guide.handout";
    }

    /** Shows the guided first visit. */
    public void guide() {
        messages.guide();
    }

    private void nextMissing() {
        if (messages.clash().isPresent()) {
            messages.clash().get().ready();
            return;
        }
        Missing missing = Missing.of(client.evaluation().get().flatMap(Evaluation::reading));
        if (!missing.needed().isEmpty()) {
            open(0);
            screen.showSafety();
        } else if (!missing.helpful().isEmpty()) {
            goTo(missing.helpful().get(0));
        }
    }

    private void editPerson() {
        PersonView person = new PersonView(
                words,
                client.evaluator().knowledge(),
                client.draft().get().person(),
                client.draft().get().part(PartKey.CONDITIONS),
                (who, conditions) -> {
                    client.change(words.text("undo.person"), "", d -> d.with(PartKey.CLIENT, who)
                            .with(PartKey.CONDITIONS, conditions));
                    setRight(null);
                },
                () -> setRight(null));
        setRight(person);
        person.ready();
    }

    /** Asks for the day of a new visit, in the head of the page. */
    public void newVisit() {
        day.ask();
    }

    private void addVisit(LocalDate date) {
        if (!client.draft().get().visits().contains(date)) {
            client.change(
                    words.text("undo.new-visit"),
                    "",
                    d -> d.with(PartKey.visit(date), Content.emptyMap().with("/date", date.toString())));
        }
        client.choose(date);
        showLine();
        open(0);
    }

    List<Page.Hint> hints() {
        return sheaf.open().hints();
    }

    void shown() {
        sheaf.open().shown();
    }

    boolean pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.F8) {
            nextMissing();
            return true;
        }
        return sheaf.open().pressed(key);
    }

    void locked() {
        sheaf.locked();
    }

    void close() {
        client.close();
    }
}
