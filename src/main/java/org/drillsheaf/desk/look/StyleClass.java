package org.drillsheaf.desk.look;

import javafx.scene.Node;

/** Style classes that come and go. */
public final class StyleClass {
    private StyleClass() {}

    /** Gives or takes a style; one that is as wanted already is not touched, or the toolkit would work out the node's look anew. */
    public static void set(Node node, String style, boolean wanted) {
        if (node.getStyleClass().contains(style) != wanted) {
            if (wanted) {
                node.getStyleClass().add(style);
            } else {
                node.getStyleClass().remove(style);
            }
        }
    }
}
