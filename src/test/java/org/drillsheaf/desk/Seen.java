package org.drillsheaf.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import org.drillsheaf.desk.picture.Well;

/** What is to be seen in a scene graph. */
public final class Seen {
    private Seen() {}

    /** Calls back with every node that is to be seen, parents first. */
    public static void walk(Node node, Consumer<Node> visitor) {
        if (!node.isVisible()) {
            return;
        }
        visitor.accept(node);
        if (node instanceof Parent parent) {
            for (Node child : List.copyOf(parent.getChildrenUnmodifiable())) {
                walk(child, visitor);
            }
        }
    }

    /** All texts. */
    public static List<String> texts(Node root) {
        List<String> texts = new ArrayList<>();
        walk(root, node -> {
            if (node instanceof Labeled labeled
                    && labeled.getText() != null
                    && !labeled.getText().isEmpty()) {
                texts.add(labeled.getText());
            } else if (node instanceof TextInputControl field
                    && !field.getText().isEmpty()) {
                texts.add(field.getText());
            }
        });
        return texts;
    }

    /** The first control with this text or this name for screen readers; controls before plain texts. */
    public static Optional<Node> find(Node root, String text) {
        List<Node> controls = new ArrayList<>();
        List<Node> others = new ArrayList<>();
        walk(root, node -> {
            boolean named = text.equals(node.getAccessibleText())
                    || text.equals(node.getAccessibleRoleDescription())
                    || node instanceof Labeled labeled && text.equals(labeled.getText());
            if (named) {
                (node.isFocusTraversable() ? controls : others).add(node);
            }
        });
        return controls.stream().findFirst().or(() -> others.stream().findFirst());
    }

    /** The first control whose name for screen readers begins so. */
    public static Optional<Node> findStarting(Node root, String name) {
        List<Node> found = new ArrayList<>();
        walk(root, node -> {
            if (node.getAccessibleText() != null && node.getAccessibleText().startsWith(name)) {
                found.add(node);
            }
        });
        return found.stream().findFirst();
    }

    /** Number of pictures that are drawn. */
    public static int pictures(Node root) {
        List<Node> found = new ArrayList<>();
        walk(root, node -> {
            if (node instanceof javafx.scene.image.ImageView view && view.getImage() != null) {
                found.add(node);
            }
        });
        return found.size();
    }

    /** Number of places for pictures that are still empty. */
    static int emptyWells(Node root) {
        List<Node> wells = new ArrayList<>();
        walk(root, node -> {
            if (node instanceof Well && pictures(node) == 0) {
                wells.add(node);
            }
        });
        return wells.size();
    }

    /** What a screen reader says a control is called. */
    public static String name(Node node) {
        Object text = node.queryAccessibleAttribute(javafx.scene.AccessibleAttribute.TEXT);
        String said = node.getAccessibleText() != null ? node.getAccessibleText() : text == null ? "" : text.toString();
        if (node instanceof TextInputControl) {
            // The text of a field is what is typed in it; its name is the label that belongs to it, or its role.
            Object label = node.queryAccessibleAttribute(javafx.scene.AccessibleAttribute.LABELED_BY);
            String role = node.getAccessibleRoleDescription();
            return role != null ? role : label == null ? "" : "labelled";
        }
        if (said.isEmpty() && node instanceof Labeled labeled && labeled.getText() != null) {
            return labeled.getText(); // its skin would say so, but has it only from the first painted frame on
        }
        if (said.isEmpty() && node instanceof javafx.scene.control.ScrollPane) {
            return "scrolls"; // has nothing to say; what it holds speaks
        }
        return said;
    }
}
