package org.drillsheaf.desk.catalogue;

import java.util.List;
import java.util.Optional;
import javafx.geometry.NodeOrientation;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillStatus;
import org.drillsheaf.store.search.Folding;

/** A drill in the list: picture, name with the words found in it underlined, status, version, and where else a word was found. */
final class DrillCell extends ListCell<DrillQuery.Hit> {
    private final CatalogueModel model;
    private final DrillPictures pictures;
    private final Words words;
    private final ImageView picture = new ImageView();
    private final TextFlow name = new TextFlow();
    private final Label status = new Label();
    private final Label version = new Label();
    private final Label where = new Label();
    private final HBox row;

    DrillCell(CatalogueModel model, DrillPictures pictures, Words words) {
        this.model = model;
        this.pictures = pictures;
        this.words = words;
        getStyleClass().add("drill-cell");
        picture.setPreserveRatio(true);
        picture.setSmooth(true);
        StackPane well = new StackPane(picture);
        well.getStyleClass().add("drill-picture");
        well.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        picture.fitWidthProperty().bind(well.widthProperty().subtract(6));
        picture.fitHeightProperty().bind(well.heightProperty().subtract(6));
        version.getStyleClass().addAll("second", "small");
        where.getStyleClass().addAll("second", "small");
        where.setMinWidth(0);
        name.getStyleClass().add("drill-name");
        HBox line = new HBox(7, status, version, where);
        line.setAlignment(Pos.CENTER_LEFT);
        VBox texts = new VBox(3, name, line);
        texts.setAlignment(Pos.CENTER_LEFT);
        texts.setMinWidth(0);
        HBox.setHgrow(texts, Priority.ALWAYS);
        row = new HBox(9, well, texts);
        row.setAlignment(Pos.CENTER_LEFT);
        row.setMinWidth(0);
        setPrefWidth(0);
    }

    @Override
    protected void updateItem(DrillQuery.Hit hit, boolean empty) {
        super.updateItem(hit, empty);
        if (empty || hit == null) {
            setGraphic(null);
            setAccessibleText(null);
            return;
        }
        Drill drill = hit.entry().drill();
        showPicture(drill);
        showName(hit.entry().name(words.language()));
        showStatus(drill.status());
        version.setText(words.text("drills.version", drill.edition().revision()));
        where.setText(more(hit));
        setGraphic(row);
        setAccessibleText(words.text(
                "drills.entry",
                hit.entry().name(words.language()),
                status.getText(),
                drill.edition().revision(),
                where.getText()));
    }

    private void showPicture(Drill drill) {
        Optional<Image> ready = pictures.ready(drill);
        picture.setImage(ready.orElse(null));
        if (ready.isEmpty()) {
            pictures.want(drill, made -> {
                DrillQuery.Hit now = getItem();
                if (now != null && now.entry().drill() == drill) {
                    picture.setImage(made.orElse(null));
                }
            });
        }
    }

    private void showName(String text) {
        name.getChildren().clear();
        List<String> wanted = model.query().get().folded();
        for (String word : text.split("(?<= )|(?= )")) {
            List<String> folded = List.of(Folding.fold(word).split(" "));
            boolean found = wanted.stream().anyMatch(w -> folded.stream().anyMatch(f -> f.startsWith(w)));
            Text part = new Text(word);
            part.getStyleClass().addAll("name-part", found ? "found" : "other");
            name.getChildren().add(part);
        }
    }

    private void showStatus(DrillStatus now) {
        status.setText(words.text("status." + now.id()));
        status.getStyleClass()
                .setAll(
                        "label",
                        "tag",
                        switch (now) {
                            case IN_USE -> "inverted";
                            case IN_REVIEW -> "outlined";
                            case DRAFT -> "dashed";
                            case WITHDRAWN -> "struck";
                        });
    }

    private String more(DrillQuery.Hit hit) {
        Optional<Integer> findings = model.findings(hit.entry().id()).filter(n -> n > 0);
        if (findings.isPresent()) {
            return words.count("drills.findings", findings.get());
        }
        return hit.place() == DrillEntry.Place.NAME
                ? hit.entry().standing() == org.drillsheaf.drill.library.HouseLayer.Standing.STARTER
                        ? ""
                        : words.text("drills.house")
                : words.text("drills.found." + hit.place().name().toLowerCase(java.util.Locale.ROOT));
    }
}
