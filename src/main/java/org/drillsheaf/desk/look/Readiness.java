package org.drillsheaf.desk.look;

import java.util.Optional;
import javafx.event.ActionEvent;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;

/**
 * Whether a button can do its work. A button that cannot is shown with a dashed edge, keeps the focus, and says why; pressing
 * it does nothing.
 */
public final class Readiness {
    private final Button button;
    private Optional<String> reason = Optional.empty();

    private Readiness(Button button) {
        this.button = button;
        button.addEventFilter(ActionEvent.ACTION, e -> {
            if (reason.isPresent()) {
                e.consume();
            }
        });
    }

    public static Readiness of(Button button) {
        return new Readiness(button);
    }

    /** @param why one sentence; empty when the button is ready */
    public void set(Optional<String> why) {
        if (reason.equals(why)) {
            return;
        }
        reason = why;
        StyleClass.set(button, "not-ready", why.isPresent());
        button.setAccessibleHelp(why.orElse(null));
        button.setTooltip(why.map(Tooltip::new).orElse(null));
    }

    public Optional<String> reason() {
        return reason;
    }
}
