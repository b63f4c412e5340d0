package org.drillsheaf.desk.drill;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.drillsheaf.YamlDocument;
import org.jspecify.annotations.Nullable;

/**
 * The file of one drill while it is edited: the text itself is what is true, and every change of it can be taken back. For one
 * thread.
 */
public final class Draft {
    private record Step(String words, YamlDocument before, YamlDocument after) {}

    private final ReadOnlyObjectWrapper<YamlDocument> document;
    private final ReadOnlyObjectWrapper<Optional<String>> undoable = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> redoable = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper changed = new ReadOnlyBooleanWrapper();
    private final Deque<Step> done = new ArrayDeque<>();
    private final Deque<Step> undone = new ArrayDeque<>();
    private YamlDocument kept;
    private @Nullable String open;

    public Draft(YamlDocument kept) {
        this.kept = kept;
        this.document = new ReadOnlyObjectWrapper<>(kept);
    }

    /** The file as it stands now. */
    public ReadOnlyObjectProperty<YamlDocument> document() {
        return document.getReadOnlyProperty();
    }

    public YamlDocument now() {
        return document.get();
    }

    /** The file as it was kept last. */
    public YamlDocument kept() {
        return kept;
    }

    /** Whether anything is not kept yet. */
    public ReadOnlyBooleanProperty changed() {
        return changed.getReadOnlyProperty();
    }

    /** What would be taken back, in words. */
    public ReadOnlyObjectProperty<Optional<String>> undoable() {
        return undoable.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<String>> redoable() {
        return redoable.getReadOnlyProperty();
    }

    /**
     * Takes over a change.
     *
     * @param words what is changed, for the undo button
     * @param place changes in one place in a row are taken back together, until {@link #settle()}
     */
    public void change(String words, String place, YamlDocument next) {
        YamlDocument before = now();
        if (next.text().equals(before.text())) {
            return;
        }
        boolean goesOn = place.equals(open) && !done.isEmpty();
        Step step = new Step(words, goesOn ? done.pop().before : before, next);
        open = place;
        undone.clear();
        done.push(step);
        show(next);
    }

    /** The next change is one of its own, wherever it is. */
    public void settle() {
        open = null;
    }

    public void undo() {
        if (!done.isEmpty()) {
            Step step = done.pop();
            undone.push(step);
            settle();
            show(step.before);
        }
    }

    public void redo() {
        if (!undone.isEmpty()) {
            Step step = undone.pop();
            done.push(step);
            settle();
            show(step.after);
        }
    }

    /** The file has been written as it stands. */
    public void keep(YamlDocument written) {
        kept = written;
        settle();
        show(written);
    }

    private void show(YamlDocument next) {
        undoable.set(Optional.ofNullable(done.peek()).map(Step::words));
        redoable.set(Optional.ofNullable(undone.peek()).map(Step::words));
        changed.set(!next.text().equals(kept.text()));
        document.set(next);
    }
}
