package org.drillsheaf.desk.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ContentDisplay;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.drillsheaf.desk.look.Labels;
import org.jspecify.annotations.Nullable;

/** The sheets of a visit in the order of the work: one lies open, the others show their edge with one line. */
final class Sheaf extends VBox {
    /** Further sheets, such as progress, have no edge. */
    private static final int WITH_EDGE = 4;

    private final List<Sheet> sheets = new ArrayList<>();
    private final Map<Integer, Edge> edges = new TreeMap<>();
    private final Runnable opened;
    private Label summary = new Label();
    private int open;
    private boolean compact;

    private record Edge(Button button, Label summary) {}

    /** @param opened is told when another sheet lies open */
    Sheaf(Runnable opened) {
        this.opened = opened;
    }

    void add(List<Sheet> further) {
        sheets.addAll(further);
        lay();
    }

    int size() {
        return sheets.size();
    }

    Sheet sheet(int number) {
        return sheets.get(number);
    }

    /** The sheet that lies open. */
    Sheet open() {
        return sheets.get(open);
    }

    int openNumber() {
        return open;
    }

    void open(int number) {
        if (number < sheets.size()) {
            open = number;
            lay();
            opened.run();
            open().shown();
        }
    }

    /** With little room the closed edges share one row. */
    void compact(boolean little) {
        Node focused = getScene() == null ? null : getScene().getFocusOwner();
        boolean inside = isInside(focused);
        compact = little;
        sheets.forEach(sheet -> sheet.compact(little));
        lay();
        if (inside) {
            applyCss(); // what was laid anew can take the focus only after a layout
            layout();
            if (focused != null && isInside(focused)) {
                focused.requestFocus();
            } else {
                open().shown();
            }
        }
    }

    private boolean isInside(@Nullable Node node) {
        for (Node n = node; n != null; n = n.getParent()) {
            if (n == this) {
                return true;
            }
        }
        return false;
    }

    private void lay() {
        getChildren().clear();
        edges.clear();
        summary = Labels.prose(open().summary(), "second");
        HBox together = new HBox();
        for (int i = 0; i < sheets.size(); i++) {
            if (i == open) {
                getChildren().addAll(head(i), open().content());
                VBox.setVgrow(open().content(), Priority.ALWAYS);
            } else if (i < WITH_EDGE) {
                Edge edge = edge(i);
                edges.put(i, edge);
                HBox.setHgrow(edge.button(), Priority.ALWAYS);
                (compact ? together : this).getChildren().add(edge.button());
            }
        }
        if (compact) {
            getChildren().add(together);
        }
        show();
    }

    /** Shows the newest summaries. */
    void show() {
        summary.setText(open().summary());
        edges.forEach((number, edge) -> {
            Sheet sheet = sheets.get(number);
            String said = sheet.summary();
            edge.button().setAccessibleText(sheet.name() + ". " + said);
            edge.summary().setText(compact ? "" : said);
        });
    }

    private Edge edge(int number) {
        Label line = Labels.text("", "second");
        HBox row = new HBox(
                10, triangle("triangle"), Labels.text(sheets.get(number).name(), "edge-name"), line, Labels.spring());
        boolean allInOneRow = compact && open >= WITH_EDGE;
        if (!allInOneRow) {
            row.getChildren().add(Labels.key("Ctrl " + (number + 1)));
        }
        row.setAlignment(Pos.CENTER_LEFT);
        Button button = new Button();
        button.setGraphic(row);
        button.setContentDisplay(ContentDisplay.GRAPHIC_ONLY);
        button.getStyleClass().add("edge");
        button.setMaxWidth(Double.MAX_VALUE);
        row.prefWidthProperty().bind(button.widthProperty().subtract(34));
        button.setOnAction(e -> open(number));
        return new Edge(button, line);
    }

    private HBox head(int number) {
        HBox row = new HBox(
                10, triangle("triangle", "down"), Labels.text(open().name(), "edge-name"), summary, Labels.spring());
        row.getChildren().addAll(open().actions());
        if (!compact) {
            row.getChildren().add(Labels.key("Ctrl " + (number + 1)));
        }
        row.getStyleClass().add("open-head");
        row.setMinHeight(Region.USE_PREF_SIZE); // grows with a summary of several lines
        return row;
    }

    private static Region triangle(String... styles) {
        Region triangle = new Region();
        triangle.getStyleClass().addAll(styles);
        return triangle;
    }

    /** See {@link Sheet#locked}. */
    void locked() {
        sheets.forEach(Sheet::locked);
    }
}
