package org.drillsheaf.desk.figure;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.image.Image;

/**
 * Small pictures for lists: made one after the other in the background, the last asked for first, because that is what is in
 * sight; those asked for long ago and not yet begun are forgotten. The newest made are kept. All methods are for the window's
 * thread.
 *
 * @param <K> what a picture is of; equal keys have equal pictures
 */
public final class SmallPictures<K> {
    /** More waiting pictures than a tall window has rows are of rows that were scrolled past. */
    private static final int MOST_WAITING = 40;

    private final Function<K, Optional<Image>> maker;
    private final Executor background;
    private final Executor window;
    private final Map<K, Optional<Image>> made;
    private final Deque<Wish<K>> waiting = new ArrayDeque<>();
    private boolean working;

    private record Wish<K>(K key, Consumer<Optional<Image>> then) {}

    /**
     * @param maker makes one picture, off the window's thread; empty when there is none to make
     * @param window runs what it is given on the window's thread
     * @param most number of pictures kept
     */
    public SmallPictures(Function<K, Optional<Image>> maker, Executor background, Executor window, int most) {
        this.maker = maker;
        this.background = background;
        this.window = window;
        made = new LinkedHashMap<>(16, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, Optional<Image>> eldest) {
                return size() > most;
            }
        };
    }

    /** The picture if it is made already. */
    public Optional<Image> ready(K key) {
        return Optional.ofNullable(made.get(key)).flatMap(picture -> picture);
    }

    /**
     * Asks for a picture.
     *
     * @param then gets it on the window's thread, at once when it is ready; not at all when it was asked for too long ago
     */
    public void want(K key, Consumer<Optional<Image>> then) {
        Optional<Image> ready = made.get(key);
        if (ready != null) {
            then.accept(ready);
            return;
        }
        waiting.addFirst(new Wish<>(key, then));
        if (waiting.size() > MOST_WAITING) {
            waiting.removeLast();
        }
        next();
    }

    private void next() {
        if (working || waiting.isEmpty()) {
            return;
        }
        Wish<K> wish = waiting.removeFirst();
        Optional<Image> ready = made.get(wish.key);
        if (ready != null) {
            wish.then.accept(ready);
            next();
            return;
        }
        working = true;
        background.execute(() -> {
            Optional<Image> picture = maker.apply(wish.key);
            window.execute(() -> {
                made.put(wish.key, picture);
                working = false;
                wish.then.accept(picture);
                next();
            });
        });
    }
}
