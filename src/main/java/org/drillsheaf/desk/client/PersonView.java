package org.drillsheaf.desk.client;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.store.record.Content;

/** The client as a person: name, stature, time, things at home, and what he or she lives with. */
public final class PersonView extends VBox {
    private static final String STATURE = "stature-cm";

    private final Words words;
    private final Knowledge knowledge;
    private final Map<String, TextField> fields = new LinkedHashMap<>();
    private final Map<String, CheckBox> equipment = new LinkedHashMap<>();
    private final Map<String, CheckBox> avoid = new LinkedHashMap<>();
    private final ComboBox<String> wish = new ComboBox<>();
    private final ComboBox<String> language = new ComboBox<>();
    private final ConditionsView conditions;
    private final Label wrong = Labels.prose("", "bold", "field-error");
    private final Content before;
    private String sex;

    /**
     * @param before the block about the person; empty for a new client
     * @param saved gets the block about the person and the conditions
     */
    public PersonView(
            Words words,
            Knowledge knowledge,
            Content before,
            Content conditionsBefore,
            BiConsumer<Content, Content> saved,
            Runnable closed) {
        this.words = words;
        this.knowledge = knowledge;
        this.before = before;
        this.sex = before.value("/sex").orElse("");
        this.conditions = new ConditionsView(words, knowledge.safetyRules(), conditionsBefore);
        getStyleClass().add("side-panel");
        boolean fresh = before.value("/name").isEmpty();
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        int row = 0;
        for (String key : List.of("name", "called", "born", STATURE, "minutes-per-session", "sessions-per-week")) {
            TextField field = new TextField(shown(key, before.value("/" + key).orElse(fresh ? usual(key) : "")));
            field.setAccessibleRoleDescription(words.text("person." + key));
            field.textProperty().addListener((of, old, now) -> right(field));
            fields.put(key, field);
            row(grid, row++, "person." + key, field);
        }
        Segments<String> sexes = new Segments<>(
                words.text("person.sex"),
                List.of("female", "male", ""),
                s -> words.text("person.sex." + (s.isEmpty() ? "none" : s)),
                s -> sex = s);
        sexes.take(sex);
        row(grid, row++, "person.sex", sexes);
        language.getItems().setAll("en", "es", "ar");
        language.setConverter(new Named<>(tag -> words.text("language." + tag)));
        language.setValue(before.value("/languages/0").orElse(words.language()));
        language.setAccessibleText(words.text("person.language"));
        row(grid, row++, "person.language", language);
        wish.getItems().add("");
        wish.getItems().addAll(words().goals().keySet());
        wish.setConverter(new Named<>(id -> id.isEmpty()
                ? words.text("person.no-wish")
                : Objects.requireNonNull(words().goals().get(id)).name().best(List.of(words.language()))));
        wish.setValue(before.value("/wish").orElse(""));
        wish.setAccessibleText(words.text("person.wish"));
        row(grid, row, "person.wish", wish);
        VBox all = new VBox(
                12,
                grid,
                Labels.text(words.text("person.equipment"), "bold"),
                boxes("equipment", equipment, equipmentNames()),
                Labels.text(words.text("person.avoid"), "bold"),
                boxes("avoid", avoid, positionNames()),
                Labels.text(words.text("person.conditions"), "bold"),
                conditions);
        ScrollPane scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        Button save = Buttons.main(words.text(fresh ? "person.add" : "person.save"), () -> save(saved));
        Button close = Buttons.plain(words.text("person.close"), closed);
        close.setCancelButton(true);
        save.setDefaultButton(true);
        addEventFilter(KeyEvent.KEY_PRESSED, key -> {
            // A box takes Enter for itself; here it means the same as in every other field.
            if (key.getCode() == KeyCode.ENTER && key.getTarget() instanceof CheckBox) {
                save.fire();
                key.consume();
            }
        });
        getChildren()
                .addAll(
                        Labels.text(words.text(fresh ? "person.new" : "person.title"), "heading"),
                        scroll,
                        new HBox(8, save, close));
        if (fresh) {
            getChildren().add(1, Labels.prose(words.text("person.needed"), "small", "second"));
        }
        getStyleClass().add("person");
    }

    /** Puts the focus into the first field. */
    public void ready() {
        applyCss();
        layout();
        field("name").requestFocus();
    }

    private DrillWords words() {
        return knowledge.catalogue().words();
    }

    private String shown(String key, String written) {
        return key.equals(STATURE) ? words.number(written) : written;
    }

    private static String usual(String key) {
        return switch (key) {
            case "minutes-per-session" -> "20";
            case "sessions-per-week" -> "6";
            default -> "";
        };
    }

    private Map<String, String> equipmentNames() {
        Map<String, String> names = new LinkedHashMap<>();
        words().equipment().forEach((id, item) -> names.put(id, item.name().best(List.of(words.language()))));
        return names;
    }

    private Map<String, String> positionNames() {
        Map<String, String> names = new LinkedHashMap<>();
        words().positions()
                .forEach((id, position) -> names.put(id, position.name().best(List.of(words.language()))));
        return names;
    }

    private FlowPane boxes(String key, Map<String, CheckBox> boxes, Map<String, String> names) {
        FlowPane pane = new FlowPane(14, 6);
        TreeSet<String> chosen = new TreeSet<>(list(key));
        names.forEach((id, name) -> {
            CheckBox box = new CheckBox(name);
            box.setSelected(chosen.contains(id));
            boxes.put(id, box);
            pane.getChildren().add(box);
        });
        return pane;
    }

    private List<String> list(String key) {
        List<String> found = new ArrayList<>();
        for (int i = 0; before.value("/" + key + "/" + i).isPresent(); i++) {
            found.add(before.value("/" + key + "/" + i).orElseThrow());
        }
        return found;
    }

    private void row(GridPane grid, int row, String key, javafx.scene.Node field) {
        Label label = Labels.text(words.text(key), "second", "form-name");
        label.setMinWidth(USE_PREF_SIZE);
        label.setLabelFor(field);
        GridPane.setValignment(label, VPos.TOP);
        grid.addRow(row, label, field instanceof TextField ? new VBox(field) : field);
    }

    private void save(BiConsumer<Content, Content> saved) {
        if (isMistaken()) {
            return;
        }
        Content person = before.with("/name", text("name"));
        person = text("called").isEmpty() ? person.without("/called") : person.with("/called", text("called"));
        person = text("born").matches("\\d{4}")
                ? person.with("/born", Integer.parseInt(text("born")))
                : person.with("/born", text("born"));
        person = sex.isEmpty() ? person.without("/sex") : person.with("/sex", sex);
        person = person.with("/" + STATURE, Double.parseDouble(Words.plain(text(STATURE))));
        person = person.with("/languages", listed(List.of(language.getValue())));
        person = person.with("/equipment", listed(ticked("equipment", equipment)));
        person = person.with("/avoid", listed(ticked("avoid", avoid)));
        person = person.with("/minutes-per-session", Integer.parseInt(text("minutes-per-session")));
        person = person.with("/sessions-per-week", Integer.parseInt(text("sessions-per-week")));
        person = wish.getValue().isEmpty() ? person.without("/wish") : person.with("/wish", wish.getValue());
        saved.accept(person, conditions.content());
    }

    /** What is ticked, and what stands in the file without a box of its own, such as a stand-in. */
    private List<String> ticked(String key, Map<String, CheckBox> boxes) {
        List<String> ids = new ArrayList<>();
        boxes.forEach((id, box) -> {
            if (box.isSelected()) {
                ids.add(id);
            }
        });
        list(key).stream().filter(id -> !boxes.containsKey(id)).forEach(ids::add);
        return ids;
    }

    private static Content listed(List<String> ids) {
        Content list = Content.emptyList();
        for (int i = 0; i < ids.size(); i++) {
            list = list.with("/" + i, ids.get(i));
        }
        return list;
    }

    private TextField field(String key) {
        return Objects.requireNonNull(fields.get(key));
    }

    private String text(String key) {
        return field(key).getText().strip();
    }

    private boolean isMistaken() {
        if (text("name").isEmpty()) {
            return wrong("name", "person.wrong.name");
        }
        if (!text("born").matches("(19|20)\\d\\d(-\\d\\d-\\d\\d)?")) {
            return wrong("born", "person.wrong.born");
        }
        if (!isNumber(STATURE, 90, 230)) {
            return wrong(STATURE, "person.wrong.stature");
        }
        if (!isNumber("minutes-per-session", 3, 120)) {
            return wrong("minutes-per-session", "person.wrong.minutes");
        }
        return !isNumber("sessions-per-week", 1, 14) && wrong("sessions-per-week", "person.wrong.sessions");
    }

    private boolean isNumber(String key, int least, int most) {
        String text = Words.plain(text(key));
        boolean whole = !key.equals(STATURE);
        return text.matches(whole ? "\\d{1,3}" : "\\d{2,3}(\\.\\d)?")
                && Double.parseDouble(text) >= least
                && Double.parseDouble(text) <= most;
    }

    /** What is wrong stands under the field, which has the focus, until another key is typed in it. */
    private boolean wrong(String key, String words) {
        fields.values().forEach(this::right);
        TextField field = field(key);
        wrong.setText(this.words.text(words));
        StyleClass.set(field, "wrong", true);
        field.setAccessibleHelp(wrong.getText());
        if (field.getParent() instanceof VBox box) {
            box.getChildren().add(wrong);
        }
        field.requestFocus();
        return true;
    }

    private void right(TextField field) {
        StyleClass.set(field, "wrong", false);
        field.setAccessibleHelp(null);
        if (field.getParent() instanceof VBox box) {
            box.getChildren().remove(wrong);
        }
    }
}
