package org.drillsheaf.desk.screen;

import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * The key that answers the safety questions does not run on into the table, where N takes a value away: held down it does
 * nothing there, nor when it is pressed once more. Any other key, and the second press, count again.
 */
final class RunOnKeys {
    /** Until the last answer's own key is let go, and the next one after it. */
    private static final int RELEASES = 2;

    private boolean answers;
    private int releases;

    /** The last question was answered; whether by these keys is known from the last one pressed. */
    void answered() {
        releases = answers ? RELEASES : 0;
    }

    /** Whether a key, pressed or let go, must do nothing. */
    boolean stops(KeyEvent key) {
        boolean isAnswer = key.getCode() == KeyCode.N || key.getCode() == KeyCode.Y;
        if (key.getEventType() == KeyEvent.KEY_PRESSED) {
            answers = isAnswer && !key.isShortcutDown() && !key.isAltDown();
            releases = answers ? releases : 0;
            return releases > 0;
        }
        if (key.getEventType() == KeyEvent.KEY_RELEASED && isAnswer && releases > 0) {
            releases--;
        }
        return false;
    }

    /** The coach went elsewhere with the mouse. */
    void forget() {
        releases = 0;
    }
}
