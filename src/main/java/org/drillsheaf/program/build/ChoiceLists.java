package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Collection;
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

    private final Model model;
    private final Node node;
    private final List<Collection<Listed>> lists = new ArrayList<>();
    private final List<Map<Long, List<Listed>>> sharing = new ArrayList<>();

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
        Map<Long, List<Listed>> holding = new HashMap<>();
        sharing.set(phase, holding);
        if (phase == 0) {
            return onward;
        }
        PhaseModel earlier = model.phases.get(phase - 1);
        for (Listed listed : choices) {
            Choice able = listed.drills.only(d -> earlier.offers(d) && !node.forbidden[phase - 1].has(d));
            for (long set : shared(phase, able)) {
                onward.merge(set, listed.onward, Math::min);
                holding.computeIfAbsent(set, s -> new ArrayList<>()).add(listed);
            }
        }
        return onward;
    }

    /** The choices of the first phase. */
    Collection<Listed> first() {
        return lists.get(0);
    }

    /** The choices of a later phase that share as many drills with these of the phase before as they must, at most two. */
    Collection<Listed> after(int phase, Choice earlier) {
        Map<Choice, Listed> found = new HashMap<>();
        for (long set : shared(phase, earlier)) {
            for (Listed listed : sharing.get(phase).getOrDefault(set, List.of())) {
                found.putIfAbsent(listed.drills, listed);
            }
        }
        return found.values();
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

    static Choice drills(long set) {
        int first = (int) (set >>> 32) - 1;
        int second = (int) set - 1;
        return second < 0 ? Choice.EMPTY : first < 0 ? Choice.of(second) : Choice.of(first, second);
    }
}
