package org.drillsheaf.desk.incoming;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.beans.Observable;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.Problem;
import org.drillsheaf.desk.drill.PlaceName;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.incoming.IncomingChange.Choice;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.look.WorkBar;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.desk.work.Going;
import org.drillsheaf.exchange.DrillChange;
import org.drillsheaf.exchange.merge.FieldChange;
import org.jspecify.annotations.Nullable;

/** What a file of drills would change, drill by drill; nothing is written before the coach says so. */
public final class ImportView extends BorderPane {
    /** With less room, in em, what was decided stands below the name. */
    private static final double NARROW_LIST = 26;

    /** Room beside what stands in a row of the list, in em: the scroll bar and the padding. */
    private static final double BESIDE_ROW = 3.4;

    private static final int MOST_PROBLEMS = 4;
    private static final double LIST_SHARE = 0.42;

    private final ImportModel model;
    private final Words words;
    private final Background background;
    private final Runnable changed;
    private final Runnable close;
    private final Map<String, Choice> choices = new HashMap<>();
    private final ListView<IncomingChange> list = new ListView<>();
    private final VBox detail = new VBox(10);
    private final VBox top = new VBox(8);
    private final Label counted = Labels.prose("");
    private final Button bringIn;
    private final Readiness bringing;
    private final WorkBar bar;

    /**
     * @param changed is told when drills came in, or went again
     * @param close leaves the view
     * @param keysChanged is told when other keys count
     */
    public ImportView(
            ImportModel model,
            Words words,
            Background background,
            Runnable changed,
            Runnable close,
            Runnable keysChanged) {
        this.model = model;
        this.words = words;
        this.background = background;
        this.changed = changed;
        this.close = close;
        this.bar = new WorkBar(words, background);
        this.bringIn = Buttons.main(words.text("import.none"), this::bringIn);
        this.bringing = Readiness.of(bringIn);
        getStyleClass().addAll("sheet", "import");
        list.setAccessibleText(words.text("import.list"));
        list.setCellFactory(of -> new Row());
        list.getItems().addListener((Observable of) -> keysChanged.run());
        list.getSelectionModel().selectedItemProperty().addListener((of, before, now) -> show(now));
        list.setOnKeyPressed(key -> {
            if (key.getCode() == KeyCode.SPACE || key.getCode() == KeyCode.ENTER) {
                IncomingChange at = list.getSelectionModel().getSelectedItem();
                if (at != null) {
                    choose(at, choice(at) == Choice.LEAVE ? Choice.TAKE : Choice.LEAVE);
                }
                key.consume();
            }
        });
        detail.getStyleClass().add("import-detail");
        ScrollPane scroll = new ScrollPane(detail);
        scroll.setFitToWidth(true);
        top.getStyleClass().add("import-top");
        setTop(top);
        setCenter(scroll);
        setLeft(list);
        list.prefWidthProperty().bind(widthProperty().multiply(LIST_SHARE));
        // After the layout: whether what was decided stands below the name depends on the width.
        list.widthProperty().addListener((of, before, now) -> background.show(list::refresh));
    }

    /** The keys of the list; none while there is nothing to be taken or left. */
    public List<Page.Hint> hints() {
        return list.getItems().isEmpty()
                ? List.of()
                : List.of(
                        new Page.Hint("↑ ↓", words.text("hint.between-drills")),
                        new Page.Hint(words.text("key.space"), words.text("import.hint")));
    }

    /** Reads a file and shows what it would do. */
    public void look(Path file) {
        top.getChildren().setAll(head(), bar);
        bar.run(words.text("import.reading", file.getFileName()), going -> model.look(file, going), this::show, e -> {
            if (e instanceof Going.Stopped) {
                close.run();
            } else {
                tell(String.valueOf(e.getMessage()));
            }
        });
    }

    private HBox head() {
        Button leave = Buttons.plain(words.text("import.close"), close);
        HBox head = new HBox(10, Labels.text(words.text("import.title"), "title"), Labels.spring(), leave);
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private void show(ImportModel.Preview preview) {
        choices.clear();
        preview.changes().forEach(c -> choices.put(c.id(), c.clashes() ? Choice.LEAVE : Choice.TAKE));
        list.getItems().setAll(preview.changes());
        Button all = Buttons.small(words.text("import.take-all"), () -> every(Choice.TAKE));
        Button none = Buttons.small(words.text("import.leave-all"), () -> every(Choice.LEAVE));
        HBox row = new HBox(10, counted, Labels.spring(), all, none, bringIn);
        row.setAlignment(Pos.CENTER_LEFT);
        top.getChildren().setAll(head(), bar);
        boolean isRefused = preview.changes().isEmpty() && preview.same() == 0;
        if (!isRefused) {
            top.getChildren().add(Labels.prose(summary(preview), "second"));
        }
        if (!preview.changes().isEmpty()) {
            top.getChildren().add(row);
        }
        preview.problems().stream().limit(MOST_PROBLEMS).forEach(p -> top.getChildren()
                .add(refused(p, preview.file())));
        if (preview.problems().size() > MOST_PROBLEMS) {
            top.getChildren()
                    .add(Labels.text(words.text(
                            "import.more-problems", preview.problems().size() - MOST_PROBLEMS)));
        }
        count();
        list.getSelectionModel().selectFirst();
        list.requestFocus();
    }

    /** What cannot come in, and why; the file is named without its folder, which the coach has just chosen. */
    private static Message refused(Problem problem, Path file) {
        String folder = file.getParent() == null ? "" : file.getParent() + File.separator;
        String place = problem.file().replace(folder, "") + (problem.line() > 0 ? ", " + problem.line() : "");
        return new Message("caution", place + ": " + problem.what() + ".", problem.remedy() + ".");
    }

    private String summary(ImportModel.Preview preview) {
        List<IncomingChange> changes = preview.changes();
        long added = changes.stream()
                .filter(c -> c.change().kind() == DrillChange.Kind.ADDED)
                .count();
        long clashing = changes.stream().filter(IncomingChange::clashes).count();
        return words.text(
                "import.summary",
                preview.file().getFileName(),
                added,
                changes.size() - added - clashing,
                clashing,
                preview.same());
    }

    private Choice choice(IncomingChange of) {
        return choices.getOrDefault(of.id(), Choice.LEAVE);
    }

    private void every(Choice choice) {
        list.getItems().forEach(c -> choices.put(c.id(), choice));
        list.refresh();
        show(list.getSelectionModel().getSelectedItem());
        count();
    }

    private void choose(IncomingChange of, Choice choice) {
        choices.put(of.id(), choice);
        list.refresh();
        show(of);
        count();
    }

    private List<DrillChange> chosen() {
        return list.getItems().stream().flatMap(c -> c.of(choice(c)).stream()).toList();
    }

    private void count() {
        int taken = chosen().size();
        bringIn.setText(taken == 0 ? words.text("import.none") : words.count("import.bring-in", taken));
        bringing.set(taken == 0 ? Optional.of(words.text("import.nothing-chosen")) : Optional.empty());
        counted.setText(words.text("import.chosen", taken, list.getItems().size()));
    }

    private void show(@Nullable IncomingChange of) {
        detail.getChildren().clear();
        if (of == null) {
            return;
        }
        Segments<Choice> segments = new Segments<>(
                words.text("import.decide", of.change().name()),
                of.choices(),
                c -> words.text(
                        "import.choice-" + c.name().toLowerCase(Locale.ROOT).replace('_', '-')),
                c -> choose(of, c));
        segments.take(choice(of));
        detail.getChildren()
                .addAll(
                        Labels.text(of.change().name(), "heading"),
                        Labels.text(of.id() + " · " + kind(of), "second"),
                        segments);
        if (of.clashes()) {
            detail.getChildren()
                    .add(new Message("caution", words.text("import.clash"), words.text("import.clash-more")));
        }
        if (of.change().kind() == DrillChange.Kind.ADDED) {
            detail.getChildren().add(Labels.prose(words.text("import.is-new"), "second"));
        } else {
            detail.getChildren().add(differences(of.fields(choice(of))));
        }
    }

    private GridPane differences(List<FieldChange> fields) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("difference-grid");
        for (double share : new double[] {22, 39, 39}) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(share);
            grid.getColumnConstraints().add(column);
        }
        grid.addRow(
                0,
                Labels.text(words.text("versions.field"), "third", "small"),
                Labels.text(words.text("versions.now"), "third", "small"),
                Labels.text(words.text("import.then"), "third", "small"));
        int row = 1;
        for (FieldChange field : fields) {
            List<Region> cells = List.of(
                    Labels.prose(PlaceName.of(List.of(field.field().split("\\.")), words), "second"),
                    Labels.proseInAnyScript(FieldChange.shown(field.old())),
                    Labels.proseInAnyScript(FieldChange.shown(field.fresh()), "bold"));
            cells.forEach(cell -> GridPane.setValignment(cell, VPos.TOP));
            grid.addRow(row++, cells.toArray(new Region[0]));
        }
        return grid;
    }

    private String kind(IncomingChange of) {
        return words.text(
                of.clashes()
                        ? "import.kind-clash"
                        : "import.kind-" + of.change().kind().name().toLowerCase(Locale.ROOT));
    }

    private void bringIn() {
        List<DrillChange> chosen = chosen();
        bar.run(
                words.count("import.writing", chosen.size()),
                going -> model.bringIn(chosen),
                this::done,
                e -> tell(String.valueOf(e.getMessage())));
    }

    private void done(ImportModel.Done done) {
        List<javafx.scene.Node> said = new ArrayList<>();
        if (done.problems().isEmpty()) {
            Button back = Buttons.plain(words.text("import.take-back"), () -> takeBack(done));
            said.add(new Message(
                    "remark", words.count("import.done", done.before().size()), words.text("import.done-more"), back));
            list.getItems().clear();
            detail.getChildren().clear();
        } else {
            done.problems().forEach(p -> said.add(new Message("caution", p.message(), "")));
        }
        top.getChildren().setAll(head(), bar);
        top.getChildren().addAll(said);
        changed.run();
    }

    private void takeBack(ImportModel.Done done) {
        bar.run(
                words.text("import.taking-back"),
                going -> model.takeBack(done),
                problems -> {
                    top.getChildren().setAll(head(), bar);
                    if (problems.isEmpty()) {
                        tell(words.text("import.taken-back"));
                    }
                    problems.forEach(p -> top.getChildren().add(new Message("caution", p.message(), "")));
                    changed.run();
                },
                e -> tell(String.valueOf(e.getMessage())));
    }

    private void tell(String text) {
        top.getChildren().add(new Message("remark", text, ""));
    }

    /** One drill: its name, what happens to it, and what was decided. */
    private final class Row extends ListCell<IncomingChange> {
        private Row() {
            // Not in the middle of the styling that changes it.
            fontProperty().addListener((of, before, now) -> background.show(() -> updateItem(getItem(), isEmpty())));
        }

        private double roomInRow() {
            return list.getWidth() - BESIDE_ROW * getFont().getSize();
        }

        /** A long name breaks into lines, and its row grows with them. */
        @Override
        protected double computePrefHeight(double width) {
            return getGraphic() instanceof Region row
                    ? row.prefHeight(roomInRow()) + snappedTopInset() + snappedBottomInset()
                    : super.computePrefHeight(width);
        }

        @Override
        protected void updateItem(@Nullable IncomingChange item, boolean empty) {
            super.updateItem(item, empty);
            setText(null);
            if (item == null || empty) {
                setGraphic(null);
                setAccessibleText(null);
                return;
            }
            boolean taken = choice(item) != Choice.LEAVE;
            Label name = Labels.prose(item.change().name(), "bold");
            HBox.setHgrow(name, Priority.SOMETIMES);
            Label decided =
                    Labels.tag(words.text(taken ? "import.taken" : "import.left"), taken ? "inverted" : "dashed");
            Label kind = Labels.tag(kind(item), item.clashes() ? "caution" : "outlined");
            boolean narrow = list.getWidth() < NARROW_LIST * getFont().getSize();
            Region row = narrow ? below(name, kind, decided) : beside(name, kind, decided);
            row.setMaxWidth(Double.MAX_VALUE);
            row.setPrefWidth(roomInRow());
            decided.setOnMouseClicked(e -> choose(item, taken ? Choice.LEAVE : Choice.TAKE));
            setGraphic(row);
            setAccessibleText(item.change().name() + ", " + kind(item) + ", "
                    + words.text(taken ? "import.taken" : "import.left"));
        }

        private static VBox below(Label name, Label kind, Label decided) {
            return new VBox(4, name, new FlowPane(8, 4, kind, decided));
        }

        private static HBox beside(Label name, Label kind, Label decided) {
            HBox line = new HBox(8, name, Labels.spring(), kind, decided);
            line.setAlignment(Pos.CENTER_LEFT);
            return line;
        }
    }
}
