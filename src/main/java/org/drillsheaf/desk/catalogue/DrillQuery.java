package org.drillsheaf.desk.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.store.search.Folding;

/**
 * What is looked for: words in any order, each the beginning of some word of the drill, and up to four narrowings.
 *
 * @param goal id; {@code position} and {@code condition} likewise
 * @param condition only drills that its tag does not bar
 */
public record DrillQuery(
        String words,
        Optional<String> goal,
        Optional<String> position,
        Optional<Phase> phase,
        Optional<String> condition) {
    public static final DrillQuery ALL =
            new DrillQuery("", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** A drill that fits, and where the first word that is not in its name was found. */
    public record Hit(DrillEntry entry, DrillEntry.Place place, int rank) {}

    public DrillQuery withWords(String other) {
        return new DrillQuery(other, goal, position, phase, condition);
    }

    public DrillQuery withGoal(Optional<String> other) {
        return new DrillQuery(words, other, position, phase, condition);
    }

    public DrillQuery withPosition(Optional<String> other) {
        return new DrillQuery(words, goal, other, phase, condition);
    }

    public DrillQuery withPhase(Optional<Phase> other) {
        return new DrillQuery(words, goal, position, other, condition);
    }

    public DrillQuery withCondition(Optional<String> other) {
        return new DrillQuery(words, goal, position, phase, other);
    }

    public boolean isNarrowed() {
        return goal.isPresent() || position.isPresent() || phase.isPresent() || condition.isPresent();
    }

    /** The words as they are compared. */
    public List<String> folded() {
        String folded = Folding.fold(words);
        return folded.isEmpty() ? List.of() : List.of(folded.split(" "));
    }

    /** Those that fit, best first: in the name before elsewhere, at its beginning before inside, else as they come. */
    public List<Hit> find(List<DrillEntry> entries) {
        List<String> wanted = folded();
        List<Hit> hits = new ArrayList<>();
        for (DrillEntry entry : entries) {
            if (fits(entry)) {
                hit(entry, wanted).ifPresent(hits::add);
            }
        }
        if (!wanted.isEmpty()) {
            hits.sort(Comparator.comparingInt(Hit::rank));
        }
        return hits;
    }

    private boolean fits(DrillEntry entry) {
        return goal.filter(g -> entry.drill().strength(g) == 0).isEmpty()
                && position.filter(p -> !entry.drill().positions().contains(p)).isEmpty()
                && phase.filter(p -> !entry.drill().phases().contains(p)).isEmpty()
                && condition.filter(c -> entry.barred().contains(c)).isEmpty();
    }

    private static Optional<Hit> hit(DrillEntry entry, List<String> wanted) {
        int rank = 0;
        DrillEntry.Place first = DrillEntry.Place.NAME;
        for (String word : wanted) {
            Optional<DrillEntry.Place> place = place(entry, word);
            if (place.isEmpty()) {
                return Optional.empty();
            }
            boolean leads =
                    place.get() == DrillEntry.Place.NAME && entry.names().startsWith(" " + word);
            rank += leads ? 0 : 1 + 10 * place.get().ordinal();
            first = first == DrillEntry.Place.NAME ? place.get() : first;
        }
        return Optional.of(new Hit(entry, first, rank));
    }

    private static Optional<DrillEntry.Place> place(DrillEntry entry, String word) {
        String beginning = " " + word;
        for (DrillEntry.Searched searched : entry.searched()) {
            if (searched.folded().contains(beginning)) {
                return Optional.of(searched.place());
            }
        }
        return Optional.empty();
    }
}
