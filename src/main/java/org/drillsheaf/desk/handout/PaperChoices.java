package org.drillsheaf.desk.handout;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.client.Paper;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.handout.page.DocumentKind;

/** Which paper it shall be: the document, its language, the size of the sheet and of the print. */
final class PaperChoices extends VBox {
    private final Words words;
    private final Consumer<HandoutModel.Choice> chosen;
    private final Map<DocumentKind, RadioButton> kinds = new EnumMap<>(DocumentKind.class);
    private final Segments<Boolean> size;
    private HandoutModel.Choice choice;

    PaperChoices(Words words, HandoutModel.Choice first, Consumer<HandoutModel.Choice> chosen) {
        super(12);
        this.words = words;
        this.choice = first;
        this.chosen = chosen;
        this.size = new Segments<>(
                words.text("handout.size"),
                List.of(false, true),
                large -> words.text(large ? "handout.large" : "handout.standard"),
                large -> choose(choice.large(large)));
        getChildren().addAll(documents(), grid());
    }

    private void choose(HandoutModel.Choice wanted) {
        choice = wanted;
        chosen.accept(wanted);
    }

    private VBox documents() {
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
        return list;
    }

    private GridPane grid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().addAll("form", "narrow-rule");
        ComboBox<String> language = new ComboBox<>();
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
                p -> words.text("paper." + p.name().toLowerCase(Locale.ROOT)),
                p -> choose(choice.on(p)));
        paper.take(choice.paper());
        row(grid, 0, "look.language", language);
        row(grid, 1, "handout.paper", paper);
        row(grid, 2, "handout.size", size);
        return grid;
    }

    private void row(GridPane grid, int row, String key, Node field) {
        Label label = Labels.text(words.text(key), "second");
        label.setLabelFor(field);
        grid.addRow(row, label, field);
    }

    /**
     * @param notShown why a document cannot be shown now; such a one stays in the list, with its reason
     * @param large whether the print of the chosen paper is large
     */
    void ready(Function<DocumentKind, Optional<String>> notShown, boolean large) {
        size.take(large);
        kinds.forEach((kind, button) -> {
            Optional<String> not = notShown.apply(kind);
            button.setAccessibleHelp(not.orElse(null));
            button.setTooltip(not.map(Tooltip::new).orElse(null));
            StyleClass.set(button, "not-now", not.isPresent());
        });
    }

    /** Puts the focus on the chosen document. */
    void focus() {
        Optional.ofNullable(kinds.get(choice.kind())).ifPresent(Node::requestFocus);
    }
}
