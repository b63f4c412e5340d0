package org.drillsheaf.desk.screen;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.client.ClientCase;
import org.drillsheaf.desk.client.Evaluation;
import org.drillsheaf.desk.client.Sheet;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.IntoSight;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.FindingKind;
import org.drillsheaf.screen.MovementTest;
import org.jspecify.annotations.Nullable;

/** The sheet on which the screen is typed: safety questions first, then one table of all tests. */
public final class ScreenSheet implements Sheet, ScreenRow.Table {
    /** So long a field has the focus before its how-to is shown: who goes on typing need not wait for it at every field. */
    private static final Duration PAUSE = Duration.ofMillis(150);

    /** Dots of the rows above and below that are seen beside the one in work. */
    private static final double NEIGHBOURS = 45;

    private final ScreenModel model;
    private final Words words;
    private final BorderPane pane = new BorderPane();
    private final ScrollPane scroll = new ScrollPane();
    private final HowToView howTo;
    private final ScrollPane side;
    private final SafetyView safety;
    private final RunOnKeys runOn = new RunOnKeys();
    private final List<ScreenRow> rows = new ArrayList<>();
    private @Nullable ScreenEntry looksAt;
    private @Nullable Node cameFrom;
    private boolean waits;
    private boolean roomy = true;
    private boolean compact;

    /** @param keysChanged is told when other keys count: those of the questions, or those of the table */
    public ScreenSheet(ClientCase client, Runnable keysChanged) {
        this.model = new ScreenModel(client);
        this.words = client.workplace().words();
        this.howTo = new HowToView(model, words);
        this.safety = new SafetyView(model, words, () -> {
            runOn.answered();
            focus(rows.get(0).cells().get(0));
        });
        VBox table = new VBox();
        table.getStyleClass().add("screen-table");
        table.getChildren().add(head());
        String before = "";
        for (MovementTest test : model.tests()) {
            String position = ScreenModel.position(test);
            ScreenRow row = new ScreenRow(model, words, test, !position.equals(before), this);
            before = position;
            rows.add(row);
            table.getChildren().add(row);
        }
        VBox all = new VBox(safety, table);
        scroll.setContent(all);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("sheet");
        side = new ScrollPane(howTo);
        side.setFitToWidth(true);
        side.getStyleClass().add("read");
        side.setAccessibleText(words.text("how-to.title"));
        side.setFitToHeight(true);
        side.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setCenter(scroll);
        pane.setRight(side);
        pane.widthProperty().addListener((of, old, now) -> arrange());
        // After the layout: in the middle of it nothing may come or go.
        all.layoutBoundsProperty()
                .addListener((of, old, now) -> client.workplace().background().show(this::arrange));
        safety.focusWithinProperty().addListener((of, old, now) -> keysChanged.run());
        pane.getStyleClass().add("sheet");
        pane.addEventFilter(KeyEvent.ANY, key -> {
            if (runOn.stops(key)) {
                key.consume();
                rows.get(0).say(words.text("screen.questions-done"));
            }
        });
        pane.addEventFilter(MouseEvent.MOUSE_PRESSED, mouse -> runOn.forget());
        howTo.show(rows.get(0).cells().get(0).entry());
        client.evaluation().addListener((of, old, now) -> show());
        client.draft().addListener((of, old, now) -> show());
        client.visit().addListener((of, old, now) -> show());
        show();
    }

    private HBox head() {
        HBox head = new HBox();
        head.setAlignment(Pos.BOTTOM_LEFT);
        javafx.scene.control.Label test = Labels.text(words.text("screen.test"), "column-head");
        HBox.setHgrow(test, Priority.ALWAYS);
        test.setMaxWidth(Double.MAX_VALUE);
        HBox sides = new HBox(column("side.left", "col-side"), column("side.right", "col-side"));
        sides.getStyleClass().add("sides");
        sides.setNodeOrientation(javafx.geometry.NodeOrientation.LEFT_TO_RIGHT);
        head.getChildren()
                .addAll(
                        Labels.text(words.text("screen.position"), "column-head", "col-position"),
                        test,
                        Labels.text("", "col-unit"),
                        sides,
                        Labels.text(words.text("screen.last"), "column-head", "col-last"),
                        Labels.text(words.text("screen.since"), "column-head", "col-since"));
        head.getStyleClass().add("screen-head");
        return head;
    }

    private HBox column(String key, String style) {
        HBox box = new HBox(Labels.text(words.text(key), "column-head"));
        box.getStyleClass().add(style);
        return box;
    }

    private void show() {
        safety.show();
        rows.forEach(ScreenRow::show);
        if (waits && model.client().evaluation().get().isPresent()) {
            waits = false;
            start();
        }
    }

    @Override
    public String name() {
        return words.text("sheet.screen");
    }

    @Override
    public String summary() {
        int open = model.openQuestions().size();
        String taken = words.text("screen.summary", model.taken(), model.tests().size());
        int limited = model.count(FindingKind.LIMITED);
        int painful = model.count(FindingKind.PAINFUL);
        String found = limited + painful == 0 ? "" : " " + words.text("screen.summary-found", limited, painful);
        String asked = open == 0 ? "" : " " + words.count("safety.open", open);
        String barred = model.client()
                .evaluation()
                .get()
                .flatMap(Evaluation::barredBySafety)
                .map(key -> words.text(key) + " ")
                .orElse("");
        return barred + taken + found + asked;
    }

    @Override
    public Parent content() {
        return pane;
    }

    /** The table comes first: where both do not fit, the how-to opens by F1 only. */
    private void arrange() {
        double scrollBar = 20;
        boolean fits = pane.getWidth() >= scroll.getContent().minWidth(-1) + scrollBar + side.prefWidth(-1);
        if (fits != roomy) {
            roomy = fits;
            howToInPlace(false);
            pane.setRight(roomy && !compact ? side : null);
        }
    }

    @Override
    public void compact(boolean little) {
        compact = little;
        howToInPlace(false);
        pane.setRight(roomy && !compact ? side : null);
        rows.forEach(r -> r.compact(little));
    }

    @Override
    public List<Node> actions() {
        return List.of();
    }

    @Override
    public List<Page.Hint> hints() {
        if (safety.isFocusWithin()) {
            return List.of(
                    new Page.Hint("N", words.text("answer.no")),
                    new Page.Hint("Y", words.text("answer.yes")),
                    new Page.Hint("↓ ↑", words.text("hint.question")),
                    new Page.Hint("F8", words.text("hint.next-missing")));
        }
        return List.of(
                new Page.Hint("Enter", words.text("hint.next-field")),
                new Page.Hint("P", words.text("hint.pain")),
                new Page.Hint("N", words.text("hint.not-tested")),
                new Page.Hint("Ctrl Enter", words.text("hint.next-position")),
                new Page.Hint("F1", words.text("how-to.title")));
    }

    @Override
    public void shown() {
        howToInPlace(false);
        waits = model.client().evaluation().get().isEmpty();
        if (!waits) {
            start();
        }
    }

    /** The first open question has the focus, else the first empty field. */
    private void start() {
        inPlace();
        if (!safety.ready()) {
            focus(firstEmpty().orElse(rows.get(0).cells().get(0)));
        }
    }

    /** What lies in a scroll pane can take the focus only after a first layout. */
    private void inPlace() {
        pane.applyCss();
        pane.layout();
    }

    private Optional<ScreenRow.Cell> firstEmpty() {
        return rows.stream()
                .flatMap(r -> r.cells().stream())
                .filter(c -> c.number().isEmpty())
                .findFirst();
    }

    @Override
    public boolean pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.F1 && roomy && !compact) {
            pane.setRight(pane.getRight() == null ? side : null);
            return true;
        }
        boolean reads = pane.getCenter() == side;
        if (key.getCode() == KeyCode.F1 || key.getCode() == KeyCode.ESCAPE && reads) {
            howToInPlace(!reads);
            return true;
        }
        return false;
    }

    /** Where both do not fit beside each other the how-to takes the place of the table, and gives the keys back afterwards. */
    private void howToInPlace(boolean wanted) {
        if (wanted) {
            cameFrom = pane.getScene().getFocusOwner();
            pane.setRight(null);
            pane.setCenter(side);
            inPlace();
            side.requestFocus();
        } else if (pane.getCenter() == side) {
            pane.setCenter(scroll);
            inPlace();
            if (cameFrom != null) {
                cameFrom.requestFocus();
            }
        }
    }

    /** Brings a test into sight and puts the focus into its first field. */
    public void show(String test) {
        howToInPlace(false);
        inPlace();
        rows.stream()
                .filter(r -> r.test().id().equals(test))
                .findFirst()
                .ifPresent(r -> focus(r.cells().stream()
                        .filter(c -> c.number().isEmpty())
                        .findFirst()
                        .orElse(r.cells().get(0))));
    }

    /** Puts the focus on the first open safety question. */
    public void showSafety() {
        howToInPlace(false);
        inPlace();
        scroll.setVvalue(0);
        safety.ready();
    }

    private void focus(ScreenRow.Cell cell) {
        cell.number().field().requestFocus();
    }

    @Override
    public void entered(MovementTest test, ScreenEntry entry) {
        rows.forEach(r -> r.current(r.test().equals(test)));
        looksAt = entry;
        model.client().workplace().background().later(PAUSE, () -> {
            if (entry.equals(looksAt)) {
                howTo.show(entry);
            }
        });
        rows.stream().filter(r -> r.test().equals(test)).findFirst().ifPresent(r -> IntoSight.bring(r, NEIGHBOURS));
    }

    @Override
    public void next(ScreenRow.Cell from) {
        List<ScreenRow.Cell> cells =
                rows.stream().flatMap(r -> r.cells().stream()).toList();
        int index = cells.indexOf(from) + 1;
        if (index < cells.size()) {
            focus(cells.get(index));
        }
    }

    @Override
    public void vertical(ScreenRow.Cell from, int step) {
        int row = rowOf(from);
        int column = rows.get(row).cells().indexOf(from);
        int next = row + step;
        if (next >= 0 && next < rows.size()) {
            List<ScreenRow.Cell> cells = rows.get(next).cells();
            focus(cells.get(Math.min(column, cells.size() - 1)));
        }
    }

    @Override
    public void nextPosition(ScreenRow.Cell from) {
        int row = rowOf(from);
        String now = ScreenModel.position(rows.get(row).test());
        for (int i = row + 1; i < rows.size(); i++) {
            if (!ScreenModel.position(rows.get(i).test()).equals(now)) {
                focus(rows.get(i).cells().get(0));
                return;
            }
        }
    }

    private int rowOf(ScreenRow.Cell cell) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).cells().contains(cell)) {
                return i;
            }
        }
        throw new IllegalArgumentException("no field of this table");
    }
}
