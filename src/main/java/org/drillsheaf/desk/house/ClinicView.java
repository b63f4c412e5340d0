package org.drillsheaf.desk.house;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Documents;
import org.drillsheaf.desk.Workplace;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.GrowingArea;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.handout.StyleText;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.House;

/** What the papers say about the clinic. Kept in the record, so that every desk prints the same. */
final class ClinicView extends VBox {
    private static final List<String> FIELDS = List.of(
            "name", "phone", "address", "emergency-number", "call-today/en", "call-today/es", "scope/en", "scope/es");

    private final Workplace workplace;
    private final Words words;
    private final Map<String, TextInputControl> fields = new LinkedHashMap<>();
    private final Label told = Labels.prose("", "bold");
    private final LogoView logo;
    private Loaded at = new Loaded(Content.emptyMap(), Optional.empty(), Optional.empty());

    ClinicView(Workplace workplace) {
        this.workplace = workplace;
        this.words = workplace.words();
        getStyleClass().add("house-part");
        told.managedProperty().bind(told.textProperty().isNotEmpty());
        GridPane grid = new GridPane();
        grid.getStyleClass().add("form");
        int row = 0;
        for (String key : FIELDS) {
            TextInputControl field = key.startsWith("scope/") ? new GrowingArea("", 1) : new TextField();
            String name = words.text("clinic." + key.replace('/', '-'));
            field.setAccessibleRoleDescription(name);
            Label label = Labels.prose(name, "second", "house-name", "form-name");
            label.setLabelFor(field);
            fields.put(key, field);
            GridPane.setValignment(label, VPos.TOP);
            grid.addRow(row++, label, field);
        }
        logo = new LogoView(workplace, this::changeLogo);
        Label logoName = Labels.text(words.text("logo.name"), "second", "house-name", "form-name");
        GridPane.setValignment(logoName, VPos.TOP);
        grid.addRow(row, logoName, logo);
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

    private record Loaded(Content style, Optional<byte[]> logo, Optional<House.Setting> kept) {}

    private void load() {
        workplace
                .background()
                .run(
                        () -> {
                            StyleText style = HouseStyleSetting.style(workplace.store(), workplace.folders());
                            return new Loaded(
                                    HouseStyleSetting.content(style),
                                    style.logo(),
                                    HouseStyleSetting.kept(workplace.store()));
                        },
                        this::show,
                        e -> told.setText(String.valueOf(e.getMessage())));
    }

    private void show(Loaded loaded) {
        at = loaded;
        fields.forEach(
                (key, field) -> field.setText(loaded.style().value("/" + key).orElse("")));
        logo.show(loaded.style().value("/logo").flatMap(name -> loaded.logo()
                .map(bytes -> new LogoView.File(name, bytes))));
    }

    private void save() {
        Content changed = at.style();
        for (Map.Entry<String, TextInputControl> field : fields.entrySet()) {
            String path = "/" + field.getKey();
            changed = field.getValue().getText().isBlank()
                    ? changed.without(path)
                    : changed.with(path, field.getValue().getText().strip());
        }
        keep(changed, at.logo());
    }

    private void changeLogo(Optional<LogoView.File> wanted) {
        Content style = wanted.map(file -> at.style().with("/logo", file.name()))
                .orElseGet(() -> at.style().without("/logo"));
        keep(style, wanted.map(LogoView.File::content).or(at::logo));
    }

    private void keep(Content wanted, Optional<byte[]> image) {
        Loaded before = at;
        workplace
                .background()
                .run(
                        () -> keep(new Loaded(wanted, image, before.kept()), before),
                        result -> {
                            told.setText(result.told());
                            result.kept().ifPresent(now -> {
                                at = now;
                                logo.show(now.style().value("/logo").flatMap(name -> now.logo()
                                        .map(bytes -> new LogoView.File(name, bytes))));
                            });
                        },
                        e -> told.setText(String.valueOf(e.getMessage())));
    }

    private record Kept(String told, Optional<Loaded> kept) {}

    /** Only what a paper can be printed with is kept. */
    private Kept keep(Loaded wanted, Loaded before) {
        Problems problems = new Problems();
        StyleText style =
                new StyleText(words.text("clinic.title"), wanted.style().yaml(), wanted.logo());
        Documents.maker(workplace.folders(), workplace.knowledge(), style, problems);
        if (problems.hasErrors()) {
            return new Kept(
                    problems.all().get(0).what() + ". " + problems.all().get(0).remedy() + ".", Optional.empty());
        }
        boolean logoKept = wanted.logo().isEmpty()
                || wanted.logo().equals(before.logo())
                || HouseStyleSetting.saveLogo(workplace.store(), wanted.logo().get(), workplace.coach());
        Optional<House.Setting> saved = logoKept
                ? HouseStyleSetting.save(workplace.store(), wanted.style(), wanted.kept(), workplace.coach())
                : Optional.empty();
        return new Kept(
                words.text(saved.isPresent() ? "clinic.saved" : "clinic.other-desk"),
                saved.map(s -> new Loaded(wanted.style(), wanted.logo(), Optional.of(s))));
    }
}
