package org.drillsheaf.desk.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.drillsheaf.course.ClientVisit;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.store.record.Content;

/** The first line of a client's page: who it is, what to mind, and what can be taken back. */
final class ClientHead extends HBox {
    private static final double WIDER_THAN_ANY_WINDOW = 8_000;
    private static final String UNDO_KEY = "Ctrl Z";

    private final ClientCase client;
    private final Words words;
    private final Runnable edit;
    private final Runnable back;
    private final Button undo;
    private Object shown = "";
    private boolean compact;

    /**
     * @param edit opens the person and the conditions
     * @param back closes the page
     */
    ClientHead(ClientCase client, Runnable edit, Runnable back) {
        this.client = client;
        this.words = client.workplace().words();
        this.edit = edit;
        this.back = back;
        this.undo = Buttons.withKey(Buttons.small("", client::undo), UNDO_KEY);
        getStyleClass().add("client-head");
    }

    /** Shows who it is and what can be taken back now. */
    void show() {
        showPerson();
        Optional<String> what = client.undoName();
        undo.setVisible(what.isPresent());
        undo.setManaged(what.isPresent());
        what.map(w -> words.text("client.undo", w)).ifPresent(text -> {
            undo.setText(compact ? words.text("menu.undo") : text);
            undo.setAccessibleText(text + ", " + UNDO_KEY);
            undo.setTooltip(compact ? new Tooltip(text) : null);
            undo.setContentDisplay(compact ? ContentDisplay.TEXT_ONLY : ContentDisplay.RIGHT);
        });
    }

    /** With little room it says in one line who it is; what would be undone stands in the tip of its button. */
    void compact(boolean little) {
        compact = little;
        show();
    }

    /** Made anew only when something else stands in it, so that what has the focus there keeps it. */
    private void showPerson() {
        Object wanted = List.of(
                compact,
                client.draft().get().person(),
                client.evaluation().get().flatMap(Evaluation::visit).map(ClientVisit::conditions));
        if (wanted.equals(shown)) {
            return;
        }
        shown = wanted;
        Content person = client.draft().get().person();
        Label name = Labels.text(client.draft().get().name(), "title");
        name.setMinWidth(Region.USE_PREF_SIZE);
        Label facts = Labels.text(facts(person), "second");
        Button details = Buttons.link(words.text("client.details"), edit);
        Button list = Buttons.link(words.text("client.all"), back);
        // What finds no room beside the name goes on below it.
        FlowPane who = new FlowPane(name, facts, details);
        who.getStyleClass().add("client-facts");
        who.setPrefWrapLength(WIDER_THAN_ANY_WINDOW);
        HBox.setHgrow(who, Priority.ALWAYS);
        client.evaluation().get().flatMap(Evaluation::visit).ifPresent(visit -> cautions(visit, who));
        getChildren().setAll(who, list, undo);
    }

    private String facts(Content person) {
        List<String> facts = new ArrayList<>();
        person.value("/born").ifPresent(b -> facts.add(words.text("client.born", b)));
        person.value("/stature-cm").ifPresent(s -> facts.add(words.number(s) + " cm"));
        person.value("/minutes-per-session")
                .filter(m -> !compact)
                .ifPresent(m -> facts.add(words.text("client.minutes", m)));
        return String.join(" · ", facts);
    }

    private void cautions(ClientVisit visit, FlowPane beside) {
        visit.conditions().stream().limit(3).forEach(condition -> {
            var known =
                    client.evaluator().knowledge().safetyRules().conditions().get(condition.id());
            String name = known == null ? condition.id() : known.name().best(List.of(words.language(), "en"));
            String side = condition.sides().size() == 1
                    ? ", "
                            + words.text("side."
                                    + condition.sides().iterator().next().id())
                    : "";
            beside.getChildren().add(Labels.tag(name + side, "caution"));
        });
    }
}
