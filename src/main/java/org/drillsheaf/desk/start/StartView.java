package org.drillsheaf.desk.start;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.CapsLockHint;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.picture.Well;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;

/** The first page on a new desk: the demo clinic, a record of one's own, or the server of the house. */
public final class StartView extends HBox {
    private static final List<Integer> SCALES = List.of(100, 125, 150, 200);
    private static final int SHORTEST_PASSPHRASE = 8;

    /** In heights of the title, under which the picture makes room. */
    private static final double LEAST_WIDTH = 38;

    private final Words words;
    private final Actions actions;
    private final Label title;
    private final StackPane told = new StackPane();
    private final VBox column = new VBox();
    private final VBox choices = new VBox();

    /** What the page asks for. */
    public interface Actions {
        void openDemo();

        void create(String coach, char[] passphrase);

        void createWith(String coach, char[] passphrase);

        void join(String coach, String address, char[] password);

        void settings(DeskSettings changed);
    }

    public StartView(Words words, DeskSettings settings, Well picture, Actions actions) {
        this.words = words;
        this.actions = actions;
        this.title = Labels.prose(words.text("start.title"), "huge");
        getStyleClass().addAll("page", "first");
        column.getStyleClass().add("column");
        choices.getChildren()
                .addAll(
                        choice(Buttons.main(words.text("start.demo"), actions::openDemo), "start.demo.more"),
                        choice(
                                Buttons.plain(
                                        words.text("start.first"), () -> form("start.first", false, actions::create)),
                                "start.first.more"),
                        choice(
                                Buttons.plain(
                                        words.text("start.bring"),
                                        () -> form("start.bring", false, actions::createWith)),
                                "start.bring.more"),
                        choice(
                                Buttons.plain(words.text("start.join"), () -> form("start.join", true, null)),
                                "start.join.more"));
        choices.getStyleClass().add("choices-column");
        told.setAlignment(Pos.CENTER_LEFT);
        column.getChildren()
                .addAll(title, Labels.prose(words.text("start.more"), "second"), choices, told, looks(settings));
        VBox right = new VBox(12, picture, Labels.prose(words.text("start.picture"), "small", "second"));
        right.setAlignment(Pos.CENTER);
        right.getStyleClass().add("first-picture");
        StackPane middle = new StackPane(column);
        ScrollPane scroll = new ScrollPane(middle);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        middle.minHeightProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> scroll.getViewportBounds().getHeight(), scroll.viewportBoundsProperty()));
        getChildren().addAll(scroll, right);
        widthProperty().addListener((of, before, now) -> arrange(right));
        title.fontProperty().addListener((of, before, now) -> arrange(right));
    }

    /** The picture is there only where the words have room beside it. */
    private void arrange(VBox picture) {
        boolean roomy = getWidth() >= LEAST_WIDTH * title.getFont().getSize();
        picture.setVisible(roomy);
        picture.setManaged(roomy);
    }

    private HBox choice(Button button, String more) {
        Label text = Labels.prose(words.text(more), "second");
        button.setAccessibleHelp(words.text(more));
        HBox row = new HBox(button, text);
        row.getStyleClass().add("choice-row");
        return row;
    }

    private FlowPane looks(DeskSettings settings) {
        ComboBox<String> language = new ComboBox<>();
        language.getItems().setAll(Words.LANGUAGES);
        language.setConverter(new Named<>(tag -> words.text("language." + tag)));
        language.setValue(words.language());
        language.setAccessibleText(words.text("look.language"));
        language.setOnAction(e -> actions.settings(settings.inLanguage(language.getValue())));
        Segments<Integer> size = new Segments<>(
                words.text("look.size"),
                SCALES,
                s -> s == 100 ? "100 %" : s.toString(),
                s -> actions.settings(settings.scaled(s)));
        size.take(settings.scalePercent());
        Segments<DeskSettings.Theme> theme = new Segments<>(
                words.text("look.theme"),
                List.of(DeskSettings.Theme.values()),
                t -> words.text(t == DeskSettings.Theme.LIGHT ? "look.light" : "look.dark"),
                t -> actions.settings(settings.with(t)));
        theme.take(settings.theme());
        FlowPane row =
                new FlowPane(named("look.language", language), named("look.size", size), named("look.theme", theme));
        row.getStyleClass().addAll("narrow-rule", "looks");
        return row;
    }

    private HBox named(String key, Node control) {
        HBox row = new HBox(10, Labels.text(words.text(key), "second"), control);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Takes the place of the choices. */
    private void form(String title, boolean server, @org.jspecify.annotations.Nullable Form done) {
        TextField coach = new TextField();
        TextField address = new TextField();
        address.setPromptText("jdbc:postgresql://server/drillsheaf");
        PasswordField passphrase = new PasswordField();
        PasswordField again = new PasswordField();
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        int row = 0;
        field(grid, row++, "start.coach", coach);
        if (server) {
            field(grid, row++, "start.address", address);
        }
        field(grid, row++, server ? "start.password" : "start.passphrase", passphrase);
        if (!server) {
            field(grid, row++, "start.again", again);
        }
        Label wrong = Labels.prose("", "bold");
        Button go = Buttons.main(words.text(title), () -> {
            Optional<String> mistake =
                    mistake(coach, server ? Optional.of(address) : Optional.empty(), passphrase, again);
            wrong.setText(mistake.orElse(""));
            if (mistake.isEmpty() && server) {
                actions.join(
                        coach.getText().strip(),
                        address.getText().strip(),
                        passphrase.getText().toCharArray());
            } else if (mistake.isEmpty() && done != null) {
                done.take(coach.getText().strip(), passphrase.getText().toCharArray());
            }
        });
        go.setDefaultButton(true);
        Button back = Buttons.plain(
                words.text("start.back"), () -> column.getChildren().set(2, choices));
        back.setCancelButton(true);
        VBox form = new VBox(
                10,
                Labels.prose(words.text(server ? "start.join.more" : "start.passphrase.more"), "second"),
                grid,
                new CapsLockHint(words.text("unlock.caps-lock"), passphrase, again),
                wrong,
                new HBox(8, go, back));
        column.getChildren().set(2, form);
        coach.requestFocus();
    }

    private interface Form {
        void take(String coach, char[] passphrase);
    }

    private Optional<String> mistake(
            TextField coach, Optional<TextField> address, PasswordField passphrase, PasswordField again) {
        if (coach.getText().isBlank()) {
            coach.requestFocus();
            return Optional.of(words.text("start.coach.missing"));
        }
        if (address.isPresent()) {
            return address.get().getText().isBlank()
                    ? Optional.of(words.text("start.address.missing"))
                    : Optional.empty();
        }
        if (passphrase.getText().length() < SHORTEST_PASSPHRASE) {
            passphrase.requestFocus();
            return Optional.of(words.text("start.passphrase.short", SHORTEST_PASSPHRASE));
        }
        if (!passphrase.getText().equals(again.getText())) {
            again.requestFocus();
            return Optional.of(words.text("start.again.differs"));
        }
        return Optional.empty();
    }

    private void field(GridPane grid, int row, String key, TextInputControl field) {
        Label label = Labels.text(words.text(key), "second");
        label.setLabelFor(field);
        field.setAccessibleRoleDescription(words.text(key));
        grid.addRow(row, label, field);
    }

    /** Shows what went wrong, or that something is being done. */
    public void tell(String what, String more) {
        told.getChildren().setAll(new Message("", what, more));
    }
}
