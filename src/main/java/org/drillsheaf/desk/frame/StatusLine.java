package org.drillsheaf.desk.frame;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import org.drillsheaf.desk.client.Saving;
import org.drillsheaf.desk.look.Labels;
import org.drillsheaf.desk.words.Words;

/** The last line of the window: what was saved, what is new, and the keys of the page. */
public final class StatusLine extends HBox {
    private final Words words;
    private final Label saved = new Label();
    private final Label place;
    private final Label news = new Label();
    private final HBox keys = new HBox(14);

    public StatusLine(Words words, String where) {
        this.words = words;
        getStyleClass().add("status-line");
        saved.setText(words.text("saved.ready"));
        keys.setAlignment(javafx.geometry.Pos.CENTER_RIGHT);
        place = Labels.text(where);
        saved.setWrapText(true);
        news.setWrapText(true);
        keys.setMinWidth(0);
        getChildren().addAll(saved, place, news, Labels.spring(), keys);
        widthProperty().addListener((of, before, now) -> fit());
    }

    @Override
    protected void layoutChildren() {
        fit();
        super.layoutChildren();
    }

    /**
     * What is said comes first, then the keys, then where the record lies. What finds no room whole is left out, the last keys
     * first: half a word helps nobody.
     */
    private void fit() {
        double gaps = 4 * getSpacing() + getInsets().getLeft() + getInsets().getRight();
        double left = getWidth() - gaps - saved.prefWidth(-1) - news.prefWidth(-1);
        for (Node key : keys.getChildren()) {
            left -= key.prefWidth(-1) + keys.getSpacing();
            show(key, left > 0);
        }
        show(place, left > place.prefWidth(-1));
    }

    private static void show(Node node, boolean fits) {
        node.setVisible(fits);
        node.setManaged(fits);
    }

    /** How the saving stands. */
    public void saved(Saving.State state) {
        if (state instanceof Saving.State.OnItsWay) {
            saved.setText(words.text("saved.saving"));
        } else if (state instanceof Saving.State.Saved done) {
            saved.setText(words.text("saved.saved", words.time(done.at())));
        } else if (state instanceof Saving.State.Waits) {
            saved.setText(words.text("saved.waits"));
        } else if (state instanceof Saving.State.Asks) {
            saved.setText(words.text("saved.asks"));
        } else if (state instanceof Saving.State.Failed failed) {
            saved.setText(words.text("saved.failed", failed.what(), failed.remedy()));
        }
    }

    /** Something that stops no work. */
    public void tell(String text) {
        news.setText(text);
    }

    public void hints(List<Page.Hint> hints) {
        keys.getChildren().clear();
        for (Page.Hint hint : hints) {
            HBox one = new HBox(4, Labels.key(hint.key()), Labels.text(hint.words()));
            one.setMinWidth(USE_PREF_SIZE);
            one.setAlignment(javafx.geometry.Pos.CENTER);
            keys.getChildren().add(one);
        }
    }
}
