package org.drillsheaf.desk.handout;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.client.Paper;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.handout.page.DocumentKind;
import org.drillsheaf.store.record.HandedOut;

/** The sheet with the papers: the very pages that are printed, which paper, and the way out of the house. */
public final class HandoutSheet implements Sheet {
    private final HandoutModel model;
    private final Workplace workplace;
    private final Words words;
    private final Lane making;
    private final PagesView pages;
    private final StackPane middle = new StackPane();
    private final BorderPane pane = new BorderPane();
    private final Map<DocumentKind, RadioButton> kinds = new EnumMap<>(DocumentKind.class);
    private final ComboBox<String> language = new ComboBox<>();
    private final ComboBox<String> printer = new ComboBox<>();
    private final Segments<Boolean> size;
    private final Label state = Labels.prose("", "small", "second");
    private final Button print;
    private final Button save;
    private final Button mail;
    private final Readiness printing;
    private final Readiness saving;
    private final Readiness mailing;
    private HandoutModel.Choice choice;
    private Optional<HandoutModel.Made> made = Optional.empty();
    private Optional<HandedOut> lastOut = Optional.empty();
    private Optional<Consumer<HandoutModel.Made>> waiting = Optional.empty();
    private boolean visible;

    private record Painted(HandoutModel.Made made, List<Image> images) {}

    public HandoutSheet(ClientCase client) {
        this.model = new HandoutModel(client);
        this.workplace = client.workplace();
        this.words = workplace.words();
        this.making = new Lane(workplace.background());
        this.pages = new PagesView(words);
        this.choice = model.first();
        this.size = new Segments<>(
                words.text("handout.size"),
                List.of(false, true),
                large -> words.text(large ? "handout.large" : "handout.standard"),
                large -> choose(choice.large(large)));
        this.print = Buttons.withKey(Buttons.main(words.text("handout.print"), this::print), "Ctrl P");
        this.save = Buttons.withKey(Buttons.plain(words.text("handout.save"), this::save), "Ctrl Shift S");
        this.mail = Buttons.plain(words.text("handout.mail"), this::mail);
        this.printing = Readiness.of(print);
        this.saving = Readiness.of(save);
        this.mailing = Readiness.of(mail);
        middle.getChildren().add(pages);
        middle.getStyleClass().add("pages");
        pane.setCenter(middle);
        pane.setRight(choices());
        pane.getStyleClass().add("sheet");
        client.evaluation().addListener((of, old, now) -> changed());
        client.built().addListener((of, old, now) -> changed());
        client.kept().addListener((of, old, now) -> changed());
        lookForLast();
        ready();
    }

    private Node choices() {
        ToggleGroup group = new ToggleGroup();
        VBox list = new VBox(6, Labels.text(words.text("handout.document"), "small", "second"));
        for (DocumentKind kind : HandoutModel.KINDS) {
            RadioButton button = new RadioButton(words.text("document." + kind.id()));
            button.setToggleGroup(group);
            button.setSelected(kind == choice.kind());
            button.setOnAction(e -> choose(choice.with(kind)));
            kinds.put(kind, button);
            list.getChildren().add(button);
        }
        GridPane grid = new GridPane();
        grid.getStyleClass().addAll("form", "narrow-rule");
        language.getItems().add("");
        language.getItems().addAll(HandoutModel.LANGUAGES);
        language.setConverter(
                new Named<>(tag -> tag.isEmpty() ? words.text("handout.own-language") : words.text("language." + tag)));
        language.setValue("");
        language.setAccessibleText(words.text("look.language"));
        language.setOnAction(
                e -> choose(choice.in(Optional.of(language.getValue()).filter(l -> !l.isEmpty()))));
        Segments<Paper> paper = new Segments<>(
                words.text("handout.paper"),
                List.of(Paper.values()),
                p -> words.text("paper." + p.name().toLowerCase(java.util.Locale.ROOT)),
                p -> choose(choice.on(p)));
        paper.take(choice.paper());
        row(grid, 0, "look.language", language);
        row(grid, 1, "handout.paper", paper);
        row(grid, 2, "handout.size", size);
        printer.setAccessibleText(words.text("handout.printer"));
        printer.setPromptText(words.text("handout.printer"));
        printer.setMaxWidth(Double.MAX_VALUE);
        VBox out = new VBox(
                8,
                printer,
                print,
                new HBox(8, save, mail),
                state,
                Labels.prose(words.text("handout.keeps"), "small", "third"));
        print.setMaxWidth(Double.MAX_VALUE);
        VBox all = new VBox(12, list, grid, out, new NoteView(model.client()));
        all.getStyleClass().add("choices");
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        return scroll;
    }

    private void row(GridPane grid, int row, String key, Node field) {
        Label label = Labels.text(words.text(key), "second");
        label.setLabelFor(field);
        grid.addRow(row, label, field);
    }

    private void choose(HandoutModel.Choice wanted) {
        waiting = Optional.empty();
        choice = wanted;
        ready();
        make();
    }

    private void changed() {
        ready();
        if (visible && pane.getScene() != null) {
            make();
        } else {
            made = Optional.empty();
        }
    }

    private void ready() {
        size.take(model.isLarge(choice));
        Optional<String> reason = model.notPrinted(choice.kind());
        boolean noPrinter = printer.getItems().isEmpty();
        printing.set(reason.or(() -> noPrinter ? Optional.of(words.text("handout.no-printer")) : Optional.empty()));
        saving.set(reason);
        mailing.set(reason);
        kinds.forEach((kind, button) -> {
            Optional<String> not = model.notShown(kind);
            button.setAccessibleHelp(not.orElse(null));
            button.setTooltip(not.map(javafx.scene.control.Tooltip::new).orElse(null));
            button.setOpacity(not.isPresent() ? 0.6 : 1);
        });
        reason.ifPresentOrElse(r -> state.setText(r), () -> state.setText(""));
    }

    private void make() {
        if (made.isPresent() && model.isBuilding()) {
            state.setText(words.text("handout.making")); // the pages stay until there are newer ones
            return;
        }
        Optional<String> not = model.notShown(choice.kind());
        if (not.isPresent()) {
            made = Optional.empty();
            Message message =
                    new Message("remark", words.text("document." + choice.kind().id()), not.get());
            message.setMaxSize(440, USE_PREF);
            middle.getChildren().setAll(message);
            return;
        }
        Optional<HandoutModel.Source> source = model.source();
        if (source.isEmpty()) {
            return;
        }
        HandoutModel.Choice wanted = choice;
        if (made.isPresent()) {
            middle.getChildren().setAll(pages);
        } else {
            middle.getChildren().setAll(Labels.prose(words.text("handout.making"), "second"));
        }
        state.setText(words.text("handout.making"));
        making.run(
                () -> {
                    HandoutModel.Made paper = model.make(wanted, source.get());
                    return new Painted(
                            paper,
                            paper.pdf().isPresent()
                                    ? PagesView.paint(paper.pdf().get())
                                    : List.of());
                },
                this::arrived,
                e -> state.setText(String.valueOf(e.getMessage())));
    }

    private static final double USE_PREF = javafx.scene.layout.Region.USE_PREF_SIZE;

    private void arrived(Painted painted) {
        if (!painted.made().choice().equals(choice)) {
            return;
        }
        made = Optional.of(painted.made()).filter(m -> m.pdf().isPresent());
        if (made.isPresent()) {
            pages.show(painted.images());
            middle.getChildren().setAll(pages);
            state.setText(model.notPrinted(choice.kind())
                    .orElse(words.count("handout.ready", painted.images().size())));
            outgoing().ifPresent(paper -> {
                Optional<Consumer<HandoutModel.Made>> asked = waiting;
                waiting = Optional.empty();
                asked.ifPresent(use -> use.accept(paper));
            });
        } else {
            VBox told = new VBox(8);
            painted.made().problems().stream().limit(3).forEach(p -> told.getChildren()
                    .add(new Message("caution", p.what() + ".", p.remedy() + ".")));
            told.setMaxSize(480, USE_PREF);
            middle.getChildren().setAll(told);
            state.setText("");
        }
    }

    /** The paper in sight, when it may leave the house. */
    private Optional<HandoutModel.Made> outgoing() {
        return made.filter(m -> m.choice().equals(choice))
                .filter(m -> model.source()
                        .filter(s -> s.evaluation() == m.source().evaluation()
                                && s.signed().equals(m.source().signed()))
                        .isPresent())
                .filter(m -> model.notPrinted(choice.kind()).isEmpty());
    }

    /** Uses the paper in sight; one that is still being made is used when it is there. */
    private void withPaper(Consumer<HandoutModel.Made> use) {
        Optional<HandoutModel.Made> paper = outgoing();
        waiting =
                paper.isPresent() || model.notPrinted(choice.kind()).isPresent() ? Optional.empty() : Optional.of(use);
        paper.ifPresent(use);
    }

    private void print() {
        withPaper(paper -> {
            String name = printer.getValue();
            state.setText(words.text("handout.printing"));
            workplace
                    .background()
                    .run(
                            () -> {
                                Printers.print(
                                        name,
                                        model.fileName(paper.choice().kind(), ""),
                                        paper.pdf().orElseThrow());
                                model.keep(paper);
                                return true;
                            },
                            done -> out(words.text("handout.printed", name)),
                            this::failed);
        });
    }

    private void save() {
        withPaper(paper -> workplace
                .dialogs()
                .save(words.text("handout.save"), model.fileName(paper.choice().kind(), ".pdf"))
                .ifPresent(file -> write(paper, file, paper.pdf().orElseThrow())));
    }

    private void mail() {
        withPaper(paper -> workplace
                .dialogs()
                .save(words.text("handout.mail"), model.fileName(paper.choice().kind(), ".eml"))
                .ifPresent(file -> write(
                        paper,
                        file,
                        MailFile.of(
                                words.text("mail.subject"),
                                words.text("mail.text", workplace.coach()),
                                model.fileName(paper.choice().kind(), ".pdf"),
                                paper.pdf().orElseThrow()))));
    }

    private void write(HandoutModel.Made paper, Path file, byte[] content) {
        workplace
                .background()
                .run(
                        () -> {
                            model.save(paper, file, content);
                            return file;
                        },
                        written -> out(words.text("handout.saved", written.toString())),
                        this::failed);
    }

    private void out(String told) {
        state.setText(told);
        lookForLast();
    }

    private void failed(Exception failure) {
        state.setText(words.text("handout.failed", String.valueOf(failure.getMessage())));
    }

    private void lookForLast() {
        workplace
                .background()
                .run(
                        model::handedOut,
                        papers -> lastOut = papers.stream().findFirst(),
                        e -> state.setText(String.valueOf(e.getMessage())));
    }

    @Override
    public String name() {
        return words.text("sheet.handout");
    }

    @Override
    public String summary() {
        Optional<String> not = model.notPrinted(DocumentKind.CLIENT_HANDOUT);
        if (not.isPresent()) {
            return not.get();
        }
        return lastOut.map(
                        o -> words.text("handout.summary-out", words.text("document." + o.kind()), words.day(o.date())))
                .orElse(words.text("handout.summary-ready"));
    }

    @Override
    public Parent content() {
        return pane;
    }

    @Override
    public List<Node> actions() {
        Segments<Integer> beside = new Segments<>(
                words.text("handout.view"),
                List.of(2, 1),
                n -> words.text(n == 2 ? "handout.two-pages" : "handout.one-page"),
                pages::beside);
        beside.take(2);
        HBox box = new HBox(beside);
        box.setAlignment(Pos.CENTER);
        List<Node> actions = new ArrayList<>();
        actions.add(box);
        return actions;
    }

    @Override
    public List<Page.Hint> hints() {
        return List.of(
                new Page.Hint("PgDn", words.text("hint.next-page")),
                new Page.Hint("Ctrl P", words.text("hint.print")),
                new Page.Hint("Ctrl Shift S", words.text("handout.save")));
    }

    @Override
    public void shown() {
        visible = true;
        model.client().buildNow();
        model.readHouseAgain();
        ready();
        make();
        if (printer.getItems().isEmpty()) {
            workplace
                    .background()
                    .run(
                            Printers::names,
                            names -> {
                                printer.getItems().setAll(names);
                                names.stream().findFirst().ifPresent(printer::setValue);
                                ready();
                            },
                            this::failed);
        }
        RadioButton chosen = kinds.get(choice.kind());
        if (chosen != null) {
            pane.applyCss();
            pane.layout();
            chosen.requestFocus();
        }
    }

    @Override
    public void locked() {
        made = Optional.empty();
        pages.show(List.of());
    }

    @Override
    public boolean pressed(KeyEvent key) {
        if (key.isShortcutDown() && key.getCode() == KeyCode.P) {
            print.fire();
        } else if (key.isShortcutDown() && key.isShiftDown() && key.getCode() == KeyCode.S) {
            save.fire();
        } else if (key.getCode() == KeyCode.PAGE_DOWN || key.getCode() == KeyCode.PAGE_UP) {
            pages.turn(key.getCode() == KeyCode.PAGE_UP);
        } else {
            return false;
        }
        return true;
    }
}
