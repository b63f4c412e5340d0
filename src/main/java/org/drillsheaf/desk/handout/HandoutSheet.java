package org.drillsheaf.desk.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.client.WhileOpen;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
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
    private final PaperChoices choices;
    private final WayOut way;
    private final WhileOpen whileOpen;
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
        this.choices = new PaperChoices(words, choice, this::choose);
        this.way = new WayOut(model, this::withPaper, this::lookForLast);
        middle.getChildren().add(pages);
        middle.getStyleClass().add("pages");
        pane.setCenter(middle);
        pane.setRight(side());
        pane.getStyleClass().add("sheet");
        client.evaluation().addListener((of, old, now) -> changed());
        client.built().addListener((of, old, now) -> changed());
        client.kept().addListener((of, old, now) -> changed());
        whileOpen = new WhileOpen(pane, this::ready);
        lookForLast();
    }

    private Node side() {
        VBox all = new VBox(12, choices, way, new NoteView(model.client()));
        all.getStyleClass().add("choices");
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        return scroll;
    }

    private void choose(HandoutModel.Choice wanted) {
        waiting = Optional.empty();
        choice = wanted;
        ready();
        make();
    }

    private void changed() {
        whileOpen.changed();
        if (visible && pane.getScene() != null) {
            make();
        } else {
            made = Optional.empty();
        }
    }

    private void ready() {
        way.ready(model.notPrinted(choice.kind()));
        choices.ready(model::notShown, model.isLarge(choice));
    }

    private void make() {
        if (made.isPresent() && model.isBuilding()) {
            way.tell(words.text("handout.making")); // the pages stay until there are newer ones
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
        way.tell(words.text("handout.making"));
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
                e -> way.tell(String.valueOf(e.getMessage())));
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
            way.tell(model.notPrinted(choice.kind())
                    .orElse(
                            isNewest(painted.made())
                                    ? words.count(
                                            "handout.ready", painted.images().size())
                                    : words.text("handout.making")));
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
            way.tell("");
        }
    }

    /** The paper in sight, when it may leave the house. */
    private Optional<HandoutModel.Made> outgoing() {
        return made.filter(m -> m.choice().equals(choice))
                .filter(this::isNewest)
                .filter(m -> model.notPrinted(choice.kind()).isEmpty());
    }

    /** Whether nothing was decided since it was made; else a newer one is on its way. */
    private boolean isNewest(HandoutModel.Made paper) {
        return model.source()
                .filter(s -> s.evaluation() == paper.source().evaluation()
                        && s.signed().equals(paper.source().signed()))
                .isPresent();
    }

    /** Uses the paper in sight; one that is still being made is used when it is there. */
    private void withPaper(Consumer<HandoutModel.Made> use) {
        Optional<HandoutModel.Made> paper = outgoing();
        waiting =
                paper.isPresent() || model.notPrinted(choice.kind()).isPresent() ? Optional.empty() : Optional.of(use);
        paper.ifPresent(use);
    }

    private void lookForLast() {
        workplace
                .background()
                .run(
                        model::handedOut,
                        papers -> lastOut = papers.stream().findFirst(),
                        e -> way.tell(String.valueOf(e.getMessage())));
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
        way.lookForPrinters();
        pane.applyCss();
        pane.layout();
        choices.focus();
    }

    @Override
    public void locked() {
        made = Optional.empty();
        pages.show(List.of());
    }

    @Override
    public boolean pressed(KeyEvent key) {
        if (key.isShortcutDown() && key.getCode() == KeyCode.P) {
            way.firePrint();
        } else if (key.isShortcutDown() && key.isShiftDown() && key.getCode() == KeyCode.S) {
            way.fireSave();
        } else if (key.getCode() == KeyCode.PAGE_DOWN || key.getCode() == KeyCode.PAGE_UP) {
            pages.turn(key.getCode() == KeyCode.PAGE_UP);
        } else {
            return false;
        }
        return true;
    }
}
