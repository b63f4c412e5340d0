package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Splits the programs of a node by the positions that each session uses. Where the limit leaves nothing open but changes of
 * position and what counts less, a phase can have few positions, most sets of them cannot do what the phase alone can do at
 * best, and neighbours must share drills in a position that both have: few chains of sets are left, and in each a phase has a
 * tenth of its drills.
 *
 * <p>One object answers one question; not safe for several threads.
 */
final class PositionSets {
    /** With more changes of position than this there are too many sets. */
    private static final int MOST_CHANGES = 5;

    private final Model model;
    private final PhaseMemo memo;
    private final Objective objective;
    private final Node node;
    private final long limit;
    private final long[] alone;
    private long sum;
    private long leftOut = Long.MAX_VALUE;
    private final List<Map<Long, Long>> costs = new ArrayList<>();
    private final List<long[]> sets = new ArrayList<>();
    private final List<Node> parts = new ArrayList<>();

    /** @param alone what each phase of the node costs at least, alone */
    PositionSets(Model model, PhaseMemo memo, Objective objective, Node node, long[] alone, long limit) {
        this.model = model;
        this.memo = memo;
        this.objective = objective;
        this.node = node;
        this.limit = limit;
        this.alone = alone;
        for (long one : alone) {
            sum += one;
        }
        if (isWorthwhile()) {
            begin();
        }
    }

    /** Whether the limit leaves so little open that the node is worth splitting. */
    boolean isWorthwhile() {
        return sum < limit
                && objective.above(Level.POSITIONS, limit - 1) == objective.above(Level.POSITIONS, sum)
                && objective.unpack(limit - 1, Level.POSITIONS) <= MOST_CHANGES;
    }

    /** What all programs of the node come to at least that are in no part. */
    long leftOut() {
        return leftOut;
    }

    /** Takes all sets of positions that a phase may use below the limit. */
    private void begin() {
        int changes = objective.unpack(limit - 1, Level.POSITIONS);
        leftOut = objective.above(Level.POSITIONS, sum) + objective.one(Level.POSITIONS, changes + 1);
        int least = objective.unpack(sum, Level.POSITIONS);
        for (int p = 0; p < alone.length; p++) {
            costs.add(new HashMap<>());
            int most = changes - least + objective.unpack(alone[p], Level.POSITIONS) + 1;
            List<Long> here = new ArrayList<>();
            if (model.phases.get(p).task.fewest() == 0) {
                here.add(0L);
            }
            subsets(offered(p), 0, most, here);
            sets.add(here.stream().mapToLong(Long::longValue).toArray());
        }
    }

    /** Sets of positions of a phase that may be part of a program below the limit. */
    long[] of(int phase) {
        return sets.get(phase);
    }

    /** Parts that hold every program of the node below the limit. */
    List<Node> parts() {
        choose(0, new long[alone.length], 0, sum);
        return parts;
    }

    private long offered(int phase) {
        PhaseModel here = model.phases.get(phase);
        long offered = 0;
        for (int i = 0; i < here.size(); i++) {
            offered |= node.forbidden[phase].has(here.drill[i]) ? 0 : here.position[i];
        }
        return offered;
    }

    private static void subsets(long of, long chosen, int most, List<Long> all) {
        for (long left = of; left != 0 && Long.bitCount(chosen) < most; left &= left - 1) {
            long set = chosen | Long.lowestOneBit(left);
            all.add(set);
            subsets(left & left - 1, set, most, all);
        }
    }

    /** @param before what the phases before cost; {@code rest}: the others alone */
    private void choose(int phase, long[] chosen, long before, long rest) {
        if (phase == chosen.length) {
            parts.add(node.within(chosen, before));
            return;
        }
        long later = rest - alone[phase];
        for (long set : sets.get(phase)) {
            if (!canCarry(phase, set, phase == 0 ? PhaseMemo.ANY : chosen[phase - 1])) {
                continue;
            }
            long cheapest = before + Math.max(alone[phase], using(phase, set)) + later;
            long own = cheapest >= limit ? 0 : cost(phase, set);
            long cost = own >= limit ? own : Math.max(cheapest, before + own + later);
            if (cost >= limit) {
                leftOut = Math.min(leftOut, cost);
                continue;
            }
            chosen[phase] = set;
            choose(phase + 1, chosen, cost - later, later);
        }
    }

    /** Whether a phase with these positions can share enough drills with the one before it. */
    boolean canCarry(int phase, long here, long earlier) {
        int carried = 0;
        int needed = model.carried(phase);
        for (int drill : needed == 0 ? new int[0] : model.carriable(phase)) {
            long position = model.phases.get(phase).positionOf(drill);
            carried += (position & here & earlier) != 0 ? 1 : 0;
            if (carried >= needed) {
                return true;
            }
        }
        return needed == 0;
    }

    /** At least what a phase costs that uses exactly these positions. */
    long cost(int phase, long set) {
        return costs.get(phase).computeIfAbsent(set, s -> {
            long below = using(phase, s) + objective.one(Level.POSITIONS, 1);
            PhaseAnswer answer = memo.solve(phase, s, node.forced[phase], node.forbidden[phase], below);
            return Math.max(answer.value(), using(phase, s));
        });
    }

    /** What all choices of the phase that use exactly these positions cost at least, as far as positions say. */
    long using(int phase, long set) {
        return objective.above(Level.POSITIONS, alone[phase])
                + objective.one(Level.POSITIONS, Math.max(0, Long.bitCount(set) - 1));
    }
}
