package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every program below a limit that leaves nothing open but changes of position and what counts less: set of positions by set of
 * positions, from the last phase back. The later phases ask for most, so few choices are left in them; what these cost at least
 * is known for each set of drills that can be shared with them, and the phase before is searched for all its choices that
 * hold one. A list is made once for a phase, a set of positions and what is shared, whatever stands later.
 *
 * <p>One object answers one question; not safe for several threads.
 */
final class SetChains {
    /** In more positions than this a phase has too many choices to look at all of them. */
    private static final int POSITIONS = 2;

    private final Model model;
    private final Objective objective;
    private final Node node;
    private final PositionSets sets;
    private final Supports supports;
    private final Tally tally;
    private final Listing listing;
    private final List<EveryChoice> searches = new ArrayList<>();
    private final long[] alone;
    private final long[] before;
    private long sum;
    private final long start;
    private long limit;
    private long beyond;
    private int size;
    private final ChoiceLists lists;
    private final long[] positions;
    private final List<Map<Long, Map<Long, List<ChoiceLists.Listed>>>> made = new ArrayList<>();
    private final List<Map<Long, Choice>> forbidden = new ArrayList<>();
    private List<Choice> best = List.of();

    /**
     * @param sets for the same limit
     * @param alone what each phase of the node costs at least, alone
     */
    SetChains(
            Model model,
            Objective objective,
            Node node,
            PositionSets sets,
            Supports supports,
            long[] alone,
            long limit,
            Tally tally,
            Listing listing) {
        this.model = model;
        this.objective = objective;
        this.node = node;
        this.sets = sets;
        this.supports = supports;
        this.alone = alone;
        this.limit = limit;
        this.start = limit;
        this.tally = tally;
        this.listing = listing;
        beyond = sets.leftOut();
        before = new long[alone.length];
        positions = new long[alone.length];
        for (int p = 0; p < alone.length; p++) {
            before[p] = sum;
            sum += alone[p];
            searches.add(new EveryChoice(model.phases.get(p), objective, model.families, tally));
            made.add(new HashMap<>());
            forbidden.add(new HashMap<>());
        }
        lists = new ChoiceLists(model, node);
    }

    /** The best program below the limit; when it is cut short, nothing is an answer but the program. */
    SearchResult search() {
        back(alone.length - 1, Onward.of(Map.of(ChoiceLists.NONE, 0L), model.phases.get(alone.length - 1)));
        return new SearchResult(best, best.isEmpty() ? Long.MAX_VALUE : limit, beyond, isCut());
    }

    private boolean isCut() {
        return tally.spent() || size > listing.mostChoices();
    }

    private void back(int phase, Onward onward) {
        long later = onward.least();
        long rest = later + before[phase];
        for (long set : sets.of(phase)) {
            if (phase < alone.length - 1 && !sets.canCarry(phase + 1, positions[phase + 1], set)) {
                continue;
            }
            long own = Math.max(alone[phase], sets.using(phase, set));
            if (own + rest < limit) {
                own = Math.max(own, sets.cost(phase, set));
            }
            if (own == Long.MAX_VALUE || own + rest >= limit) {
                leaveOut(own, rest);
                continue;
            }
            positions[phase] = set;
            Collection<ChoiceLists.Listed> choices = choices(phase, set, onward);
            if (isCut()) {
                return;
            }
            if (choices.isEmpty()) {
                continue;
            }
            Map<Long, Long> shared = lists.put(phase, choices);
            if (phase > 0) {
                back(phase - 1, Onward.of(shared, model.phases.get(phase - 1)));
            } else {
                programs();
            }
        }
    }

    private void programs() {
        SearchResult result = new ListedPrograms(model, objective, lists, tally, limit).best();
        if (result.found()) {
            best = result.drills();
            limit = result.value();
        }
        beyond = Math.min(beyond, result.bound());
    }

    private void leaveOut(long value, long rest) {
        if (value != Long.MAX_VALUE) {
            beyond = Math.min(beyond, value + rest);
        }
    }

    /** All choices in exactly these positions that can be part of a program with what stands later. */
    private Collection<ChoiceLists.Listed> choices(int phase, long set, Onward onward) {
        Map<Choice, ChoiceLists.Listed> found = new HashMap<>();
        if (onward.size() > listing.fewSets() && Long.bitCount(set) <= POSITIONS) {
            for (ChoiceLists.Listed listed : holding(phase, set, ChoiceLists.NONE)) {
                long least = Long.MAX_VALUE;
                for (long shared : lists.shared(phase + 1, listed.drills())) {
                    least = Math.min(least, onward.with(shared));
                }
                take(phase, listed, least, found);
            }
            return found.values();
        }
        for (int k = 0; k < onward.size(); k++) {
            if ((onward.positions(k) & ~set) == 0) {
                for (ChoiceLists.Listed listed : holding(phase, set, onward.shared(k))) {
                    take(phase, listed, onward.value(k), found);
                }
            }
        }
        return found.values();
    }

    /** @param later what the later phases come to at least; the largest number when they cannot follow */
    private void take(int phase, ChoiceLists.Listed listed, long later, Map<Choice, ChoiceLists.Listed> found) {
        if (later == Long.MAX_VALUE || found.containsKey(listed.drills())) {
            return;
        }
        long onward = listed.value() + later;
        long least = onward + before[phase];
        if (least < limit) {
            least += supports.cost(phase, listed.drills(), open(least, limit));
        }
        if (least < limit) {
            found.put(listed.drills(), new ChoiceLists.Listed(listed.drills(), listed.value(), onward));
        } else {
            beyond = Math.min(beyond, least);
        }
    }

    /** All choices in exactly these positions that hold the shared drills, below the limit with every other phase at its best. */
    private List<ChoiceLists.Listed> holding(int phase, long set, long shared) {
        Map<Long, List<ChoiceLists.Listed>> known = made.get(phase).computeIfAbsent(set, s -> new HashMap<>());
        List<ChoiceLists.Listed> list = known.get(shared);
        if (list == null) {
            List<ChoiceLists.Listed> all = new ArrayList<>();
            long rest = sum - alone[phase];
            Choice without = without(phase, set);
            long others = searches.get(phase)
                    .below(
                            set & node.positions[phase],
                            set,
                            node.forced[phase].union(ChoiceLists.drills(shared)),
                            without,
                            Math.max(alone[phase], sets.using(phase, set)),
                            start - rest,
                            (choice, value) -> {
                                all.add(new ChoiceLists.Listed(choice, value, value));
                                size++;
                                return size <= listing.mostChoices();
                            });
            leaveOut(others, rest);
            list = all;
            known.put(shared, list);
        }
        return list;
    }

    /** Drills that cannot stand in the phase with these positions, because of what they need before. */
    private Choice without(int phase, long set) {
        return forbidden.get(phase).computeIfAbsent(set, s -> {
            PhaseModel here = model.phases.get(phase);
            long least = Math.max(alone[phase], sets.using(phase, set)) + sum - alone[phase];
            int[] out = Arrays.stream(here.drill)
                    .filter(d -> (here.positionOf(d) & set) != 0)
                    .filter(d -> {
                        long cost = least + supports.cost(phase, Choice.of(d), open(least, start));
                        if (cost >= start) {
                            beyond = Math.min(beyond, cost);
                        }
                        return cost >= start;
                    })
                    .toArray();
            return node.forbidden[phase].union(Choice.of(out));
        });
    }

    /** How many positions more are too many. */
    private int open(long least, long below) {
        return objective.unpack(below - 1, Level.POSITIONS) - objective.unpack(least, Level.POSITIONS) + 1;
    }
}
