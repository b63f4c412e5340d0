package org.drillsheaf.desk.client;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.KeyEvent;
import org.drillsheaf.desk.frame.Page;

/** One of the sheets of a visit. Its content is made when it is opened the first time. */
public interface Sheet {

    /** Name on its edge. */
    String name();

    /** One line that says how it stands, for its edge and its head. */
    String summary();

    Parent content();

    /** Buttons at the end of its head. */
    List<Node> actions();

    List<Page.Hint> hints();

    /** The sheet was opened; it takes the focus where the work goes on. */
    void shown();

    /** Lays the sheet out for little room: large type or a small window. */
    default void compact(boolean little) {}

    /** The window is locked: pictures of the client's papers go; {@link #shown} makes them again. */
    default void locked() {}

    /** A key that no control used. */
    boolean pressed(KeyEvent key);
}
