package org.drillsheaf.desk.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Phase;

/** The list of drills with its search: words while typing, and one line to narrow by goal, position, phase, condition. */
public final class CatalogueList extends VBox {
    /** Height of a drill in the list, in em of the root's font. */
    private static final double CELL = 4.9;

    private final CatalogueModel model;
    private final Words words;
    private final Function<Phase, String> phaseName;
    private final TextField search = new TextField();
    private final ListView<DrillQuery.Hit> list;
    private final GridPane narrow = new GridPane();
    private boolean showing;

    /**
     * @param phaseName what the house calls a phase
     * @param opened is told which drill the coach chose
     */
    public CatalogueList(
            CatalogueModel model,
            DrillPictures pictures,
            Words words,
            Function<Phase, String> phaseName,
            Consumer<DrillEntry> opened) {
        this.model = model;
        this.words = words;
        this.phaseName = phaseName;
        getStyleClass().add("catalogue-list");
        list = new ListView<>(model.hits());
        list.setCellFactory(v -> new DrillCell(model, pictures, words));
        list.getStyleClass().add("drill-list");
        list.setAccessibleText(words.text("drills.list"));
        list.setPlaceholder(empty());
        VBox.setVgrow(list, Priority.ALWAYS);
        search.setPromptText(words.text("drills.search"));
        search.setAccessibleRoleDescription(words.text("drills.search"));
        search.setId("drill-search");
        search.textProperty().addListener((of, before, now) -> model.query()
                .set(model.query().get().withWords(now)));
        search.addEventFilter(KeyEvent.KEY_PRESSED, this::searchKey);
        Label count = Labels.text("", "second", "small");
        count.textProperty().bind(model.summary());
        Button more = Buttons.link(words.text("drills.narrow"), this::toggleNarrow);
        more.getStyleClass().add("small");
        HBox line = new HBox(count, Labels.spring(), more);
        line.setAlignment(Pos.BASELINE_LEFT);
        narrowing();
        VBox head = new VBox(search, line, narrow);
        head.getStyleClass().add("catalogue-head");
        getChildren().addAll(head, list);
        list.getSelectionModel().selectedItemProperty().addListener((of, before, now) -> {
            if (now != null && !showing) {
                opened.accept(now.entry());
            }
        });
        search.fontProperty().addListener((of, before, now) -> measure());
        measure();
    }

    /** The height of a drill hangs on the size of the root's font. */
    private void measure() {
        list.setFixedCellSize(Math.round(CELL * search.getFont().getSize()));
    }

    /** Whose size is an em. */
    ReadOnlyObjectProperty<Font> font() {
        return search.fontProperty();
    }

    public void focusSearch() {
        search.requestFocus();
        search.selectAll();
    }

    /** Shows a drill as chosen without telling anybody; the list keeps its place if it can. */
    public void choose(String id) {
        showing = true;
        for (int i = 0; i < model.hits().size(); i++) {
            if (model.hits().get(i).entry().id().equals(id)) {
                list.getSelectionModel().select(i);
                break;
            }
        }
        showing = false;
    }

    ListView<DrillQuery.Hit> list() {
        return list;
    }

    private VBox empty() {
        VBox empty = new VBox(
                8,
                Labels.prose(words.text("drills.none"), "second"),
                Buttons.link(words.text("drills.clear"), this::clear));
        empty.setAlignment(Pos.CENTER);
        return empty;
    }

    private void clear() {
        search.clear();
        narrow.getChildren().forEach(n -> {
            if (n instanceof ComboBox<?> box) {
                box.getSelectionModel().select(0);
            }
        });
        model.query().set(DrillQuery.ALL);
        search.requestFocus();
    }

    private void searchKey(KeyEvent e) {
        if (e.getCode() == KeyCode.DOWN) {
            list.requestFocus();
            if (list.getSelectionModel().isEmpty()) {
                list.getSelectionModel().select(0);
            }
            e.consume();
        } else if (e.getCode() == KeyCode.ESCAPE && !search.getText().isEmpty()) {
            search.clear();
            e.consume();
        }
    }

    private void toggleNarrow() {
        boolean open = !narrow.isVisible();
        narrow.setVisible(open);
        narrow.setManaged(open);
        if (open) {
            narrow.getChildren().get(0).requestFocus();
        }
    }

    private void narrowing() {
        narrow.getStyleClass().add("narrow");
        narrow.setVisible(false);
        narrow.setManaged(false);
        add(
                0,
                0,
                "drills.any.goal",
                List.copyOf(model.words().goals().keySet()),
                g -> name("goal", g),
                v -> model.query().set(model.query().get().withGoal(v)));
        add(
                1,
                0,
                "drills.any.position",
                List.copyOf(model.words().positions().keySet()),
                p -> name("position", p),
                v -> model.query().set(model.query().get().withPosition(v)));
        add(0, 1, "drills.any.phase", List.of(Phase.values()), phaseName, v -> model.query()
                .set(model.query().get().withPhase(v)));
        add(
                1,
                1,
                "drills.any.condition",
                List.copyOf(model.conditions().keySet()),
                c -> words.text("drills.for", model.conditions().getOrDefault(c, c)),
                v -> model.query().set(model.query().get().withCondition(v)));
    }

    private String name(String kind, String id) {
        List<String> languages = List.of(words.language());
        return kind.equals("goal")
                ? Optional.ofNullable(model.words().goals().get(id))
                        .map(g -> g.name().best(languages))
                        .orElse(id)
                : Optional.ofNullable(model.words().positions().get(id))
                        .map(p -> p.name().best(languages))
                        .orElse(id);
    }

    private <T> void add(
            int column, int row, String any, List<T> values, Function<T, String> text, Consumer<Optional<T>> taken) {
        ComboBox<Optional<T>> box = new ComboBox<>();
        List<Optional<T>> items = new ArrayList<>(List.of(Optional.<T>empty()));
        values.forEach(v -> items.add(Optional.of(v)));
        box.getItems().setAll(items);
        box.setConverter(new Named<>(value -> value.map(text).orElse(words.text(any))));
        box.getSelectionModel().select(0);
        box.setAccessibleText(words.text(any));
        box.setMaxWidth(Double.MAX_VALUE);
        GridPane.setHgrow(box, Priority.ALWAYS);
        box.setOnAction(e -> Optional.ofNullable(box.getValue()).ifPresent(taken));
        narrow.add(box, column, row);
    }
}
