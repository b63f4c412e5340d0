package org.drillsheaf.desk.frame;

import java.util.List;
import javafx.scene.Parent;
import javafx.scene.input.KeyEvent;

/** What stands in the middle of the window. */
public interface Page {

    /** A key with what it does, for the end of the status line. */
    record Hint(String key, String words) {}

    Parent node();

    List<Hint> hints();

    /** The page has come into sight; it takes the focus where the work goes on. */
    void shown();

    /** A key that no control used. */
    default boolean pressed(KeyEvent key) {
        return false;
    }

    /** Takes the last change back. */
    default void undo() {}

    /** Brings back what was taken back last. */
    default void redo() {}

    /** The page goes for good. */
    default void close() {}
}
