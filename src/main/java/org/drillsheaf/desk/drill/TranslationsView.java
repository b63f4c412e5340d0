package org.drillsheaf.desk.drill;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.NodeOrientation;
import javafx.geometry.VPos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;

/** Every text that a client reads in all languages side by side; Arabic is written from right to left. */
public final class TranslationsView extends ScrollPane {
    private static final List<String> LANGUAGES = List.of("en", "es", "ar");

    /** @param model of the drill */
    public TranslationsView(DrillModel model, Words words) {
        getStyleClass().add("translations");
        setFitToWidth(true);
        setFocusTraversable(false);
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form-grid");
        ColumnConstraints names = new ColumnConstraints();
        names.setPercentWidth(16);
        grid.getColumnConstraints().add(names);
        for (int i = 0; i < LANGUAGES.size(); i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setHgrow(Priority.ALWAYS);
            column.setPercentWidth(28);
            grid.getColumnConstraints().add(column);
        }
        grid.addRow(0, Labels.text(words.text("translations.text"), "second", "small"));
        for (String tag : LANGUAGES) {
            grid.add(title(model, words, tag), 1 + LANGUAGES.indexOf(tag), 0);
        }
        FormFields fields = new FormFields(model.draft(), words);
        int row = 1;
        for (Map.Entry<String, String> text : texts(model, words).entrySet()) {
            Label name = Labels.prose(text.getValue(), "second", "small");
            GridPane.setValignment(name, VPos.TOP);
            grid.add(name, 0, row);
            for (String tag : LANGUAGES) {
                TextArea area = fields.lines(
                        () -> model.text(text.getKey(), tag),
                        t -> model.setText(text.getKey(), tag, t.replace('\n', ' ')));
                area.getStyleClass().add("translation");
                area.setAccessibleRoleDescription(text.getValue() + ", " + BlockView.name(tag));
                area.setNodeOrientation(
                        tag.equals("ar") ? NodeOrientation.RIGHT_TO_LEFT : NodeOrientation.LEFT_TO_RIGHT);
                grid.add(area, 1 + LANGUAGES.indexOf(tag), row);
            }
            row++;
        }
        grid.setMinWidth(0);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(grid);
    }

    private static VBox title(DrillModel model, Words words, String tag) {
        VBox title = new VBox(Labels.text(BlockView.name(tag), "bold"));
        JsonNode by = model.draft().now().at("/translations/" + tag);
        if (by.path("by").asText().equals("machine") && !by.has("reviewed-on")) {
            title.getChildren().add(Labels.prose(words.text("translations.machine"), "second", "small"));
        }
        return title;
    }

    /** Places of all texts in reading order, with their names. */
    static Map<String, String> texts(DrillModel model, Words words) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put("/name", model.name("name"));
        texts.put("/purpose", model.name("purpose"));
        for (String list : List.of("set-up", "action")) {
            items(model, list, texts, words);
        }
        if (model.draft().now().at("/breathing/cue").isContainerNode()) {
            texts.put("/breathing/cue", model.name("breathing"));
        }
        for (String list : List.of("feel", "not-feel")) {
            items(model, list, texts, words);
        }
        for (int i = 0; i < model.draft().now().at("/faults").size(); i++) {
            texts.put("/faults/" + i + "/fault", words.text("form.fault", i + 1));
            texts.put("/faults/" + i + "/fix", words.text("form.fix", i + 1));
        }
        items(model, "stop", texts, words);
        for (int i = 0; i < model.draft().now().at("/variants").size(); i++) {
            String id = model.text("/variants/" + i + "/id");
            texts.put("/variants/" + i + "/name", words.text("translations.variant", id));
            texts.put("/variants/" + i + "/change", words.text("translations.change", id));
        }
        return texts;
    }

    private static void items(DrillModel model, String list, Map<String, String> texts, Words words) {
        List<Integer> numbers = new ArrayList<>();
        model.draft().now().at("/" + list).forEach(n -> numbers.add(numbers.size()));
        numbers.forEach(i -> texts.put("/" + list + "/" + i, words.text("translations.item", model.name(list), i + 1)));
    }
}
