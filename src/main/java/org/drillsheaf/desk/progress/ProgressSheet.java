package org.drillsheaf.desk.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.client.PracticeLog;
import org.drillsheaf.course.Course;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.client.WhileOpen;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.GateResult;
import org.drillsheaf.screen.TestChange;

/** What has changed: a chart for every test and side with its numbers beside it, the gate, and the practice as told. */
public final class ProgressSheet implements Sheet {
    private final ProgressModel model;
    private final Words words;
    private final TradeWords trade;
    private final VBox all = new VBox();
    private final ScrollPane scroll = new ScrollPane(all);
    private final Button report;
    private final Readiness reporting;

    public ProgressSheet(ClientCase client, IntConsumer open) {
        this.model = new ProgressModel(client);
        this.words = client.workplace().words();
        this.trade = model.trade();
        this.report = Buttons.plain(words.text("progress.report"), () -> open.accept(3));
        this.reporting = Readiness.of(report);
        all.getStyleClass().add("column-left");
        scroll.setFitToWidth(true);
        scroll.getStyleClass().addAll("sheet", "read");
        scroll.setAccessibleText(words.text("sheet.progress"));
        WhileOpen whileOpen = new WhileOpen(scroll, this::show);
        client.evaluation().addListener((of, old, now) -> whileOpen.changed());
    }

    private void show() {
        all.getChildren().clear();
        List<ProgressModel.Line> lines = model.lines();
        reporting.set(lines.isEmpty() ? Optional.of(words.text("progress.one-visit")) : Optional.empty());
        if (lines.isEmpty()) {
            all.getChildren().add(Labels.prose(words.text("progress.next-visit"), "second"));
            return;
        }
        Course course = model.course().orElseThrow();
        course.last().change().ifPresent(this::change);
        practice();
        all.getChildren().add(Labels.prose(words.text("progress.legend"), "small", "third"));
        LocalDate from = course.stops().get(0).visit().visit().date();
        LocalDate to = course.last().visit().visit().date();
        for (int i = 0; i < lines.size(); ) {
            ProgressModel.Line first = lines.get(i);
            boolean pair = i + 1 < lines.size() && lines.get(i + 1).test().equals(first.test());
            FlowPane sides = new FlowPane(28, 14, chart(first, from, to));
            sides.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT); // left stays on its own side of the window
            if (pair) {
                sides.getChildren().add(chart(lines.get(i + 1), from, to));
            }
            all.getChildren().add(sides);
            i += pair ? 2 : 1;
        }
    }

    private void change(Course.Change change) {
        VBox box = new VBox(4);
        box.getStyleClass().add("ruled");
        box.getChildren()
                .add(Labels.prose(
                        words.text(
                                "reading.next-step",
                                trade.step(change.decision().step()),
                                trade.phase(change.phaseBefore())),
                        "heading"));
        for (GateResult.Line line : change.gate().lines()) {
            String mark = line.truth().isTrue() ? "✓" : line.truth().isUnknown() ? "?" : "–";
            Label sign = Labels.text(mark, "evidence-mark", line.truth().isUnknown() ? "not-known" : "against");
            HBox.setHgrow(sign, Priority.NEVER);
            box.getChildren().add(new HBox(8, sign, Labels.prose(trade.sentence(line.words()))));
        }
        change.comparison().remarks().forEach(r -> box.getChildren().add(Labels.prose(trade.say(r), "second")));
        all.getChildren().add(box);
    }

    /** Days a week as told at each visit after the first. */
    private void practice() {
        List<String> told = new ArrayList<>();
        List<PracticeLog> logs = model.logs();
        for (int i = 1; i < logs.size(); i++) {
            PracticeLog log = logs.get(i);
            if (log.daysPerWeek().isPresent()) {
                String days = words.number(Double.toString(log.daysPerWeek().getAsDouble()));
                String effort = log.effort().isPresent()
                        ? ", " + words.text("progress.effort", log.effort().getAsInt())
                        : "";
                String pain = log.newPain().isPresent()
                        ? ", " + words.text("progress.pain", log.newPain().getAsInt())
                        : "";
                told.add(words.text("progress.days", days) + effort + pain);
            }
        }
        if (!told.isEmpty()) {
            HBox row = new HBox(
                    10, Labels.text(words.text("progress.practice"), "bold"), Labels.prose(String.join(" → ", told)));
            row.setAlignment(Pos.CENTER_LEFT);
            all.getChildren().add(row);
        }
    }

    private HBox chart(ProgressModel.Line line, LocalDate from, LocalDate to) {
        String name = trade.test(line.test(), line.side());
        GridPane table = new GridPane();
        table.setHgap(12);
        int row = 0;
        StringBuilder said = new StringBuilder(name);
        for (ProgressModel.Point point : line.points()) {
            Label day = Labels.text(words.day(point.date()), "small", "second");
            day.setMinWidth(Region.USE_PREF_SIZE);
            table.addRow(
                    row++,
                    day,
                    Labels.prose(point.words(), "small", "bold"),
                    Labels.prose(point.kind(), "small", "second"));
            said.append("; ").append(words.day(point.date())).append(' ').append(point.words());
        }
        String kind = line.change()
                .map(TestChange::kind)
                .map(k -> words.text(
                        "change." + k.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-')))
                .orElse("");
        HBox head = new HBox(8, Labels.prose(name, "bold")); // the side stands last, so the name may never be cut
        if (!kind.isEmpty()) {
            Label tag = Labels.tag(kind, kind.equals(words.text("change.better")) ? "inverted" : "outlined");
            tag.setMinWidth(Region.USE_PREF_SIZE);
            head.getChildren().add(tag);
        }
        VBox text = new VBox(4, head, table);
        line.change().ifPresent(c -> text.getChildren()
                .add(Labels.prose(words.text("progress.smallest", trade.say(c.smallestChange())), "small", "third")));
        text.getStyleClass().add("chart-words");
        String aim = line.aim().isPresent()
                ? trade.say(line.test().unit().amount(line.aim().getAsDouble()))
                : "";
        HBox box = new HBox(12, new ChartView(line, from, to, aim, said.toString()), text);
        box.getStyleClass().addAll("ruled", "chart-box");
        return box;
    }

    @Override
    public String name() {
        return words.text("sheet.progress");
    }

    @Override
    public String summary() {
        Optional<Course.Change> change = model.course().flatMap(c -> c.last().change());
        return change.map(c -> words.text(
                        "progress.summary",
                        words.day(c.comparison().before()),
                        count(c, TestChange.Kind.BETTER),
                        count(c, TestChange.Kind.WORSE)))
                .orElse(words.text("progress.one-visit"));
    }

    private static long count(Course.Change change, TestChange.Kind kind) {
        return change.comparison().changes().stream()
                .filter(c -> c.kind() == kind)
                .count();
    }

    @Override
    public Parent content() {
        return scroll;
    }

    @Override
    public List<Node> actions() {
        return List.of(report);
    }

    @Override
    public List<Page.Hint> hints() {
        return List.of(new Page.Hint("Ctrl 1 – 4", words.text("hint.sheets")));
    }

    @Override
    public void shown() {
        scroll.requestFocus();
    }

    @Override
    public boolean pressed(KeyEvent key) {
        return false;
    }
}
