package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
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
    private static final double WIDER_THAN_ANY_WINDOW = 8_000;

    /** Under this the strips leave their room to numbers and words. */
    private static final double STRIPS_WIDTH_EM = 46;

    private static final String UNDO_KEY = "Ctrl Z";
    private static final Insets AROUND_MESSAGES = new Insets(4, 16, 8, 16);

    private final ClientCase client;
    private final Words words;
    private final Runnable back;
    private final HBox head = new HBox();
    private final Button undo;
    private final VisitLine line;
    private final VBox messages = new VBox();
    private final PinLine pins;
    private final VBox day = new VBox();
    private final Sheaf sheaf;
    private final ScreenSheet screen;
    private final ScreenModel answers;
    private Optional<FieldClashView> clash = Optional.empty();
    private Guide guide = Guide.OFF;
    private boolean compact;
    private Optional<ServerAwayView> serverAway = Optional.empty();
    private Object shownHead = "";
    private Object shownMessages = "";

    /** Whether the guided first visit is shown. */
    private enum Guide {
        OFF,
        ON
    }

    /**
     * @param back closes the page
     * @param hintsChanged tells that another sheet has other keys
     */
    public ClientView(ClientCase client, SheetMaker maker, Runnable back, Runnable hintsChanged) {
        this.client = client;
        this.words = client.workplace().words();
        this.back = back;
        this.sheaf = new Sheaf(hintsChanged);
        this.answers = new ScreenModel(client);
        this.screen = new ScreenSheet(client);
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
        head.getStyleClass().add("client-head");
        this.undo = Buttons.withKey(Buttons.small("", client::undo), UNDO_KEY);
        HBox.setHgrow(line, Priority.ALWAYS);
        Button visit = Buttons.plain(words.text("menu.new-visit"), () -> newVisit());
        HBox visits = new HBox(10, line, visit);
        visits.setAlignment(Pos.CENTER_LEFT);
        visits.setPadding(new Insets(0, 16, 0, 8));
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
        client.saved().addListener((of, old, now) -> {
            if (!(now instanceof Saving.State.OnItsWay)) { // while a save is on its way nobody knows
                showServer(now);
            }
        });
        client.visit().addListener((of, old, now) -> {
            showLine();
            show();
        });
        client.clash().addListener((of, old, now) -> showMessages());
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
            sheaf.compact(little);
            pins.compact(little);
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
        showHead();
        showMessages();
        pins.show(Missing.of(client.evaluation().get().flatMap(Evaluation::reading)));
        sheaf.show();
    }

    private void showHead() {
        showPerson();
        Optional<String> what = client.undoName();
        undo.setVisible(what.isPresent());
        undo.setManaged(what.isPresent());
        what.map(w -> words.text("client.undo", w)).ifPresent(text -> {
            undo.setText(text);
            undo.setAccessibleText(text + ", " + UNDO_KEY);
        });
    }

    /** Made anew only when something else stands in it, so that what has the focus there keeps it. */
    private void showPerson() {
        Object wanted = List.of(
                client.draft().get().person(),
                client.evaluation().get().flatMap(Evaluation::visit).map(ClientVisit::conditions));
        if (wanted.equals(shownHead)) {
            return;
        }
        shownHead = wanted;
        Content person = client.draft().get().person();
        Label name = Labels.text(client.draft().get().name(), "title");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label facts = Labels.text(facts(person), "second");
        Button edit = Buttons.link(words.text("client.details"), this::editPerson);
        Button list = Buttons.link(words.text("client.all"), back);
        // What finds no room beside the name goes on below it.
        FlowPane who = new FlowPane(name, facts, edit);
        who.getStyleClass().add("client-facts");
        who.setPrefWrapLength(WIDER_THAN_ANY_WINDOW);
        HBox.setHgrow(who, Priority.ALWAYS);
        client.evaluation().get().flatMap(Evaluation::visit).ifPresent(visit -> cautions(visit, who));
        head.getChildren().setAll(who, list, undo);
    }

    private String facts(Content person) {
        List<String> facts = new ArrayList<>();
        person.value("/born").ifPresent(b -> facts.add(words.text("client.born", b)));
        person.value("/stature-cm").ifPresent(s -> facts.add(words.number(s) + " cm"));
        person.value("/minutes-per-session").ifPresent(m -> facts.add(words.text("client.minutes", m)));
        return String.join(" · ", facts);
    }

    private void cautions(ClientVisit visit, FlowPane beside) {
        visit.conditions().stream().limit(3).forEach(condition -> {
            var known =
                    client.evaluator().knowledge().safetyRules().conditions().get(condition.id());
            String name = known == null ? condition.id() : known.name().best(List.of(words.language(), "en"));
            String side = condition.sides().size() == 1
                    ? ", "
                            + words.text("side."
                                    + condition.sides().iterator().next().id())
                    : "";
            beside.getChildren().add(Labels.tag(name + side, "caution"));
        });
    }

    /** One message for as long as the server is away: the button in it keeps the focus while the number grows. */
    private void showServer(Saving.State saved) {
        if (saved instanceof Saving.State.Waits waits) {
            serverAway = serverAway.or(() -> Optional.of(new ServerAwayView(client)));
            serverAway.get().show(waits);
        } else {
            serverAway = Optional.empty();
        }
        showMessages();
    }

    private void showMessages() {
        Object wanted = List.of(
                client.clash().get(),
                serverAway.isPresent(),
                client.evaluation().get().filter(e -> e.course().isEmpty()).map(Evaluation::problems),
                guide == Guide.ON ? guideStep() : "");
        if (wanted.equals(shownMessages)) {
            return;
        }
        shownMessages = wanted;
        messages.getChildren().clear();
        clash = client.clash().get().map(open -> new FieldClashView(client, open));
        clash.ifPresent(messages.getChildren()::add);
        serverAway.ifPresent(messages.getChildren()::add);
        client.evaluation().get().filter(e -> e.course().isEmpty()).ifPresent(e -> e.problems().stream()
                .limit(2)
                .forEach(p -> messages.getChildren().add(new Message("caution", p.what() + ".", p.remedy() + "."))));
        if (guide == Guide.ON) {
            Button close = Buttons.small(words.text("guide.close"), () -> {
                guide = Guide.OFF;
                showMessages();
            });
            messages.getChildren()
                    .add(new Message("remark", words.text("guide.title"), words.text(guideStep()), close));
        }
        messages.setPadding(messages.getChildren().isEmpty() ? Insets.EMPTY : AROUND_MESSAGES);
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
        guide = Guide.ON;
        showMessages();
    }

    private void nextMissing() {
        if (clash.isPresent()) {
            clash.get().ready();
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
        TextField day = new TextField(LocalDate.now(client.workplace().clock()).toString());
        day.setAccessibleRoleDescription(words.text("visits.day"));
        day.setPrefColumnCount(9);
        Label wrong = Labels.prose("", "bold");
        Button start = Buttons.main(words.text("visits.start"), () -> {
            Optional<LocalDate> date = date(day.getText());
            if (date.isEmpty()) {
                wrong.setText(words.text("visits.day-wrong"));
            } else {
                addVisit(date.get());
            }
        });
        start.setDefaultButton(true);
        Button cancel = Buttons.plain(words.text("start.back"), this::closeDay);
        cancel.setCancelButton(true);
        HBox row = new HBox(8, Labels.text(words.text("visits.day")), day, start, cancel, wrong);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("message");
        this.day.setPadding(AROUND_MESSAGES);
        this.day.getChildren().setAll(row);
        day.requestFocus();
        day.selectAll();
    }

    private void closeDay() {
        takeDayAway();
        shown();
    }

    private void takeDayAway() {
        day.getChildren().clear();
        day.setPadding(Insets.EMPTY);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (java.time.format.DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private void addVisit(LocalDate date) {
        takeDayAway();
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
