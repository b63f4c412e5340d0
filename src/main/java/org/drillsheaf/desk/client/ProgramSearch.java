package org.drillsheaf.desk.client;

import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.desk.work.Lane;
import org.jspecify.annotations.Nullable;

/**
 * The program of the chosen visit: the last one built, and the search for the next. The search runs beside the toolkit's thread
 * and ends itself when nobody waits for it any more. Belongs to the toolkit's thread.
 */
final class ProgramSearch {
    /** A search that takes longer is shown, with a way to stop it. */
    private static final Duration LONG = Duration.ofMillis(400);

    private final Evaluator evaluator;
    private final Background background;
    private final ObservableValue<LocalDate> visit;
    private final Consumer<String> failed;
    private final Lane building;
    private final ReadOnlyObjectWrapper<Optional<Evaluation.Built>> built =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper isLong = new ReadOnlyBooleanWrapper();
    private @Nullable Search search;

    /**
     * @param visit the day of the chosen visit; a program for another day is not taken
     * @param failed gets what went wrong
     */
    ProgramSearch(
            Evaluator evaluator, Background background, ObservableValue<LocalDate> visit, Consumer<String> failed) {
        this.evaluator = evaluator;
        this.background = background;
        this.visit = visit;
        this.failed = failed;
        this.building = new Lane(background);
    }

    ReadOnlyObjectProperty<Optional<Evaluation.Built>> built() {
        return built.getReadOnlyProperty();
    }

    /** A program is being searched for, and the coach would wonder. */
    ReadOnlyBooleanProperty isLong() {
        return isLong.getReadOnlyProperty();
    }

    /** Takes a program that was known without a search. */
    void take(Evaluation.Built known) {
        overtake();
        end(search);
        built.set(Optional.of(known));
    }

    /** Another visit is chosen. */
    void forget() {
        built.set(Optional.empty());
    }

    /** Whether the very search is under way. */
    boolean isFor(Evaluation wanted) {
        return search != null && search.of == wanted;
    }

    void build(Evaluation wanted) {
        overtake();
        Search mine = new Search(wanted);
        search = mine;
        background.later(LONG, () -> isLong.set(search != null));
        building.run(
                () -> evaluator.build(wanted, () -> mine.stopped),
                result -> {
                    end(mine);
                    if (mine.wanted && result.of().date().equals(visit.getValue())) {
                        built.set(Optional.of(result));
                    }
                },
                e -> {
                    end(mine);
                    failed.accept(String.valueOf(e.getMessage()));
                });
    }

    /** The best program found so far comes, and says that it is not proved. */
    void stop() {
        if (search != null) {
            search.stopped = true;
        }
    }

    /** Nobody waits for the program of what was typed before. */
    private void overtake() {
        if (search != null) {
            search.wanted = false;
            search.stopped = true;
        }
    }

    private void end(@Nullable Search ended) {
        if (search == ended) {
            search = null;
            isLong.set(false);
        }
    }

    /** One search for a program. */
    private static final class Search {
        private final Evaluation of;
        private volatile boolean stopped;
        private boolean wanted = true;

        Search(Evaluation of) {
            this.of = of;
        }
    }
}
