package org.drillsheaf.desk.house;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Parent;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.frame.FrameView;
import org.drillsheaf.desk.frame.Page;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.setting.DeskSettings;
import org.drillsheaf.desk.words.Words;

/** The place of the house: how the window looks, when it locks, the clinic's own details. */
public final class HousePage implements Page {
    /** In heights of the title, under which there is little room. */
    private static final double LEAST_WIDTH = 42;

    private static final List<Integer> SCALES = List.of(100, 125, 150, 175, 200, 250);
    private static final List<Integer> IDLE_MINUTES = List.of(0, 2, 5, 10, 30);

    private final Words words;
    private final FrameView.Actions actions;
    private final ScrollPane scroll = new ScrollPane();
    private final ComboBox<String> language = new ComboBox<>();
    private final Segments<Integer> size;

    public HousePage(Workplace workplace, FrameView.Actions actions) {
        this.words = workplace.words();
        this.actions = actions;
        this.size = new Segments<>(
                words.text("look.size"),
                SCALES,
                s -> s + " %",
                s -> actions.settings(actions.settings().scaled(s)));
        Label title = Labels.text(words.text("place.house"), "title");
        VBox all = new VBox(
                title,
                look(),
                locking(),
                new ClinicView(workplace),
                new OwnFilesView(workplace, actions),
                new RecordView(workplace, actions));
        all.getStyleClass().add("house");
        scroll.setContent(all);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("page");
        title.fontProperty().addListener((of, before, changed) -> {
            size.take(actions.settings().scalePercent());
            fit(title);
        });
        scroll.widthProperty().addListener((of, before, now) -> fit(title));
    }

    /** With little room the names leave more of it to their fields. */
    private void fit(Label title) {
        StyleClass.set(
                scroll,
                "compact",
                scroll.getWidth() < LEAST_WIDTH * title.getFont().getSize());
    }

    private static VBox part(String title, javafx.scene.Node... rows) {
        VBox part = new VBox(Labels.text(title, "heading"));
        part.getChildren().addAll(rows);
        part.getStyleClass().add("house-part");
        return part;
    }

    /** A name and its field, below each other where there is no room. */
    private FlowPane row(String key, javafx.scene.Node field) {
        Label label = Labels.prose(words.text(key), "second", "house-name");
        label.setLabelFor(field);
        FlowPane row = new FlowPane(12, 4, label, field);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private VBox look() {
        DeskSettings now = actions.settings();
        language.getItems().setAll(Words.LANGUAGES);
        language.setConverter(new Named<>(tag -> words.text("language." + tag)));
        language.setValue(words.language());
        language.setAccessibleText(words.text("look.language"));
        language.setOnAction(e -> actions.settings(actions.settings().inLanguage(language.getValue())));
        Segments<DeskSettings.Theme> theme = new Segments<>(
                words.text("look.theme"),
                List.of(DeskSettings.Theme.values()),
                t -> words.text(t == DeskSettings.Theme.LIGHT ? "look.light" : "look.dark"),
                t -> actions.settings(actions.settings().with(t)));
        theme.take(now.theme());
        size.take(now.scalePercent());
        Segments<Boolean> direction = new Segments<>(
                words.text("look.direction"),
                List.of(false, true),
                m -> words.text(m ? "look.from-right" : "look.from-left"),
                m -> actions.settings(actions.settings().mirrored(m)));
        direction.take(now.mirrored());
        return part(
                words.text("house.look"),
                row("look.language", language),
                row("look.theme", theme),
                row("look.size", size),
                row("look.direction", direction));
    }

    private VBox locking() {
        Segments<Integer> idle = new Segments<>(
                words.text("house.idle"),
                IDLE_MINUTES,
                m -> m == 0 ? words.text("house.idle-never") : words.text("house.idle-minutes", m),
                m -> actions.settings(actions.settings().lockedAfter(m)));
        idle.take(actions.settings().idleMinutes());
        return part(words.text("house.lock"), row("house.idle", idle));
    }

    @Override
    public Parent node() {
        return scroll;
    }

    @Override
    public List<Hint> hints() {
        return List.of(new Hint("Ctrl + −", words.text("hint.size")), new Hint("Ctrl L", words.text("rail.lock")));
    }

    @Override
    public void shown() {
        scroll.applyCss(); // what lies in a scroll pane can take the focus only after a first layout
        scroll.layout();
        language.requestFocus();
    }
}
