package org.drillsheaf.desk.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.course.Course;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.client.WhileOpen;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.picture.Well;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.Contradiction;
import org.drillsheaf.screen.Evidence;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.NextTest;
import org.drillsheaf.screen.PresentationReading;
import org.drillsheaf.screen.Reading;
import org.drillsheaf.screen.Restriction;
import org.drillsheaf.screen.TestChange;
import org.drillsheaf.screen.Verdict;

/** The sheet with the reading: what speaks for and against, what would settle most, what does not fit, and the goals. */
public final class ReadingSheet implements Sheet {
    private final ReadingModel model;
    private final Words words;
    private final TradeWords trade;
    private final Consumer<MovementTest> goTo;
    private final IntConsumer open;
    private final VBox left = new VBox();
    private final VBox middle = new VBox();
    private final GoalsView goals;
    private final HBox columns;
    private final Set<String> unfolded = new HashSet<>();

    public ReadingSheet(ClientCase client, Consumer<MovementTest> goTo, IntConsumer open) {
        this.model = new ReadingModel(client);
        this.words = client.workplace().words();
        this.trade = model.trade();
        this.goTo = goTo;
        this.open = open;
        this.goals = new GoalsView(model, words);
        left.getStyleClass().add("column-left");
        middle.getStyleClass().add("column-mid");
        columns = new HBox();
        compact(false);
        columns.getStyleClass().add("sheet");
        WhileOpen whileOpen = new WhileOpen(columns, this::show);
        client.evaluation().addListener((of, old, now) -> whileOpen.changed());
    }

    private ScrollPane column(Region content, double share) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setFitToHeight(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setPrefWidth(100 * share);
        pane.setMinWidth(55 * share);
        HBox.setHgrow(pane, Priority.ALWAYS);
        return pane;
    }

    private void show() {
        left.getChildren().clear();
        middle.getChildren().clear();
        Optional<Reading> reading = model.reading();
        if (reading.isEmpty()) {
            left.getChildren().add(Labels.prose(words.text("reading.none"), "second"));
        } else if (reading.get().presentations().isEmpty()) {
            left.getChildren().add(Labels.prose(words.text("reading.safety-first"), "second"));
        } else {
            presentations(reading.get());
        }
        reading.ifPresent(this::middle);
        goals.show();
    }

    private void presentations(Reading reading) {
        for (Saying layer :
                List.of(reading.layers().underneathWords(), reading.layers().onTopWords())) {
            if (!layer.isEmpty()) {
                left.getChildren().add(Labels.prose(trade.sentence(layer), "second"));
            }
        }
        List<PresentationReading> heldFirst = reading.presentations().stream()
                .sorted(Comparator.comparing(PresentationReading::verdict))
                .toList();
        for (PresentationReading presentation : heldFirst) {
            if (!presentation.evidence().isEmpty()
                    || !presentation.openBecause().isEmpty()) {
                left.getChildren().add(presentation(presentation));
            }
        }
    }

    private VBox presentation(PresentationReading presentation) {
        int supports = presentation.evidence(Evidence.Kind.FOR).size();
        int against = presentation.evidence(Evidence.Kind.AGAINST).size();
        int unknown = presentation.evidence(Evidence.Kind.NOT_KNOWN).size();
        HBox head = new HBox(8, Labels.text(trade.presentation(presentation), "heading"), tag(presentation));
        head.setAlignment(Pos.CENTER_LEFT);
        HBox counts = new HBox(
                8,
                bars(supports, against, unknown),
                Labels.text(words.text("reading.counts", supports, against, unknown), "second", "small"));
        counts.setAlignment(Pos.CENTER_LEFT);
        VBox box = new VBox(head, counts);
        box.getStyleClass().add("ruled");
        boolean folded =
                presentation.verdict() == Verdict.NOT_SUPPORTED && !unfolded.contains(trade.presentation(presentation));
        if (folded) {
            Button show = Buttons.link(words.text("reading.show"), () -> {
                unfolded.add(trade.presentation(presentation));
                show();
            });
            show.setAccessibleText(words.text("reading.show") + ", " + trade.presentation(presentation));
            head.getChildren().addAll(Labels.spring(), show);
            return box;
        }
        for (Evidence.Kind kind : Evidence.Kind.values()) {
            presentation.evidence(kind).forEach(e -> box.getChildren().add(evidence(e)));
        }
        presentation.openBecause().forEach(why -> box.getChildren()
                .add(line("?", "not-known", words.text("reading.open", trade.say(why)))));
        return box;
    }

    private Label tag(PresentationReading presentation) {
        String shown = trade.verdict(presentation);
        if (model.isFading(presentation)) {
            return Labels.tag(words.text("reading.fading"), "outlined");
        }
        return switch (presentation.verdict()) {
            case SUPPORTED -> Labels.tag(shown, "inverted");
            case OPEN -> Labels.tag(shown, "dashed");
            case NOT_SUPPORTED -> Labels.tag(shown);
        };
    }

    private HBox bars(int supports, int against, int unknown) {
        HBox bars = new HBox(2);
        bars.setAlignment(Pos.CENTER_LEFT);
        for (int i = 0; i < supports + against + unknown; i++) {
            Region bar = new Region();
            bar.getStyleClass().add("weight-bar");
            bar.getStyleClass().add(i < supports ? "full" : i < supports + against ? "against" : "unknown");
            bars.getChildren().add(bar);
        }
        return bars;
    }

    private Node evidence(Evidence evidence) {
        HBox line =
                switch (evidence.kind()) {
                    case FOR -> line("+", "for", trade.say(evidence.words()));
                    case AGAINST -> line("−", "against", trade.say(evidence.words()));
                    case NOT_KNOWN -> line("?", "not-known", trade.say(evidence.words()));
                };
        Optional<MovementTest> test = model.testIn(evidence.words());
        test.ifPresent(t -> {
            Button go = Buttons.link(words.text("reading.to-screen"), () -> goTo.accept(t));
            go.setAccessibleText(words.text("reading.to-screen-of", trade.test(t)));
            line.getChildren().add(go);
        });
        return line;
    }

    private HBox line(String mark, String kind, String text) {
        Label sign = Labels.text(mark, "evidence-mark", kind);
        Label sentence = Labels.prose(Words.capital(text));
        HBox.setHgrow(sentence, Priority.ALWAYS);
        sentence.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(8, sign, sentence);
        line.setAlignment(Pos.BASELINE_LEFT);
        return line;
    }

    private void middle(Reading reading) {
        reading.nextTest().ifPresent(this::nextTest);
        reading.standIn().ifPresent(q -> middle.getChildren()
                .addAll(
                        Labels.text(words.text("reading.ask-instead", trade.test(q.barredTest())), "small", "second"),
                        Labels.prose(q.question())));
        if (!reading.contradictions().isEmpty()) {
            middle.getChildren().add(Labels.prose(words.text("reading.contradictions"), "bold"));
            reading.contradictions().forEach(c -> middle.getChildren().add(contradiction(c)));
        }
        model.change().ifPresent(this::since);
        besides(reading);
        if (middle.getChildren().isEmpty()) {
            middle.getChildren().add(Labels.prose(words.text("reading.nothing-else"), "second"));
        }
    }

    private void nextTest(NextTest next) {
        MovementTest test = next.test();
        Button take = Buttons.withKey(
                Buttons.main(words.text(next.repeat() ? "reading.repeat" : "reading.take"), () -> goTo.accept(test)),
                "Ctrl T");
        VBox right = new VBox(
                6,
                Labels.prose(trade.test(test), "heading"),
                Labels.text(words.count("reading.minutes", next.minutes()), "small", "second"),
                take);
        HBox row = new HBox(10);
        if (test.pose().isPresent()) {
            Well well = new Well(
                    words.text("how-to.picture", trade.test(test)),
                    model.client().workplace().pictures().test(test, false));
            well.setMinSize(110, 100);
            well.setPrefSize(120, 100);
            row.getChildren().add(well);
        }
        row.getChildren().add(right);
        VBox box = new VBox(
                8,
                Labels.text(words.text("reading.settles"), "small", "second"),
                row,
                Labels.prose(trade.say(next.reason())));
        box.getStyleClass().add("ruled");
        middle.getChildren().add(box);
    }

    private VBox contradiction(Contradiction contradiction) {
        HBox head = line("!", "round", trade.say(contradiction.findings()));
        VBox box = new VBox(5, head, Labels.prose(trade.say(contradiction.meaning()), "second"));
        HBox row = new HBox(8, Labels.prose(trade.say(contradiction.nextStep()), "bold"));
        box.getChildren().add(row);
        model.testIn(contradiction.findings()).ifPresent(test -> {
            Button again = Buttons.small(words.text("reading.measure-again"), () -> goTo.accept(test));
            again.setAccessibleText(words.text("reading.measure-again") + ", " + trade.test(test));
            box.getChildren().add(again);
        });
        box.getStyleClass().add("ruled");
        return box;
    }

    private void since(Course.Change change) {
        VBox box = new VBox(5);
        box.getChildren()
                .add(Labels.prose(
                        words.text(
                                "reading.since", words.day(change.comparison().before())),
                        "bold"));
        box.getChildren()
                .add(Labels.prose(words.text(
                        "reading.since-counts",
                        model.changed(TestChange.Kind.BETTER),
                        model.changed(TestChange.Kind.NO_REAL_CHANGE),
                        model.changed(TestChange.Kind.WORSE))));
        change.comparison().sideOrder().forEach(s -> box.getChildren().add(Labels.prose(trade.say(s), "second")));
        box.getChildren()
                .add(Labels.prose(
                        words.text(
                                "reading.next-step",
                                trade.step(change.decision().step()),
                                trade.phase(change.phaseBefore())),
                        "bold"));
        for (GateResult.Line line : change.gate().lines()) {
            String mark = line.truth().isTrue() ? "✓" : line.truth().isUnknown() ? "?" : "–";
            box.getChildren()
                    .add(line(mark, line.truth().isUnknown() ? "not-known" : "against", trade.say(line.words())));
        }
        box.getStyleClass().add("ruled");
        middle.getChildren().add(box);
    }

    private void besides(Reading reading) {
        List<String> sentences = new ArrayList<>();
        for (Restriction restriction : reading.restrictions()) {
            sentences.add(trade.say(restriction.words()) + " (" + trade.say(restriction.because()) + ")");
        }
        reading.remarks().forEach(r -> sentences.add(trade.say(r)));
        reading.safety().advice().forEach(a -> sentences.add(trade.say(a)));
        if (sentences.isEmpty()) {
            return;
        }
        middle.getChildren().add(Labels.prose(words.text("reading.besides"), "bold"));
        sentences.stream().distinct().forEach(s -> middle.getChildren().add(Labels.prose(s, "second")));
    }

    @Override
    public String name() {
        return words.text("sheet.reading");
    }

    @Override
    public String summary() {
        Optional<Reading> reading = model.reading();
        if (reading.isEmpty() || reading.get().presentations().isEmpty()) {
            return words.text("reading.summary-none");
        }
        Optional<PresentationReading> leading = reading.get().leading();
        if (leading.isPresent()) {
            return words.text(
                    "reading.summary-held",
                    trade.presentation(leading.get()),
                    leading.get().evidence(Evidence.Kind.FOR).size(),
                    leading.get().evidence(Evidence.Kind.AGAINST).size());
        }
        return words.text("reading.summary-open", reading.get().open().size());
    }

    @Override
    public Parent content() {
        return columns;
    }

    @Override
    public void compact(boolean little) {
        columns.getChildren().clear();
        if (little) {
            columns.getChildren().add(column(new VBox(left, middle, goals), 12));
        } else {
            columns.getChildren().addAll(column(left, 5), column(middle, 3.2), column(goals, 4.6));
        }
    }

    @Override
    public List<Node> actions() {
        return List.of(Buttons.withKey(Buttons.plain(words.text("reading.build"), () -> open.accept(2)), "Ctrl B"));
    }

    @Override
    public List<Page.Hint> hints() {
        return List.of(
                new Page.Hint("F6", words.text("hint.group")),
                new Page.Hint("0 – 5", words.text("hint.weight")),
                new Page.Hint("Ctrl T", words.text("hint.take")),
                new Page.Hint("Ctrl B", words.text("hint.build")));
    }

    @Override
    public void shown() {
        columns.applyCss();
        columns.layout();
        goals.ready();
    }

    @Override
    public boolean pressed(KeyEvent key) {
        if (key.isShortcutDown() && key.getCode() == KeyCode.T) {
            model.reading().flatMap(Reading::nextTest).ifPresent(n -> goTo.accept(n.test()));
            return true;
        }
        if (key.isShortcutDown() && key.getCode() == KeyCode.B) {
            open.accept(2);
            return true;
        }
        return false;
    }
}
