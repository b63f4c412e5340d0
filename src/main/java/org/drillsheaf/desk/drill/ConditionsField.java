package org.drillsheaf.desk.drill;

import com.fasterxml.jackson.databind.JsonNode;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;

/** What a drill itself says about conditions, as tags that can be taken away. */
final class ConditionsField extends FlowPane {
    private static final String CONDITIONS = "/conditions";

    private final DrillModel model;
    private final Words words;

    ConditionsField(DrillModel model, Words words) {
        this.model = model;
        this.words = words;
        getStyleClass().add("tag-row");
        show();
        model.draft().document().addListener((of, before, now) -> {
            if (!now.at(CONDITIONS).equals(before.at(CONDITIONS))) {
                show();
            }
        });
    }

    private void show() {
        getChildren().clear();
        model.draft().now().at(CONDITIONS).forEach(c -> getChildren().add(tag(c)));
    }

    private HBox tag(JsonNode condition) {
        String id = condition.path("id").asText();
        Button away = new Button("\u00D7");
        away.getStyleClass().add("away");
        away.setAccessibleText(words.text("form.take-away", id));
        away.setOnAction(e -> {
            model.removeCondition(id);
            model.draft().settle();
        });
        String action = words.text("action." + condition.path("action").asText());
        HBox tag = new HBox(Labels.text(id + ": " + action, "small"), away);
        tag.getStyleClass().add("form-tag");
        tag.setAlignment(Pos.CENTER_LEFT);
        return tag;
    }
}
