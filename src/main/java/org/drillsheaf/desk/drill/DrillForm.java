package org.drillsheaf.desk.drill;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.DrillStatus;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.Phase;

/** Words, tags and dose of a drill, with what the check finds beside the field it concerns. */
public final class DrillForm extends ScrollPane {
    private static final String ENGLISH = "en";
    private static final List<String> DOSES = List.of("sets", "each", "hold-seconds", "effort");

    private final DrillModel model;
    private final DrillWords drillWords;
    private final Words words;
    private final FormFields fields;
    private final GridPane grid = new GridPane();
    private final Map<String, VBox> beside = new LinkedHashMap<>();
    private final Map<String, Node> controls = new LinkedHashMap<>();
    private int row;

    /** @param phaseName what the house calls a phase */
    public DrillForm(DrillModel model, DrillWords drillWords, Words words, Function<Phase, String> phaseName) {
        this.model = model;
        this.drillWords = drillWords;
        this.words = words;
        this.fields = new FormFields(model.draft(), words);
        getStyleClass().add("drill-form");
        setFitToWidth(true);
        setFocusTraversable(false);
        grid.getStyleClass().add("form-grid");
        ColumnConstraints names = new ColumnConstraints();
        names.setPercentWidth(16);
        ColumnConstraints controlColumn = new ColumnConstraints();
        controlColumn.setHgrow(Priority.ALWAYS);
        controlColumn.setFillWidth(true);
        controlColumn.setPercentWidth(53);
        ColumnConstraints findings = new ColumnConstraints();
        findings.setPercentWidth(31);
        grid.getColumnConstraints().addAll(names, controlColumn, findings);
        build(phaseName);
        grid.setMinWidth(0);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setContent(grid);
        model.findings().addListener((of, before, now) -> showFindings());
        showFindings();
    }

    private void build(Function<Phase, String> phaseName) {
        text("name", "/name");
        text("purpose", "/purpose");
        family();
        phases(phaseName);
        GoalsField goals = new GoalsField(model, drillWords, fields, words);
        add("goals", goals, goals.first());
        ids("positions", drillWords.positions().keySet(), id -> Optional.ofNullable(
                        drillWords.positions().get(id))
                .map(p -> p.name().best(languages()))
                .orElse(id));
        ids("equipment", drillWords.equipment().keySet(), id -> Optional.ofNullable(
                        drillWords.equipment().get(id))
                .map(e -> e.name().best(languages()))
                .orElse(id));
        steps("set-up");
        steps("action");
        text("breathing", "/breathing/cue");
        lines("feel");
        lines("not-feel");
        faults();
        dose();
        lines("stop");
        ConditionsField conditions = new ConditionsField(model, words);
        add("conditions", conditions, conditions);
        version();
    }

    private List<String> languages() {
        return List.of(words.language());
    }

    /** A row of the form; the name leads to the control. */
    private void add(String field, Node node, Node main) {
        Label name = Labels.prose(model.name(field), "second", "form-name");
        name.setLabelFor(main);
        GridPane.setValignment(name, VPos.TOP);
        VBox findings = new VBox();
        findings.getStyleClass().add("form-findings");
        beside.put(field, findings);
        controls.put(field, main);
        grid.addRow(row++, name, node, findings);
    }

    private void text(String field, String pointer) {
        TextArea control = fields.sentence(() -> model.text(pointer, ENGLISH), t -> model.setText(pointer, ENGLISH, t));
        control.setId("field-" + field);
        add(field, control, control);
    }

    private void lines(String field) {
        TextArea area = fields.lines(() -> model.lines(field, ENGLISH), t -> model.setLines(field, ENGLISH, t));
        area.setId("field-" + field);
        add(field, area, area);
    }

    private void steps(String field) {
        TextArea area = fields.lines(() -> model.lines(field, ENGLISH), t -> model.setLines(field, ENGLISH, t));
        area.setId("field-" + field);
        Label count = Labels.text("", "second", "small");
        Runnable counted = () -> {
            String text = area.getText();
            int lines = (int) text.lines().filter(l -> !l.isBlank()).count();
            int wordCount = text.isBlank() ? 0 : text.strip().split("\\s+").length;
            count.setText(words.text("form.steps", lines, wordCount));
        };
        counted.run();
        area.textProperty().addListener((of, before, now) -> counted.run());
        HBox under = new HBox(count, Labels.spring(), Labels.text(words.text("form.new-step"), "third", "small"));
        add(field, new VBox(3, area, under), area);
    }

    private void family() {
        TextField family = fields.line(() -> model.text("/family"), t -> model.set("/family", t));
        HBox.setHgrow(family, Priority.ALWAYS);
        TextField level = fields.number(model.name("level"), () -> model.text("/level"), t -> model.set("/level", t));
        Label levelName = Labels.text(model.name("level"), "second");
        levelName.setLabelFor(level);
        levelName.setMinWidth(USE_PREF_SIZE);
        HBox both = new HBox(8, family, levelName, level);
        both.setAlignment(Pos.CENTER_LEFT);
        add("family", both, family);
        beside.put("level", Optional.ofNullable(beside.get("family")).orElseThrow());
    }

    private void phases(Function<Phase, String> phaseName) {
        FlowPane boxes = new FlowPane();
        boxes.getStyleClass().add("tag-row");
        for (Phase phase : Phase.values()) {
            CheckBox box = new CheckBox(phaseName.apply(phase));
            box.setSelected(model.ids("phases").contains(phase.id()));
            box.setOnAction(e -> {
                List<String> chosen = new ArrayList<>();
                for (Phase each : Phase.values()) {
                    boolean own = each == phase
                            ? box.isSelected()
                            : model.ids("phases").contains(each.id());
                    if (own) {
                        chosen.add(each.id());
                    }
                }
                model.setIds("phases", chosen);
                model.draft().settle();
            });
            model.draft()
                    .document()
                    .addListener((of, before, now) ->
                            box.setSelected(model.ids("phases").contains(phase.id())));
            boxes.getChildren().add(box);
        }
        add("phases", boxes, boxes.getChildren().get(0));
    }

    private void ids(String field, Set<String> all, java.util.function.Function<String, String> text) {
        FlowPane tags = fields.tags(
                words.text("form.add"),
                List.copyOf(all),
                text,
                () -> model.ids(field),
                id -> {
                    List<String> more = new ArrayList<>(model.ids(field));
                    more.add(id);
                    model.setIds(field, more);
                },
                id -> {
                    List<String> rest = new ArrayList<>(model.ids(field));
                    rest.remove(id);
                    model.setIds(field, rest);
                });
        add(field, tags, tags.getChildren().get(tags.getChildren().size() - 1));
    }

    private void faults() {
        VBox rows = new VBox(8);
        int count = model.draft().now().at("/faults").size();
        for (int i = 0; i < count; i++) {
            String pointer = "/faults/" + i;
            TextArea fault = fields.sentence(
                    () -> model.text(pointer + "/fault", ENGLISH), t -> model.setText(pointer + "/fault", ENGLISH, t));
            TextArea fix = fields.sentence(
                    () -> model.text(pointer + "/fix", ENGLISH), t -> model.setText(pointer + "/fix", ENGLISH, t));
            fault.setAccessibleRoleDescription(words.text("form.fault", i + 1));
            fix.setAccessibleRoleDescription(words.text("form.fix", i + 1));
            rows.getChildren().add(new VBox(2, fault, fix)); // beside each other neither would be seen whole
        }
        add(
                "faults",
                rows,
                rows.getChildren().isEmpty()
                        ? rows
                        : ((VBox) rows.getChildren().get(0)).getChildren().get(0));
    }

    private void dose() {
        GridPane doses = new GridPane();
        doses.getStyleClass().add("dose-grid");
        int line = 0;
        Node first = doses;
        for (String dose : DOSES) {
            String pointer = "/dose/" + dose;
            TextField usual = number(words.text("form.dose.usual"), dose, pointer + "/default");
            TextField least = number(words.text("form.dose.least"), dose, pointer + "/range/0");
            TextField most = number(words.text("form.dose.most"), dose, pointer + "/range/1");
            Label name = Labels.text(words.text("dose." + dose), "second", "small");
            name.setLabelFor(usual);
            doses.addRow(
                    line++,
                    name,
                    usual,
                    Labels.text(words.text("form.dose.from"), "second", "small"),
                    least,
                    Labels.text(words.text("form.dose.to"), "second", "small"),
                    most);
            first = line == 1 ? usual : first;
        }
        add("dose", doses, first);
    }

    private TextField number(String what, String dose, String pointer) {
        return fields.number(words.text("dose." + dose) + ", " + what, () -> model.text(pointer), t -> {
            if (t.strip().matches("\\d{1,3}")) {
                model.set(pointer, t);
            }
        });
    }

    private void version() {
        javafx.scene.control.ComboBox<DrillStatus> status = fields.choice(
                List.of(DrillStatus.values()),
                s -> words.text("status." + s.id()),
                () -> DrillStatus.of(model.text("/status")).orElse(DrillStatus.DRAFT),
                s -> model.set("/status", s.id()));
        add("status", status, status);
        TextField author = fields.line(() -> model.text("/author"), t -> model.set("/author", t));
        add("author", author, author);
        TextField reviewed = fields.line(() -> model.text("/reviewed-on"), t -> model.set("/reviewed-on", t));
        reviewed.setNodeOrientation(javafx.geometry.NodeOrientation.LEFT_TO_RIGHT);
        HBox day = new HBox(8, reviewed, Buttons.link(words.text("form.today"), model::reviewedToday));
        day.setAlignment(Pos.CENTER_LEFT);
        add("reviewed-on", day, reviewed);
        TextArea reason = fields.sentence(() -> model.text("/reason"), t -> model.set("/reason", t));
        reason.setId("field-reason");
        add("reason", reason, reason);
    }

    private void showFindings() {
        beside.values().forEach(b -> b.getChildren().clear());
        for (Finding finding : model.findings().get()) {
            VBox box = beside.get(finding.field());
            if (box != null) {
                box.getChildren().add(FindingLine.of(finding, words));
            }
        }
    }

    /** Whether a finding of this field is shown here. */
    public boolean shows(String field) {
        return beside.containsKey(field);
    }

    /** Goes to the field. */
    public void go(String field) {
        Node control = controls.get(field);
        if (control != null) {
            control.requestFocus();
            double height = grid.getHeight() - getViewportBounds().getHeight();
            Node in = control;
            while (in.getParent() != null && in.getParent() != grid) {
                in = in.getParent();
            }
            setVvalue(
                    height <= 0
                            ? 0
                            : Math.max(0, Math.min(1, (in.getBoundsInParent().getMinY() - 20) / height)));
        }
    }
}
