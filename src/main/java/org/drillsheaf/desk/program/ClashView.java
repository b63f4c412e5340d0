package org.drillsheaf.desk.program;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.look.Readiness;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.program.ClashSet;

/** "These cannot hold together": who asked for what, one button to let go, and what comes then. */
final class ClashView extends VBox {
    private final List<Button> buttons = new ArrayList<>();
    private final boolean little;

    /** @param little whether there is room for one thing beside the other */
    ClashView(ProgramModel model, Words words, ClashSet clash, boolean little) {
        this.little = little;
        getStyleClass().add("clash");
        HBox head = new HBox(
                10,
                Labels.tag(words.text("clash.nothing-fits"), "inverted"),
                Labels.text(words.count("clash.cannot-hold", clash.members().size()), "title"));
        head.setAlignment(Pos.CENTER_LEFT);
        getChildren()
                .addAll(
                        head,
                        Labels.prose(
                                words.text(clash.smallest() ? "clash.one-is-enough" : "clash.maybe-smaller"),
                                "second"));
        int number = 1;
        for (ClashSet.Member member : clash.members()) {
            getChildren().add(row(model, words, member, number++));
        }
    }

    private Region row(ProgramModel model, Words words, ClashSet.Member member, int number) {
        TradeWords trade = model.trade();
        String what = trade.say(member.what());
        Button let =
                Buttons.plain(trade.say(member.remedy()), () -> model.letGo(member, words.text("undo.let-go", what)));
        let.getStyleClass().add("clash-let");
        if (member.letGo().kind() == ClashSet.Kind.CARRIED) {
            Readiness.of(let).set(java.util.Optional.of(words.text("clash.house-decides")));
        }
        buttons.add(let);
        Label then = Labels.prose(trade.say(member.then()), "second");
        HBox.setHgrow(then, Priority.ALWAYS);
        HBox asked = new HBox(
                Labels.key(Integer.toString(number)),
                Labels.prose(trade.say(member.who()), "second", "clash-who"),
                Labels.prose(what, "heading", "clash-what"));
        HBox remedy = new HBox(let, then);
        for (HBox part : List.of(asked, remedy)) {
            part.getStyleClass().add("clash-row");
        }
        if (little) {
            return new VBox(asked, remedy);
        }
        asked.getChildren().addAll(List.copyOf(remedy.getChildren()));
        return asked;
    }

    /** Lets go of one, by its number from 1. */
    boolean letGo(int number) {
        if (number < 1 || number > buttons.size()) {
            return false;
        }
        buttons.get(number - 1).fire();
        return true;
    }

    /** How many can be let go. */
    int size() {
        return buttons.size();
    }

    void ready() {
        buttons.get(0).requestFocus();
    }
}
