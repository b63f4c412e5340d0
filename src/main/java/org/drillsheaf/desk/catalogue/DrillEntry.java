package org.drillsheaf.desk.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.ConditionTag;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.library.HouseLayer.Standing;
import org.drillsheaf.store.search.Folding;

/**
 * One drill as the list shows and finds it. Immutable; everything that a search compares is folded once.
 *
 * @param barred ids of the conditions whose tag says that the drill is not for them
 */
public record DrillEntry(Drill drill, Standing standing, Set<String> barred, String names, List<Searched> searched) {

    /** Where a word was found. */
    public enum Place {
        NAME,
        GOAL,
        POSITION,
        PHASE,
        EQUIPMENT,
        FAMILY,
        STEP,
        FEEL
    }

    /** Folded text of one place, with a space before it so that word beginnings can be looked for. */
    public record Searched(Place place, String folded) {}

    public static DrillEntry of(Drill drill, Standing standing, DrillWords words) {
        List<Searched> searched = new ArrayList<>();
        String names = fold(String.join(" | ", drill.name().byLanguage().values()) + " " + drill.id());
        searched.add(new Searched(Place.NAME, names));
        add(
                searched,
                Place.GOAL,
                drill.goals().keySet().stream()
                        .map(g -> Optional.ofNullable(words.goals().get(g))
                                .map(goal -> String.join(
                                        " ", goal.name().byLanguage().values()))
                                .orElse(g))
                        .collect(Collectors.joining(" ")));
        add(
                searched,
                Place.POSITION,
                drill.positions().stream()
                        .map(p -> Optional.ofNullable(words.positions().get(p))
                                .map(position -> p + " "
                                        + String.join(
                                                " ",
                                                position.name().byLanguage().values()))
                                .orElse(p))
                        .collect(Collectors.joining(" ")));
        add(searched, Place.PHASE, drill.phases().stream().map(Phase::id).collect(Collectors.joining(" ")));
        add(
                searched,
                Place.EQUIPMENT,
                drill.equipment().stream()
                        .map(e -> Optional.ofNullable(words.equipment().get(e))
                                .map(item -> String.join(
                                        " ", item.name().byLanguage().values()))
                                .orElse(e))
                        .collect(Collectors.joining(" ")));
        add(searched, Place.FAMILY, drill.family());
        StringBuilder steps = new StringBuilder();
        drill.setUpSteps().forEach(s -> steps.append(
                        String.join(" ", s.text().byLanguage().values()))
                .append(' '));
        drill.actionSteps().forEach(s -> steps.append(
                        String.join(" ", s.text().byLanguage().values()))
                .append(' '));
        add(searched, Place.STEP, steps.toString());
        add(
                searched,
                Place.FEEL,
                drill.feel().stream()
                        .map(f -> String.join(" ", f.byLanguage().values()))
                        .collect(Collectors.joining(" ")));
        Set<String> barred = drill.conditions().stream()
                .filter(c -> c.action() == Action.EXCLUDE)
                .map(ConditionTag::condition)
                .collect(Collectors.toUnmodifiableSet());
        return new DrillEntry(drill, standing, barred, names, List.copyOf(searched));
    }

    private static void add(List<Searched> searched, Place place, String text) {
        searched.add(new Searched(place, fold(text)));
    }

    private static String fold(String text) {
        return " " + Folding.fold(text);
    }

    public String id() {
        return drill.id();
    }

    /** The name in the first of these languages that is there. */
    public String name(String language) {
        return drill.name().best(List.of(language));
    }
}
