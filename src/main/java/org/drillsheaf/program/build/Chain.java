package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The best choices of all phases, exactly, when neighbouring phases share as many drills as they must and everything else that
 * lies between phases is left out. What a phase costs depends on its neighbours only through the drills shared with them: from
 * the last phase back, each set of drills that can be shared with the phase before is tried, drill by drill, as long as the limit
 * allows what the two phases cost with it.
 *
 * <p>More than two shared drills would make too many sets; then two are asked for here, and {@link Branching} sees to the rest.
 *
 * <p>One object answers one question; not safe for several threads.
 */
final class Chain {
    private static final int LARGEST_SET = 2;

    private final Model model;
    private final PhaseMemo memo;
    private final Tally tally;
    private final long[] positions;
    private final Choice[] forced;
    private final Choice[] forbidden;
    private final long limit;
    /** What the phases before this one cost at least. */
    private final long[] before;

    private final List<Map<Choice, Way>> ways = new ArrayList<>();

    /** Phases up to one, the last first; without an answer no choice of them is better than the value. */
    private record Way(long value, @Nullable Choice here, @Nullable Way earlier) {
        static Way atLeast(long value) {
            return new Way(value, null, null);
        }
    }

    /**
     * @param value packed, without repeats; without choices nothing is better
     * @param chosen by phase; null when nothing was found below the limit
     */
    record Found(long value, Choice @Nullable [] chosen) {}

    /** @param below only choices with a smaller value count */
    Chain(Model model, PhaseMemo memo, Tally tally, Node node, long below) {
        this.model = model;
        this.memo = memo;
        this.tally = tally;
        this.positions = node.positions;
        this.forced = node.forced;
        this.forbidden = node.forbidden;
        this.limit = below;
        before = new long[model.phases.size() + 1];
    }

    Found best() {
        int phases = model.phases.size();
        for (int p = 0; p < phases; p++) {
            PhaseAnswer alone = cost(p, Choice.EMPTY, limit - before[p]);
            before[p + 1] = alone.value() == Long.MAX_VALUE ? limit : before[p] + alone.value();
            if (before[p + 1] >= limit) {
                return new Found(before[p + 1], null);
            }
            ways.add(new HashMap<>());
        }
        Way best = way(phases - 1, Choice.EMPTY, limit);
        return new Found(best.value, best.here == null ? null : chosen(best));
    }

    private Choice[] chosen(Way last) {
        Choice[] chosen = new Choice[model.phases.size()];
        Way way = last;
        for (int p = chosen.length - 1; p >= 0; p--) {
            chosen[p] = java.util.Objects.requireNonNull(way.here);
            if (p > 0) {
                way = java.util.Objects.requireNonNull(way.earlier);
            }
        }
        return chosen;
    }

    /** The best choices of the phases up to this one when it holds the drills that it shares with the next. */
    private Way way(int phase, Choice right, long below) {
        Way known = ways.get(phase).get(right);
        if (known != null && (known.here != null || known.value >= below)) {
            return known;
        }
        Way found = new Junction(phase, right, below).best();
        ways.get(phase).put(right, found);
        return found;
    }

    private PhaseAnswer cost(int phase, Choice more, long below) {
        return memo.solve(phase, positions[phase], forced[phase].union(more), forbidden[phase], below);
    }

    /** The sets that the phase can share with the one before it. */
    private final class Junction {
        private final int phase;
        private final Choice right;
        private final int size;
        private final List<Integer> drills = new ArrayList<>();
        private long below;
        private long beyond = Long.MAX_VALUE;
        private @Nullable Way best;

        Junction(int phase, Choice right, long below) {
            this.phase = phase;
            this.right = right;
            this.below = below;
            size = Math.min(LARGEST_SET, model.carried(phase));
        }

        Way best() {
            if (size == 0) {
                share(Choice.EMPTY);
            } else {
                order();
                pick();
            }
            return best != null ? best : Way.atLeast(beyond);
        }

        /** Those first that the best choices of the two phases for their own hold. */
        private void order() {
            Choice own = own(phase, right);
            Choice other = phase == 0 ? Choice.EMPTY : own(phase - 1, Choice.EMPTY);
            for (int drill : model.carriable(phase)) {
                if (canStand(phase, drill) && (phase == 0 || canStand(phase - 1, drill))) {
                    drills.add(drill);
                }
            }
            drills.sort(Comparator.comparingInt(d -> (own.has(d) ? 0 : 1) + (other.has(d) ? 0 : 1)));
        }

        private boolean canStand(int where, int drill) {
            return (model.phases.get(where).positionOf(drill) & positions[where]) != 0 && !forbidden[where].has(drill);
        }

        private Choice own(int of, Choice more) {
            Choice drills = cost(of, more, 0).drills();
            return drills == null ? Choice.EMPTY : drills;
        }

        /** A drill that can be shared alone, and what the two phases cost with it at least. */
        private record Single(int drill, long here, long earlier) {}

        private void pick() {
            List<Single> able = new ArrayList<>();
            for (int k = 0; k < drills.size() && !tally.spent(); k++) {
                Choice one = Choice.of(drills.get(k));
                if (!canShare(one)) {
                    continue;
                }
                if (size == 1) {
                    share(one);
                    continue;
                }
                long earlier = phase == 0 ? 0 : cost(phase - 1, one, 0).value();
                Single next = new Single(
                        drills.get(k), cost(phase, right.union(one), 0).value(), earlier);
                for (Single other : able) {
                    pair(other, next);
                }
                able.add(next);
            }
        }

        /** What two drills cost is at least what the dearer of them does; most pairs need no look into the memory. */
        private void pair(Single one, Single other) {
            long least = Math.max(one.here, other.here) + Math.max(one.earlier, other.earlier);
            long rest = phase == 0 ? 0 : before[phase - 1];
            if (least + rest >= below) {
                leaveOut(least, rest);
                return;
            }
            Choice both = Choice.of(one.drill, other.drill);
            if (model.family[one.drill] != model.family[other.drill] && canShare(both)) {
                share(both);
            }
        }

        private boolean canShare(Choice shared) {
            if (phase == 0) {
                return isBelow(cost(0, right.union(shared), below), 0);
            }
            long here = cost(phase, right.union(shared), 0).value();
            long earlier = cost(phase - 1, shared, 0).value();
            long rest = before[phase - 1];
            if (here == Long.MAX_VALUE || earlier == Long.MAX_VALUE) {
                return false;
            }
            if (here + earlier + rest >= below) {
                leaveOut(here + earlier, rest);
                return false;
            }
            boolean earlierFirst = earlier - (before[phase] - rest) > here - (before[phase + 1] - before[phase]);
            if (earlierFirst) {
                PhaseAnswer answer = cost(phase - 1, shared, below - rest - here);
                if (!isBelow(answer, rest + here)) {
                    return false;
                }
                earlier = answer.value();
            }
            PhaseAnswer answer = cost(phase, right.union(shared), below - rest - earlier);
            if (!isBelow(answer, rest + earlier)) {
                return false;
            }
            return earlierFirst
                    || isBelow(cost(phase - 1, shared, below - rest - answer.value()), rest + answer.value());
        }

        private boolean isBelow(PhaseAnswer answer, long rest) {
            if (answer.isBelow(below - rest)) {
                return true;
            }
            leaveOut(answer.value(), rest);
            return false;
        }

        private void leaveOut(long value, long rest) {
            if (value != Long.MAX_VALUE) {
                beyond = Math.min(beyond, value + rest);
            }
        }

        private void share(Choice shared) {
            PhaseAnswer here = cost(phase, right.union(shared), below - before[phase]);
            if (!here.isBelow(below - before[phase])) {
                leaveOut(here.value(), before[phase]);
                return;
            }
            Way earlier = phase == 0 ? new Way(0, Choice.EMPTY, null) : way(phase - 1, shared, below - here.value());
            if (earlier.here == null || earlier.value + here.value() >= below) {
                leaveOut(earlier.value, here.value());
                return;
            }
            below = earlier.value + here.value();
            best = new Way(below, here.found(), earlier);
        }
    }
}
