package org.drillsheaf.desk.client;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.safety.Condition;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.drill.safety.SettingDefinition;
import org.drillsheaf.store.record.Content;

/** What a client lives with, with the side, the beginning and the settings. A setting nobody set keeps its cautious value. */
final class ConditionsView extends VBox {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Words words;
    private final SafetyRules rules;
    private final List<ObjectNode> items = new ArrayList<>();

    ConditionsView(Words words, SafetyRules rules, Content before) {
        super(8);
        this.words = words;
        this.rules = rules;
        for (JsonNode item : before.json()) {
            items.add((ObjectNode) item);
        }
        show();
    }

    Content content() {
        ArrayNode list = NODES.arrayNode();
        items.forEach(list::add);
        return Content.of(list);
    }

    private String name(String id) {
        Condition condition = rules.conditions().get(id);
        return condition == null ? id : condition.name().best(List.of(words.language()));
    }

    private void show() {
        getChildren().clear();
        if (items.isEmpty()) {
            getChildren().add(Labels.text(words.text("conditions.none"), "second"));
        }
        items.forEach(item -> getChildren().add(item(item)));
        ComboBox<String> more = new ComboBox<>();
        more.setAccessibleText(words.text("conditions.add"));
        more.setPromptText(words.text("conditions.add"));
        more.setConverter(new Named<>(this::name));
        rules.conditions().keySet().stream()
                .filter(id ->
                        items.stream().noneMatch(i -> i.path("id").asText().equals(id)))
                .forEach(more.getItems()::add);
        more.setOnAction(e -> {
            if (more.getValue() != null) {
                items.add(NODES.objectNode().put("id", more.getValue()));
                show();
            }
        });
        getChildren().add(more);
    }

    private VBox item(ObjectNode item) {
        String id = item.path("id").asText();
        Condition condition = rules.conditions().get(id);
        Button remove = Buttons.link(words.text("conditions.remove"), () -> {
            items.remove(item);
            show();
        });
        remove.setAccessibleText(words.text("conditions.remove-one", name(id)));
        HBox head = new HBox(10, Labels.text(name(id), "bold"), Labels.spring(), remove);
        HBox row = new HBox(10);
        if (condition != null && condition.sided()) {
            ComboBox<String> side = choice(
                    item, "side", List.of("", "left", "right", "both"), words.text("conditions.side-of", name(id)));
            row.getChildren().add(side);
        }
        TextField since = new TextField(item.path("since").asText());
        since.setPromptText(words.text("conditions.since"));
        since.setAccessibleRoleDescription(words.text("conditions.since-of", name(id)));
        since.setPrefColumnCount(8);
        since.textProperty().addListener((of, old, now) -> {
            if (now.matches("\\d{4}-\\d{2}(-\\d{2})?")) {
                item.put("since", now);
            } else {
                item.remove("since");
            }
        });
        row.getChildren().add(since);
        VBox box = new VBox(6, head, row);
        if (condition != null) {
            for (Map.Entry<String, SettingDefinition> setting :
                    condition.settings().entrySet()) {
                box.getChildren().add(setting(item, setting.getValue()));
            }
        }
        box.getStyleClass().add("narrow-rule");
        return box;
    }

    private HBox setting(ObjectNode item, SettingDefinition setting) {
        String name = setting.name().best(List.of(words.language()));
        String written = item.path("settings").path(setting.id()).asText("");
        javafx.scene.Node field;
        if (setting.kind() == SettingDefinition.Kind.NUMBER) {
            TextField number = new TextField(words.number(written));
            number.setPromptText(words.number(setting.cautious()));
            number.setPrefColumnCount(5);
            number.setAccessibleRoleDescription(name);
            number.textProperty().addListener((of, old, now) -> set(item, setting, Words.plain(now)));
            field = number;
        } else {
            List<String> values = new ArrayList<>(List.of(""));
            values.addAll(setting.kind() == SettingDefinition.Kind.YES_NO ? List.of("yes", "no") : setting.words());
            ComboBox<String> box = new ComboBox<>();
            box.getItems().setAll(values);
            box.setConverter(new Named<>(v -> v.isEmpty() ? words.text("conditions.cautious", setting.cautious()) : v));
            box.setValue(setting.read(written).orElse(""));
            box.setAccessibleText(name);
            box.setOnAction(e -> set(item, setting, box.getValue()));
            field = box;
        }
        HBox row = new HBox(10, Labels.prose(name, "small", "second"), Labels.spring(), field);
        row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        return row;
    }

    private static void set(ObjectNode item, SettingDefinition setting, String value) {
        ObjectNode settings = item.withObject("/settings");
        if (setting.read(value).isPresent()) {
            settings.put(setting.id(), value);
        } else {
            settings.remove(setting.id());
        }
        if (settings.isEmpty()) {
            item.remove("settings");
        }
    }

    private ComboBox<String> choice(ObjectNode item, String key, List<String> values, String name) {
        ComboBox<String> box = new ComboBox<>();
        box.getItems().setAll(values);
        box.setConverter(new Named<>(v -> words.text("conditions." + key + "." + (v.isEmpty() ? "none" : v))));
        box.setValue(item.path(key).asText(""));
        box.setAccessibleText(name);
        box.setOnAction(e -> {
            if (box.getValue().isEmpty()) {
                item.remove(key);
            } else {
                item.put(key, box.getValue());
            }
        });
        return box;
    }
}
