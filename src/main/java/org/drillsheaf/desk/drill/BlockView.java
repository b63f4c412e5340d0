package org.drillsheaf.desk.drill;

import java.util.List;
import java.util.Locale;
import javafx.geometry.NodeOrientation;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.ImageView;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.figure.Pixels;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Segments;
import org.drillsheaf.desk.words.Words;

/** The drill as it will be printed, in the language that is chosen, and how many findings stop it. */
public final class BlockView extends VBox {
    private final DrillModel model;
    private final Words words;
    private final Label stops = Labels.prose("", "small");

    public BlockView(DrillModel model, Words words) {
        this.model = model;
        this.words = words;
        getStyleClass().add("block-view");
        List<String> languages = model.languages();
        Segments<String> choice =
                new Segments<>(words.text("block.language"), languages, BlockView::name, model.language()::set);
        choice.take(model.language().get());
        ImageView picture = new ImageView();
        picture.setPreserveRatio(true);
        picture.setSmooth(true);
        StackPane paper = new StackPane(picture);
        paper.getStyleClass().add("block-paper");
        paper.setNodeOrientation(NodeOrientation.LEFT_TO_RIGHT);
        paper.setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        paper.setAccessibleText(words.text("block.picture"));
        ScrollPane scroll = new ScrollPane(paper);
        scroll.setFitToWidth(true);
        scroll.setFocusTraversable(false);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
        picture.fitWidthProperty().bind(scroll.widthProperty().subtract(34));
        model.block()
                .addListener((of, before, now) ->
                        picture.setImage(now.map(Pixels::of).orElse(null)));
        picture.setImage(model.block().get().map(Pixels::of).orElse(null));
        Label state = Labels.text("", "second", "small");
        Runnable showState = () -> {
            boolean stale = model.looking().get();
            state.setText(
                    words.text(stale ? "block.making" : model.block().get().isEmpty() ? "block.none" : "block.made"));
            paper.setOpacity(stale ? 0.75 : 1);
        };
        showState.run();
        model.looking().addListener((of, before, now) -> showState.run());
        model.block().addListener((of, before, now) -> showState.run());
        getChildren().addAll(Labels.text(words.text("block.title"), "bold"), choice, scroll, state, stops);
        model.findings().addListener((of, before, now) -> showStops());
        showStops();
    }

    /** A language in its own words. */
    static String name(String tag) {
        Locale locale = Locale.forLanguageTag(tag);
        String own = locale.getDisplayLanguage(locale);
        return own.isEmpty() ? tag : Words.capital(own);
    }

    private void showStops() {
        int stopping =
                (int) model.findings().get().stream().filter(Finding::stops).count();
        int all = model.findings().get().size();
        stops.setText(stopping > 0 ? words.count("drill.stops", stopping) : words.count("drill.remarks", all));
        stops.getStyleClass().remove("bold");
        if (stopping > 0) {
            stops.getStyleClass().add("bold");
        }
    }
}
