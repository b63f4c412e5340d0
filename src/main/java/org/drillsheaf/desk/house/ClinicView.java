package org.drillsheaf.desk.house;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Documents;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.House;

/** What the papers say about the clinic. Kept in the record, so that every desk prints the same. */
final class ClinicView extends VBox {
    private static final List<String> FIELDS = List.of(
            "name", "phone", "address", "emergency-number", "call-today/en", "call-today/es", "scope/en", "scope/es");

    private final Workplace workplace;
    private final Words words;
    private final Map<String, TextField> fields = new LinkedHashMap<>();
    private final Label told = Labels.prose("", "bold");
    private Content style = Content.emptyMap();
    private Optional<House.Setting> kept = Optional.empty();

    ClinicView(Workplace workplace) {
        this.workplace = workplace;
        this.words = workplace.words();
        getStyleClass().add("house-part");
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        int row = 0;
        for (String key : FIELDS) {
            TextField field = new TextField();
            field.setPrefColumnCount(40);
            String name = words.text("clinic." + key.replace('/', '-'));
            field.setAccessibleRoleDescription(name);
            Label label = Labels.text(name, "second");
            label.setLabelFor(field);
            fields.put(key, field);
            grid.addRow(row++, label, field);
        }
        Button save = Buttons.plain(words.text("clinic.save"), this::save);
        getChildren()
                .addAll(
                        Labels.text(words.text("clinic.title"), "heading"),
                        Labels.prose(words.text("clinic.more"), "second"),
                        grid,
                        told,
                        new HBox(save));
        load();
    }

    private record Loaded(Content style, Optional<House.Setting> kept) {}

    private void load() {
        workplace
                .background()
                .run(
                        () -> {
                            Optional<House.Setting> setting = HouseStyleSetting.kept(workplace.store());
                            return new Loaded(HouseStyleSetting.content(workplace.folders(), setting), setting);
                        },
                        this::show,
                        e -> told.setText(String.valueOf(e.getMessage())));
    }

    private void show(Loaded loaded) {
        style = loaded.style();
        kept = loaded.kept();
        fields.forEach((key, field) -> field.setText(style.value("/" + key).orElse("")));
    }

    private void save() {
        Content changed = style;
        for (Map.Entry<String, TextField> field : fields.entrySet()) {
            String path = "/" + field.getKey();
            changed = field.getValue().getText().isBlank()
                    ? changed.without(path)
                    : changed.with(path, field.getValue().getText().strip());
        }
        Content wanted = changed;
        Optional<House.Setting> before = kept;
        workplace
                .background()
                .run(
                        () -> keep(wanted, before),
                        result -> {
                            told.setText(result.told());
                            result.kept().ifPresent(s -> {
                                kept = Optional.of(s);
                                style = wanted;
                            });
                        },
                        e -> told.setText(String.valueOf(e.getMessage())));
    }

    private record Kept(String told, Optional<House.Setting> kept) {}

    /** Only what a paper can be printed with is kept. */
    private Kept keep(Content wanted, Optional<House.Setting> before) {
        Problems problems = new Problems();
        Documents.maker(
                workplace.folders(), workplace.knowledge(), words.text("clinic.title"), wanted.yaml(), problems);
        if (problems.hasErrors()) {
            return new Kept(
                    problems.all().get(0).what() + ". " + problems.all().get(0).remedy() + ".", Optional.empty());
        }
        Optional<House.Setting> saved = HouseStyleSetting.save(workplace.store(), wanted, before, workplace.coach());
        return new Kept(words.text(saved.isPresent() ? "clinic.saved" : "clinic.other-desk"), saved);
    }
}
