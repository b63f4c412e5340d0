package org.drillsheaf.desk.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Font;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.store.change.AuditEntry;
import org.drillsheaf.store.change.Changes;
import org.drillsheaf.store.record.ClientSummary;

/** All clients, found while typing. */
final class ClientListView extends BorderPane {
    private static final int MOST = 2_000;

    /** Under this the head takes two lines. */
    private static final double LEAST_WIDTH_EM = 56;

    private final Workplace workplace;
    private final Words words;
    private final Lane searching;
    private final TextField search = new TextField();
    private final ListView<ClientSummary> list = new ListView<>();
    private final Label count = Labels.text("", "second");
    private final VBox told = new VBox();
    private final Changes.Listening listening;

    ClientListView(
            Workplace workplace, Consumer<UUID> open, Runnable newClient, Runnable printSeveral, Runnable guide) {
        this.workplace = workplace;
        this.words = workplace.words();
        this.searching = new Lane(workplace.background());
        getStyleClass().add("page");
        search.setPromptText(words.text("clients.search"));
        search.setAccessibleRoleDescription(words.text("clients.search"));
        search.setPrefColumnCount(26);
        search.textProperty().addListener((of, before, now) -> find());
        search.addEventFilter(KeyEvent.KEY_PRESSED, key -> {
            if (key.getCode() == KeyCode.DOWN) {
                list.requestFocus();
                list.getSelectionModel().selectFirst();
                key.consume();
            } else if (key.getCode() == KeyCode.ENTER && !list.getItems().isEmpty()) {
                open.accept(list.getItems().get(0).key());
                key.consume();
            }
        });
        Button add = Buttons.withKey(Buttons.main(words.text("menu.new-client"), newClient), "Ctrl N");
        Button several = Buttons.plain(words.text("batch.open"), printSeveral);
        Label title = Labels.text(words.text("place.clients"), "title");
        title.setMinWidth(USE_PREF_SIZE);
        count.setMinWidth(USE_PREF_SIZE);
        HBox.setHgrow(search, Priority.SOMETIMES);
        search.setMaxWidth(USE_PREF_SIZE);
        HBox first = new HBox(14);
        HBox second = new HBox(14);
        first.setAlignment(Pos.CENTER_LEFT);
        second.setAlignment(Pos.CENTER_LEFT);
        VBox top = new VBox(8, first, second);
        top.setPadding(new javafx.geometry.Insets(14, 20, 10, 20));
        Runnable arrange = () -> {
            // With little room the search has a line of its own, where all its words can be read.
            boolean narrow = getWidth() > 0 && getWidth() < LEAST_WIDTH_EM * em();
            if (first.getChildren().isEmpty() || narrow == first.getChildren().contains(search)) {
                second.getChildren().clear();
                first.getChildren().setAll(title, Labels.spring(), several, add);
                (narrow ? second : first).getChildren().addAll(narrow ? 0 : 1, List.of(search, count));
            }
        };
        arrange.run();
        widthProperty().addListener((of, before, now) -> arrange.run());
        count.fontProperty().addListener((of, before, now) -> arrange.run());
        setTop(new VBox(top, told));
        list.setAccessibleText(words.text("place.clients"));
        list.setCellFactory(v -> new Row());
        Button guided = Buttons.plain(words.text("clients.guide"), guide);
        Label none = Labels.prose("", "second");
        none.textProperty()
                .bind(javafx.beans.binding.Bindings.when(search.textProperty().isEmpty())
                        .then(words.text("clients.nobody"))
                        .otherwise(words.text("clients.none")));
        VBox nobody = new VBox(12, none, guided);
        nobody.setAlignment(Pos.CENTER);
        guided.visibleProperty().bind(search.textProperty().isEmpty());
        list.setPlaceholder(nobody);
        list.setOnKeyPressed(key -> {
            if (key.getCode() == KeyCode.ENTER) {
                chosen(open);
                key.consume();
            }
        });
        list.setOnMouseClicked(e -> {
            if (e.getClickCount() >= 1 && e.getTarget() != list) {
                chosen(open);
            }
        });
        StackPane middle = new StackPane(list);
        middle.setPadding(new javafx.geometry.Insets(0, 12, 0, 12));
        setCenter(middle);
        listening = workplace.store().changes().listen(entries -> {
            if (entries.stream().anyMatch(e -> e.kind() == AuditEntry.Kind.CLIENT)) {
                workplace.background().show(this::find);
            }
        });
        find();
    }

    private void chosen(Consumer<UUID> open) {
        ClientSummary client = list.getSelectionModel().getSelectedItem();
        if (client != null) {
            open.accept(client.key());
        }
    }

    /** Looks again, for what is typed now. */
    void find() {
        String typed = search.getText();
        searching.run(
                () -> workplace.store().search().clients(typed, MOST),
                this::show,
                e -> count.setText(String.valueOf(e.getMessage())));
    }

    private void show(List<ClientSummary> found) {
        ClientSummary before = list.getSelectionModel().getSelectedItem();
        list.getItems().setAll(found);
        found.stream()
                .filter(c -> before != null && c.key().equals(before.key()))
                .findFirst()
                .ifPresent(c -> list.getSelectionModel().select(c));
        count.setText(words.count("clients.count", found.size()));
    }

    /** Those that are found for what is typed. */
    List<ClientSummary> found() {
        return List.copyOf(list.getItems());
    }

    /** Says something above the list; the focus goes to what can be done about it. */
    void tell(String what, String more, Optional<Button> action) {
        Button close = Buttons.plain(words.text("clients.understood"), () -> {
            quiet();
            ready();
        });
        List<Button> buttons = new ArrayList<>(action.stream().toList());
        buttons.add(close);
        told.getChildren().setAll(new Message("remark", what, more, buttons.toArray(new Button[0])));
        told.setPadding(new javafx.geometry.Insets(0, 20, 10, 20));
        buttons.get(0).requestFocus();
    }

    /** Takes away what was said. */
    void quiet() {
        told.getChildren().clear();
        told.setPadding(javafx.geometry.Insets.EMPTY);
    }

    /** Changes with the size of the letters. */
    ReadOnlyObjectProperty<Font> font() {
        return count.fontProperty();
    }

    /** Size of plain letters, pixels. */
    double em() {
        return count.getFont().getSize();
    }

    void ready() {
        search.requestFocus();
    }

    void close() {
        listening.close();
    }

    private final class Row extends ListCell<ClientSummary> {
        private final Label name = Labels.text("", "bold");
        private final Label more = Labels.text("", "second", "small");
        private final Label visit = Labels.text("", "second", "small");
        private final HBox box;

        Row() {
            VBox left = new VBox(2, name, more);
            HBox.setHgrow(left, Priority.ALWAYS);
            visit.setMinWidth(Region.USE_PREF_SIZE);
            box = new HBox(16, left, visit);
            box.setAlignment(Pos.CENTER_LEFT);
            box.getStyleClass().add("list-row");
            setPrefWidth(0);
            getStyleClass().add("client-row");
        }

        @Override
        protected void updateItem(ClientSummary client, boolean empty) {
            super.updateItem(client, empty);
            if (empty || client == null) {
                setGraphic(null);
                setAccessibleText(null);
                return;
            }
            name.setText(client.name());
            more.setText(words.text("clients.line", client.born(), client.coach()));
            visit.setText(client.lastVisit()
                    .map(d -> words.text("clients.last", words.date(d)))
                    .orElse(words.text("clients.no-visit")));
            setGraphic(box);
            setAccessibleText(client.name() + ", " + more.getText() + ", " + visit.getText());
        }
    }
}
