package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Some choices of each phase, found quickly by the drills that they can share with the phase before. Sets of at most two drills
 * are numbers here. Not safe for several threads.
 */
final class ChoiceLists {
    /** The set of no drills. */
    static final long NONE = 0;

    private static final int LARGEST_SET = 2;

    /**
     * A choice of a phase.
     *
     * @param value packed, of the phase alone
     * @param onward what it and the later phases come to at least
     */
    record Listed(Choice drills, long value, long onward) {}

    private static final Comparator<Listed> CHEAPEST_FIRST =
            Comparator.comparingLong(Listed::onward).thenComparing(Listed::drills, Choice::compareByName);

    private final Model model;
    private final Node node;
    private final List<Collection<Listed>> lists = new ArrayList<>();
    private final List<Map<Long, Holding>> sharing = new ArrayList<>();

    /** The choices that hold one set. */
    private static final class Holding {
        private final List<Listed> choices = new ArrayList<>();
        private boolean isSorted;

        List<Listed> cheapestFirst() {
            if (!isSorted) {
                choices.sort(CHEAPEST_FIRST);
                isSorted = true;
            }
            return choices;
        }
    }

    ChoiceLists(Model model, Node node) {
        this.model = model;
        this.node = node;
        for (int p = 0; p < model.phases.size(); p++) {
            lists.add(List.of());
            sharing.add(Map.of());
        }
    }

    /**
     * Puts the choices of a phase in place of those before.
     *
     * @return for each set that can be shared with the phase before, what the choices that hold it come to at least
     */
    Map<Long, Long> put(int phase, Collection<Listed> choices) {
        lists.set(phase, choices);
        Map<Long, Long> onward = new HashMap<>();
        Map<Long, Holding> holding = new HashMap<>();
        sharing.set(phase, holding);
        if (phase == 0) {
            return onward;
        }
        PhaseModel earlier = model.phases.get(phase - 1);
        for (Listed listed : choices) {
            Choice able = listed.drills.only(d -> earlier.offers(d) && !node.forbidden[phase - 1].has(d));
            for (long set : shared(phase, able)) {
                onward.merge(set, listed.onward, Math::min);
                holding.computeIfAbsent(set, s -> new Holding()).choices.add(listed);
            }
        }
        return onward;
    }

    /** The choices of the first phase, what comes to least first. */
    List<Listed> first() {
        return lists.get(0).stream().sorted(CHEAPEST_FIRST).toList();
    }

    /** The choices of a later phase that hold the set, and can share it with the phase before; what comes to least first. */
    List<Listed> holding(int phase, long set) {
        Holding holding = sharing.get(phase).get(set);
        return holding == null ? List.of() : holding.cheapestFirst();
    }

    /** The sets of drills, out of these, that can be what a phase shares with the one before it. */
    List<Long> shared(int phase, Choice of) {
        int size = Math.min(LARGEST_SET, model.carried(phase));
        List<Long> sets = new ArrayList<>();
        if (size == 0) {
            sets.add(NONE);
        }
        for (int i = 0; size > 0 && i < of.size(); i++) {
            if (size == 1) {
                sets.add(of.get(i) + 1L);
            }
            for (int k = i + 1; size == 2 && k < of.size(); k++) {
                sets.add((of.get(i) + 1L) << 32 | of.get(k) + 1L);
            }
        }
        return sets;
    }

    /** How many drills the set holds. */
    static int size(long set) {
        return set == NONE ? 0 : set >>> 32 == 0 ? 1 : LARGEST_SET;
    }

    static Choice drills(long set) {
        int first = (int) (set >>> 32) - 1;
        int second = (int) set - 1;
        return second < 0 ? Choice.EMPTY : first < 0 ? Choice.of(second) : Choice.of(first, second);
    }
}
