package org.drillsheaf.desk.drill;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.DrillWords;

/** The goals that a drill serves, as tags, and how strongly it serves each. */
final class GoalsField extends VBox {
    private static final int USUAL_STRENGTH = 2;

    private final DrillModel model;
    private final DrillWords drillWords;
    private final Words words;
    private final Node first;

    GoalsField(DrillModel model, DrillWords drillWords, FormFields fields, Words words) {
        super(4);
        this.model = model;
        this.drillWords = drillWords;
        this.words = words;
        FlowPane tags = fields.tags(
                words.text("form.add-goal"),
                List.copyOf(drillWords.goals().keySet()),
                id -> name(plain(id)) + strength(id),
                () -> model.goals().entrySet().stream()
                        .map(g -> g.getKey() + "=" + g.getValue())
                        .toList(),
                id -> model.setGoal(plain(id), USUAL_STRENGTH),
                id -> model.setGoal(plain(id), 0));
        first = tags.getChildren().get(tags.getChildren().size() - 1);
        getChildren().addAll(tags, strengths());
    }

    /** Where the name of the field leads. */
    Node first() {
        return first;
    }

    private String name(String goal) {
        return Optional.ofNullable(drillWords.goals().get(goal))
                .map(g -> g.name().best(List.of(words.language())))
                .orElse(goal);
    }

    private static String plain(String goal) {
        return goal.replaceFirst("=.*", "");
    }

    private static String strength(String goal) {
        return goal.contains("=") ? "  " + goal.substring(goal.indexOf('=') + 1) : "";
    }

    /** The strength of each goal, changed with the keys or by choosing. */
    private HBox strengths() {
        HBox line = new HBox(6);
        line.setAlignment(Pos.CENTER_LEFT);
        ComboBox<String> goal = new ComboBox<>();
        ComboBox<Integer> value = new ComboBox<>();
        value.getItems().setAll(1, 2, 3);
        goal.setAccessibleText(words.text("form.goal"));
        value.setAccessibleText(words.text("form.strength"));
        goal.setConverter(new Named<>(this::name));
        Runnable show = () -> {
            List<String> now = List.copyOf(model.goals().keySet());
            if (!goal.getItems().equals(now)) {
                goal.getItems().setAll(now);
            }
            if (goal.getValue() == null && !now.isEmpty()) {
                goal.setValue(now.get(0));
            }
            value.setValue(model.goals().get(goal.getValue()));
        };
        show.run();
        goal.valueProperty()
                .addListener((of, before, now) -> value.setValue(model.goals().get(now)));
        value.setOnAction(e -> {
            if (goal.getValue() != null
                    && value.getValue() != null
                    && !value.getValue().equals(model.goals().get(goal.getValue()))) {
                model.setGoal(goal.getValue(), value.getValue());
                model.draft().settle();
            }
        });
        model.draft().document().addListener((of, before, now) -> show.run());
        Label strengthOf = Labels.text(words.text("form.strength-of"), "second", "small");
        strengthOf.setMinWidth(USE_PREF_SIZE);
        line.getChildren().addAll(strengthOf, goal, value);
        return line;
    }
}
