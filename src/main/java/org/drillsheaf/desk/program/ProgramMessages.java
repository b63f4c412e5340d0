package org.drillsheaf.desk.program;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.words.Words;

/** What stands above the phases: what cannot hold together, why there is no program, that one is being looked for. */
final class ProgramMessages extends VBox {
    private final ProgramModel model;
    private final Words words;

    ProgramMessages(ProgramModel model, Words words) {
        this.model = model;
        this.words = words;
    }

    /** @return what cannot hold together, if anything; its rows can be let go */
    Optional<ClashView> show(boolean little) {
        getChildren().clear();
        boolean forNow = model.client().isBuiltForNow();
        Optional<ClashView> clash = model.clash().filter(c -> forNow).map(c -> new ClashView(model, words, c, little));
        clash.ifPresent(c -> {
            getChildren().add(c);
            model.shown().ifPresent(s -> getChildren().add(kept(s)));
        });
        if (forNow) {
            model.refusal()
                    .forEach(r -> getChildren().add(model.isStoppedWithout() ? message(r, searchAgain()) : message(r)));
        }
        if (!model.mayBuild()) {
            getChildren().add(message(model.whyNotBuilt("program.safety-first")));
        }
        if (model.client().searchIsLong().get()) {
            getChildren().add(searching());
        }
        model.notProved().ifPresent(gap -> getChildren().add(notProved(gap)));
        return clash;
    }

    private Node searching() {
        ProgressBar bar = new ProgressBar();
        bar.setAccessibleText(words.text("work.bar"));
        Button stop =
                Buttons.small(words.text("work.stop"), () -> model.client().stopSearch());
        HBox line = new HBox(12, Labels.text(words.text("program.searching"), "bold"), bar, stop);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("kept");
        return line;
    }

    private Node notProved(String gap) {
        VBox box = new VBox(new Message(
                "caution", words.text("program.stopped"), words.text("program.stopped-more", gap), searchAgain()));
        box.getStyleClass().add("said");
        return box;
    }

    private Button searchAgain() {
        return Buttons.small(
                words.text("program.search-on"), () -> model.client().searchAgain());
    }

    private static VBox message(String text, Button... actions) {
        VBox box = new VBox(new Message("caution", text, "", actions));
        box.getStyleClass().add("said");
        return box;
    }

    private Node kept(ProgramModel.Shown shown) {
        HBox line = new HBox(
                8,
                Labels.text(words.text("program.kept", words.time(shown.at())), "bold"),
                Labels.text(words.text("program.kept-more"), "second"));
        line.getStyleClass().add("kept");
        return line;
    }
}
