package org.drillsheaf.desk.drill;

import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Named;
import org.drillsheaf.desk.words.Words;

/** What stands differently in an earlier version, field by field, beside what stands there now. */
public final class VersionsView extends VBox {
    private final DrillModel model;
    private final Words words;
    private final ComboBox<RevisionShelf.Edition> edition = new ComboBox<>();
    private final GridPane differences = new GridPane();

    public VersionsView(DrillModel model, Words words) {
        this.model = model;
        this.words = words;
        getStyleClass().add("versions");
        edition.setConverter(new Named<>(shown -> shown.name()));
        Label label = Labels.text(words.text("versions.compare"), "second");
        label.setLabelFor(edition);
        edition.getItems().setAll(model.editions());
        edition.getSelectionModel().select(0);
        edition.setOnAction(e -> show());
        differences.getStyleClass().add("difference-grid");
        ColumnConstraints place = new ColumnConstraints();
        place.setPercentWidth(22);
        ColumnConstraints before = new ColumnConstraints();
        before.setPercentWidth(39);
        ColumnConstraints now = new ColumnConstraints();
        now.setPercentWidth(39);
        differences.getColumnConstraints().addAll(place, before, now);
        ScrollPane scroll = new ScrollPane(differences);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
        getChildren().addAll(label, edition, scroll);
        show();
    }

    /** Shows the differences as they are now. */
    public void show() {
        differences.getChildren().clear();
        RevisionShelf.Edition with = edition.getValue();
        if (with == null) {
            return;
        }
        List<Difference> all =
                Difference.between(with.document().at(""), model.draft().now().at(""));
        if (all.isEmpty()) {
            differences.add(Labels.text(words.text("versions.same"), "second"), 0, 0, 3, 1);
            return;
        }
        differences.addRow(
                0,
                Labels.text(words.text("versions.field"), "third", "small"),
                Labels.text(with.name(), "third", "small"),
                Labels.text(words.text("versions.now"), "third", "small"));
        int row = 1;
        for (Difference difference : all) {
            Label place = Labels.prose(PlaceName.of(List.of(difference.place().split(", ")), words), "second");
            Region before = Labels.proseInAnyScript(shown(difference.before()));
            Region now = Labels.proseInAnyScript(shown(difference.now()), "bold");
            for (Region cell : List.of(place, before, now)) {
                GridPane.setValignment(cell, VPos.TOP);
            }
            differences.addRow(row++, place, before, now);
        }
    }

    private String shown(String text) {
        return text.isEmpty() ? words.text("versions.none") : text;
    }
}
