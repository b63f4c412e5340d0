package org.drillsheaf.desk.history;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A document with the ones before it and those taken back. Documents are immutable; a step is named by what the coach did.
 * Belongs to one thread.
 *
 * @param <D> kind of document
 */
public final class History<D> {
    private static final int MOST = 200;

    private final Deque<Step<D>> undone = new ArrayDeque<>();
    private final Deque<Step<D>> done = new ArrayDeque<>();
    private D now;

    /** What was done, and the document before it (in {@code done}) or after it (in {@code undone}). */
    private record Step<D>(String name, String group, D document) {}

    public History(D first) {
        this.now = first;
    }

    public D now() {
        return now;
    }

    /**
     * Goes on with a new document.
     *
     * @param name what was done, for the button that takes it back
     * @param group steps of one group in a row are taken back together, such as the digits of one field; empty for none
     */
    public void put(String name, String group, D document) {
        if (document.equals(now)) {
            return;
        }
        boolean sameGroup =
                !group.isEmpty() && !done.isEmpty() && done.peek().group().equals(group) && undone.isEmpty();
        if (!sameGroup) {
            done.push(new Step<>(name, group, now));
            if (done.size() > MOST) {
                done.removeLast();
            }
        }
        undone.clear();
        now = document;
    }

    /** Ends the group, so that the next step stands for itself. */
    public void endGroup() {
        if (!done.isEmpty() && !done.peek().group().isEmpty()) {
            Step<D> step = done.pop();
            done.push(new Step<>(step.name(), "", step.document()));
        }
    }

    /** What would be taken back. */
    public Optional<String> undoName() {
        return Optional.ofNullable(done.peek()).map(Step::name);
    }

    public Optional<String> redoName() {
        return Optional.ofNullable(undone.peek()).map(Step::name);
    }

    /** @return false when there is nothing to take back */
    public boolean undo() {
        if (done.isEmpty()) {
            return false;
        }
        Step<D> step = done.pop();
        undone.push(new Step<>(step.name(), "", now));
        now = step.document();
        return true;
    }

    public boolean redo() {
        if (undone.isEmpty()) {
            return false;
        }
        Step<D> step = undone.pop();
        done.push(new Step<>(step.name(), "", now));
        now = step.document();
        return true;
    }

    /** Lays something that came from elsewhere under every document; steps that then change nothing fall away. */
    public void underlay(UnaryOperator<D> change) {
        now = change.apply(now);
        replace(done, change);
        replace(undone, change);
    }

    private void replace(Deque<Step<D>> steps, UnaryOperator<D> change) {
        List<Step<D>> changed = new ArrayList<>();
        D next = now;
        for (Step<D> step : steps) {
            D document = change.apply(step.document());
            if (!document.equals(next)) {
                changed.add(new Step<>(step.name(), step.group(), document));
                next = document;
            }
        }
        steps.clear();
        steps.addAll(changed);
    }
}
