package org.drillsheaf.desk.look;

import java.time.Duration;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.desk.work.Going;
import org.jspecify.annotations.Nullable;

/** A long work beside the toolkit's thread: what it does, how far it is, and a button that stops it. Empty while nothing runs. */
public final class WorkBar extends HBox {
    private static final Duration LOOK_AGAIN = Duration.ofMillis(150);

    private final Words words;
    private final Background background;
    private final Label name = Labels.prose("");
    private final ProgressBar bar = new ProgressBar();
    private final Button stop;
    private @Nullable Going going;

    public WorkBar(Words words, Background background) {
        super(12);
        this.words = words;
        this.background = background;
        this.stop = Buttons.small(words.text("work.stop"), () -> {
            if (going != null) {
                going.stop();
            }
        });
        setAlignment(Pos.CENTER_LEFT);
        bar.setAccessibleText(words.text("work.bar"));
        getStyleClass().add("work-bar");
    }

    public boolean isRunning() {
        return going != null;
    }

    /**
     * Starts a work; one at a time.
     *
     * @param what what is done, for the coach
     * @param done gets the result
     * @param failed gets what went wrong; {@link Going.Stopped} when the coach stopped it
     */
    public <T> void run(String what, Function<Going, T> work, Consumer<T> done, Consumer<Exception> failed) {
        if (going != null) {
            return;
        }
        Going mine = new Going();
        going = mine;
        name.setText(what);
        bar.setProgress(ProgressBar.INDETERMINATE_PROGRESS);
        getChildren().setAll(name, bar, stop);
        background.run(
                () -> work.apply(mine),
                result -> {
                    end();
                    done.accept(result);
                },
                e -> {
                    end();
                    failed.accept(e);
                });
        look(mine, what);
    }

    private void end() {
        going = null;
        getChildren().clear();
    }

    private void look(Going mine, String what) {
        if (going != mine) {
            return;
        }
        Going.Place place = mine.place();
        if (place.all() > 0) {
            bar.setProgress((double) place.done() / place.all());
            name.setText(what + " " + words.text("work.of", place.done(), place.all()));
        }
        background.later(LOOK_AGAIN, () -> look(mine, what));
    }
}
