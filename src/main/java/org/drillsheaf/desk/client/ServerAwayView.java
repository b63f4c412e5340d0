package org.drillsheaf.desk.client;

import java.time.LocalTime;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Buttons;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;

/** Says that the server of the house is away, how much waits for it on this desk, and tries it at once when asked to. */
final class ServerAwayView extends VBox {
    private final ClientCase client;
    private final Words words;
    private final Label title = Labels.caution("");
    private final Label more = Labels.prose("");
    private final Label tried = Labels.prose("", "second");
    private final Button tryNow;
    private boolean trying;

    ServerAwayView(ClientCase client) {
        this.client = client;
        this.words = client.workplace().words();
        this.tryNow = Buttons.small(words.text("offline.try"), this::tryNow);
        getStyleClass().addAll("message", "caution");
        FlowPane row = new FlowPane(8, 4, tryNow, tried);
        row.setRowValignment(VPos.CENTER);
        row.setAlignment(Pos.CENTER_LEFT);
        getChildren().addAll(title, more, row);
    }

    void show(Saving.State.Waits waits) {
        title.setText(words.text("offline.title", words.time(waits.since())));
        more.setText(words.count("offline.more", waits.changes()));
    }

    /** The button stays as it is meanwhile, so that it keeps the focus; a second press changes nothing. */
    private void tryNow() {
        if (trying) {
            return;
        }
        trying = true;
        tried.setText(words.text("offline.trying"));
        client.tryServer(answered -> {
            trying = false;
            String now = words.time(LocalTime.now(client.workplace().clock()));
            tried.setText(answered ? "" : words.text("offline.no-answer", now));
        });
    }
}
