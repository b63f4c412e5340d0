package org.drillsheaf.desk.client;

import javafx.scene.Node;

/**
 * Shows a sheet anew when something changed, but only while it lies open: what nobody sees need not keep up with every key. A
 * closed sheet is shown anew when it is opened. For the window's thread.
 */
public final class WhileOpen {
    private final Node content;
    private final Runnable show;
    private boolean isBehind;

    /** @param show makes the content right; run at once when the content is in a window, else when it comes into one */
    public WhileOpen(Node content, Runnable show) {
        this.content = content;
        this.show = show;
        content.sceneProperty().addListener((of, before, now) -> {
            if (now != null && isBehind) {
                changed();
            }
        });
        changed();
    }

    /** Something that is shown has changed. */
    public void changed() {
        isBehind = content.getScene() == null;
        if (!isBehind) {
            show.run();
        }
    }
}
