package org.drillsheaf.desk.client;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Message;
import org.drillsheaf.desk.look.StyleClass;
import org.drillsheaf.desk.words.Words;

/** What a client's page has to say above its sheets: two desks at one field, a server that is away, the guided first visit. */
final class ClientMessages extends VBox {
    /** Style of what is said between the head of a page and its sheets: the room around it. */
    static final String SAID = "said";

    private final ClientCase client;
    private final Words words;
    private final Supplier<String> guideStep;
    private Optional<FieldClashView> clash = Optional.empty();
    private Optional<ServerAwayView> serverAway = Optional.empty();
    private boolean guided;
    private boolean compact;
    private Object shown = "";

    /** @param guideStep key of the words for what comes next in a first visit */
    ClientMessages(ClientCase client, Supplier<String> guideStep) {
        this.client = client;
        this.words = client.workplace().words();
        this.guideStep = guideStep;
        client.clash().addListener((of, old, now) -> show());
        client.saved().addListener((of, old, now) -> {
            if (!(now instanceof Saving.State.OnItsWay)) { // while a save is on its way nobody knows
                showServer(now);
            }
        });
    }

    /** The question which of two values stands, while it is open. */
    Optional<FieldClashView> clash() {
        return clash;
    }

    /** Shows the guided first visit. */
    void guide() {
        guided = true;
        show();
    }

    /** With little room the guide takes no more of it than its sentence needs. */
    void compact(boolean little) {
        compact = little;
        show();
    }

    /** One message for as long as the server is away: the button in it keeps the focus while the number grows. */
    private void showServer(Saving.State saved) {
        if (saved instanceof Saving.State.Waits waits) {
            serverAway = serverAway.or(() -> Optional.of(new ServerAwayView(client)));
            serverAway.get().show(waits);
        } else {
            serverAway = Optional.empty();
        }
        show();
    }

    /** Shows what there is to say now; made anew only when that is something else. */
    void show() {
        Object wanted = List.of(
                client.clash().get(),
                serverAway.isPresent(),
                client.evaluation().get().filter(e -> e.course().isEmpty()).map(Evaluation::problems),
                guided ? guideStep.get() : "",
                compact);
        if (wanted.equals(shown)) {
            return;
        }
        shown = wanted;
        getChildren().clear();
        clash = client.clash().get().map(open -> new FieldClashView(client, open));
        clash.ifPresent(getChildren()::add);
        serverAway.ifPresent(getChildren()::add);
        client.evaluation().get().filter(e -> e.course().isEmpty()).ifPresent(e -> e.problems().stream()
                .limit(2)
                .forEach(p -> getChildren().add(new Message("caution", p.what() + ".", p.remedy() + "."))));
        if (guided) {
            Button close = Buttons.small(words.text("guide.close"), () -> {
                guided = false;
                show();
            });
            String step = words.text(guideStep.get());
            getChildren()
                    .add(
                            compact
                                    ? Message.inOneRow("remark", step, close)
                                    : new Message("remark", words.text("guide.title"), step, close));
        }
        StyleClass.set(this, SAID, !getChildren().isEmpty());
    }
}
