package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
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
import org.drillsheaf.store.record.PartClash;
import org.drillsheaf.store.record.PartKey;

/** One client's page: who it is, the line of visits, what is still missing, and the sheets of the chosen visit. */
public final class ClientView extends BorderPane {
    private static final double LEAST_WIDTH_EM = 76;

    private final ClientCase client;
    private final Words words;
    private final Runnable back;
    private final Runnable hintsChanged;
    private final HBox head = new HBox();
    private final VisitLine line;
    private final VBox messages = new VBox();
    private final PinLine pins;
    private final VBox sheets = new VBox();
    private final List<Sheet> all = new ArrayList<>();
    private final Map<Integer, Button> edges = new TreeMap<>();
    private Label summary = new Label();
    private final ScreenSheet screen;
    private final ScreenModel answers;
    private Guide guide = Guide.OFF;
    private int open;
    private boolean compact;

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
        this.hintsChanged = hintsChanged;
        this.answers = new ScreenModel(client);
        this.screen = new ScreenSheet(client);
        this.line = new VisitLine(words, client::choose);
        this.pins = new PinLine(
                words,
                (question, answer) -> answers.answer(question, answer, words.text("undo.safety")),
                test -> goTo(test),
                this::nextMissing);
        all.add(screen);
        all.addAll(maker.make(client, this::goTo, this::open));
        head.getStyleClass().add("client-head");
        HBox.setHgrow(line, Priority.ALWAYS);
        Button visit = Buttons.plain(words.text("menu.new-visit"), () -> newVisit());
        HBox visits = new HBox(10, line, visit);
        visits.setAlignment(Pos.CENTER_LEFT);
        visits.setPadding(new javafx.geometry.Insets(0, 16, 0, 8));
        if (all.size() > 4) {
            visits.getChildren().add(Buttons.plain(all.get(4).name(), () -> open(4)));
        }
        VBox top = new VBox(head, visits, messages, pins);
        top.getStyleClass().add("sheet");
        setTop(top);
        setCenter(sheets);
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
        client.clash().addListener((of, old, now) -> showMessages());
        showLine();
        layoutSheets();
        show();
    }

    /** Under about 76 em of width the sheets are laid out for little room, and closed edges share one row. */
    private void fit() {
        double em = line.getHeight() / VisitLine.HEIGHT_EM;
        boolean little = em > 0 && getWidth() < LEAST_WIDTH_EM * em;
        if (em > 0 && little != compact) {
            compact = little;
            getStyleClass().remove("compact");
            if (little) {
                getStyleClass().add("compact");
            }
            all.forEach(sheet -> sheet.compact(little));
            layoutSheets();
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
        if (number < all.size()) {
            open = number;
            layoutSheets();
            hintsChanged.run();
            all.get(open).shown();
        }
    }

    public int openSheet() {
        return open;
    }

    private void goTo(MovementTest test) {
        open(0);
        screen.show(test.id());
    }

    private void layoutSheets() {
        sheets.getChildren().clear();
        edges.clear();
        summary = Labels.text(all.get(open).summary(), "second");
        HBox together = new HBox();
        for (int i = 0; i < all.size(); i++) {
            if (i == open) {
                sheets.getChildren().addAll(openHead(i), all.get(i).content());
                VBox.setVgrow(all.get(i).content(), Priority.ALWAYS);
            } else if (i < 4) {
                Button edge = edge(i);
                edges.put(i, edge);
                HBox.setHgrow(edge, Priority.ALWAYS);
                (compact ? together : sheets).getChildren().add(edge);
            }
        }
        if (compact) {
            sheets.getChildren().add(together);
        }
    }

    private Button edge(int number) {
        Sheet sheet = all.get(number);
        Region triangle = new Region();
        triangle.getStyleClass().add("triangle");
        Label name = Labels.text(sheet.name(), "edge-name");
        Label shortly = Labels.text(compact ? "" : sheet.summary(), "second");
        HBox row = new HBox(10, triangle, name, shortly, Labels.spring(), Labels.key("Ctrl " + (number + 1)));
        row.setAlignment(Pos.CENTER_LEFT);
        Button edge = new Button();
        edge.setGraphic(row);
        edge.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        edge.getStyleClass().add("edge");
        edge.setMaxWidth(Double.MAX_VALUE);
        row.prefWidthProperty().bind(edge.widthProperty().subtract(34));
        edge.setAccessibleText(sheet.name() + ". " + sheet.summary());
        edge.setOnAction(e -> open(number));
        return edge;
    }

    private HBox openHead(int number) {
        Sheet sheet = all.get(number);
        Region triangle = new Region();
        triangle.getStyleClass().addAll("triangle", "down");
        Label name = Labels.text(sheet.name(), "edge-name");
        HBox row = new HBox(10, triangle, name, summary, Labels.spring());
        row.getChildren().addAll(sheet.actions());
        row.getChildren().add(Labels.key("Ctrl " + (number + 1)));
        row.getStyleClass().add("open-head");
        return row;
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
        summary.setText(all.get(open).summary());
        edges.forEach((number, edge) -> {
            Sheet sheet = all.get(number);
            edge.setAccessibleText(sheet.name() + ". " + sheet.summary());
            if (!compact) {
                ((Label) ((HBox) edge.getGraphic()).getChildren().get(2)).setText(sheet.summary());
            }
        });
    }

    private void showHead() {
        Content person = client.draft().get().person();
        Label name = Labels.text(client.draft().get().name(), "title");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label facts = Labels.text(facts(person), "second");
        facts.setMinWidth(40);
        Button edit = Buttons.link(words.text("client.details"), this::editPerson);
        Button list = Buttons.link(words.text("client.all"), back);
        head.getChildren().setAll(name, facts, edit);
        client.evaluation().get().flatMap(Evaluation::visit).ifPresent(this::cautions);
        head.getChildren().addAll(Labels.spring(), list);
        client.undoName().ifPresent(what -> {
            Button undo = Buttons.withKey(Buttons.small(words.text("client.undo", what), client::undo), "Ctrl Z");
            head.getChildren().add(undo);
        });
    }

    private String facts(Content person) {
        List<String> facts = new ArrayList<>();
        person.value("/born").ifPresent(b -> facts.add(words.text("client.born", b)));
        person.value("/stature-cm").ifPresent(s -> facts.add(s.replaceFirst("\\.0$", "") + " cm"));
        person.value("/minutes-per-session").ifPresent(m -> facts.add(words.text("client.minutes", m)));
        return String.join(" · ", facts);
    }

    private void cautions(ClientVisit visit) {
        visit.conditions().stream().limit(3).forEach(condition -> {
            var known =
                    client.evaluator().knowledge().safetyRules().conditions().get(condition.id());
            String name = known == null ? condition.id() : known.name().best(List.of(words.language(), "en"));
            String side = condition.sides().size() == 1
                    ? ", "
                            + words.text("side."
                                    + condition.sides().iterator().next().id())
                    : "";
            head.getChildren().add(Labels.tag(name + side, "caution"));
        });
    }

    private void showMessages() {
        messages.getChildren().clear();
        client.clash().get().ifPresent(clash -> messages.getChildren().add(clash(clash)));
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
        messages.setPadding(
                messages.getChildren().isEmpty()
                        ? javafx.geometry.Insets.EMPTY
                        : new javafx.geometry.Insets(4, 16, 8, 16));
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
        if (open < 1) {
            return "guide.reading";
        }
        if (client.signed().isEmpty()) {
            return open < 2 ? "guide.program" : "guide.sign";
        }
        return "guide.handout";
    }

    /** Shows the guided first visit. */
    public void guide() {
        guide = Guide.ON;
        showMessages();
    }

    private Message clash(PartClash clash) {
        List<PartClash.Field> both = clash.fields().stream()
                .filter(f -> f.changedBy() == PartClash.ChangedBy.BOTH)
                .toList();
        PartClash.Field first = both.get(0);
        Button mine = Buttons.plain(words.text("clash.mine", first.mine().orElse("–")), () -> client.settle(true));
        Button theirs =
                Buttons.plain(words.text("clash.theirs", first.theirs().orElse("–")), () -> client.settle(false));
        return new Message(
                "",
                words.text("clash.title", clash.theirs().savedBy()),
                words.text("clash.more", first.path().substring(1).replace('/', ' '), both.size()),
                mine,
                theirs);
    }

    private void nextMissing() {
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
        Label wrong = Labels.text("", "bold");
        Button start = Buttons.main(words.text("visits.start"), () -> {
            Optional<LocalDate> date = date(day.getText());
            if (date.isEmpty()) {
                wrong.setText(words.text("visits.day-wrong"));
            } else {
                addVisit(date.get());
            }
        });
        start.setDefaultButton(true);
        Button cancel = Buttons.plain(words.text("start.back"), this::showMessages);
        cancel.setCancelButton(true);
        HBox row = new HBox(8, Labels.text(words.text("visits.day")), day, start, cancel, wrong);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("message");
        messages.getChildren().setAll(row);
        day.requestFocus();
        day.selectAll();
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (java.time.format.DateTimeParseException e) {
            return Optional.empty();
        }
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
        return all.get(open).hints();
    }

    void shown() {
        all.get(open).shown();
    }

    boolean pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.F8) {
            nextMissing();
            return true;
        }
        return all.get(open).pressed(key);
    }

    void close() {
        client.close();
    }
}
