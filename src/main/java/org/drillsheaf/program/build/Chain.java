package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The best choices of all phases, exactly, when neighbouring phases share as many drills as they must and everything else that
 * lies between phases is left out. What a phase costs depends on its neighbours only through the drills shared with them, so
 * this is a shortest way through layers: one layer a junction, one stop a set of shared drills.
 *
 * <p>More than two shared drills would make too many sets; then two are asked for here, and {@link Branching} sees to the rest.
 *
 * <p>One object answers one question; not safe for several threads.
 */
final class Chain {
    private static final int LARGEST_SET = 2;

    private final Model model;
    private final PhaseMemo memo;
    private final Choice[] forced;
    private final Choice[] forbidden;
    private final long below;
    private final long[] before;

    /**
     * A set of drills shared over a junction, with the best way from there to the last phase.
     *
     * @param left what the phase before the junction costs at least when it holds the set
     * @param rest what the phases after the junction cost
     * @param here choice of the phase right after the junction; null behind the last phase
     */
    private record Stop(Choice shared, long left, long rest, @Nullable Choice here, @Nullable Stop next) {}

    /**
     * @param value packed, without repeats
     * @param chosen by phase
     */
    record Found(long value, Choice[] chosen) {}

    /** @param below only choices with a smaller value count */
    Chain(Model model, PhaseMemo memo, Choice[] forced, Choice[] forbidden, long below) {
        this.model = model;
        this.memo = memo;
        this.forced = forced;
        this.forbidden = forbidden;
        this.below = below;
        before = new long[model.phases.size() + 1];
    }

    Optional<Found> best() {
        int phases = model.phases.size();
        for (int p = 0; p < phases; p++) {
            Optional<PhaseAnswer> alone = cost(p, Choice.EMPTY, below - before[p]);
            if (alone.isEmpty()) {
                return Optional.empty();
            }
            before[p + 1] = before[p] + alone.get().value();
        }
        if (before[phases] >= below) {
            return Optional.empty();
        }
        List<Stop> stops = List.of(new Stop(Choice.EMPTY, 0, 0, null, null));
        for (int p = phases - 1; p >= 0 && !stops.isEmpty(); p--) {
            stops = stops(p, stops);
        }
        return stops.stream().min(Comparator.comparingLong(Stop::rest)).map(this::found);
    }

    private Found found(Stop first) {
        Choice[] chosen = new Choice[model.phases.size()];
        Stop stop = first;
        for (int p = 0; p < chosen.length; p++) {
            chosen[p] = java.util.Objects.requireNonNull(stop.here);
            stop = java.util.Objects.requireNonNull(stop.next);
        }
        return new Found(first.rest, chosen);
    }

    /** The sets that can be shared over the junction before the phase, each with its best way on; the shortest way first. */
    private List<Stop> stops(int phase, List<Stop> later) {
        long shortest = later.get(0).rest;
        List<Stop> stops = new ArrayList<>();
        for (Choice shared : sets(phase, shortest)) {
            Optional<PhaseAnswer> left = phase == 0
                    ? Optional.of(new PhaseAnswer(0, Choice.EMPTY))
                    : cost(phase - 1, shared, below - before[phase - 1] - shortest);
            if (left.isEmpty()) {
                continue;
            }
            long earlier = (phase == 0 ? 0 : before[phase - 1]) + left.get().value();
            Stop stop = stop(phase, shared, left.get().value(), below - earlier, later);
            if (stop != null) {
                stops.add(stop);
            }
        }
        stops.sort(Comparator.comparingLong(Stop::rest));
        return stops;
    }

    private @Nullable Stop stop(int phase, Choice shared, long left, long limit, List<Stop> later) {
        Optional<PhaseAnswer> alone = cost(phase, shared, limit - later.get(0).rest);
        if (alone.isEmpty()) {
            return null;
        }
        Stop best = null;
        long room = limit;
        for (Stop next : later) {
            if (alone.get().value() + next.rest >= room) {
                break;
            }
            if (next.left + next.rest >= room) {
                continue;
            }
            Optional<PhaseAnswer> both = alone.get().drills().hasAll(next.shared)
                    ? alone
                    : cost(phase, shared.union(next.shared), room - next.rest);
            if (both.isPresent()) {
                room = both.get().value() + next.rest;
                best = new Stop(shared, left, room, both.get().drills(), next);
            }
        }
        return best;
    }

    /** Sets of the size that the junction asks for, without those that cannot lead to anything below the limit. */
    private List<Choice> sets(int phase, long shortest) {
        int size = Math.min(LARGEST_SET, model.carried(phase));
        if (size == 0) {
            return List.of(Choice.EMPTY);
        }
        List<Single> singles = singles(phase, shortest);
        List<Choice> sets = new ArrayList<>();
        for (int i = 0; i < singles.size(); i++) {
            Single one = singles.get(i);
            if (size == 1) {
                sets.add(Choice.of(one.drill));
                continue;
            }
            for (int k = i + 1; k < singles.size(); k++) {
                Single other = singles.get(k);
                long atLeast = Math.max(one.left, other.left) + Math.max(one.right, other.right);
                if (model.family[one.drill] != model.family[other.drill]
                        && atLeast < below - outside(phase, shortest)) {
                    sets.add(Choice.of(one.drill, other.drill));
                }
            }
        }
        return sets;
    }

    /** What all phases cost at least but the two at the junction. */
    private long outside(int phase, long shortest) {
        return (phase == 0 ? 0 : before[phase - 1]) + shortest;
    }

    private record Single(int drill, long left, long right) {}

    private List<Single> singles(int phase, long shortest) {
        List<Single> singles = new ArrayList<>();
        long room = below - outside(phase, shortest);
        long leftAlone = phase == 0 ? 0 : before[phase] - before[phase - 1];
        for (int drill : model.carriable(phase)) {
            if (forbidden[phase].has(drill) || phase > 0 && forbidden[phase - 1].has(drill)) {
                continue;
            }
            Choice only = Choice.of(drill);
            Optional<PhaseAnswer> right = cost(phase, only, room - leftAlone);
            if (right.isEmpty()) {
                continue;
            }
            long rightCost = right.get().value();
            Optional<PhaseAnswer> left = phase == 0
                    ? Optional.of(new PhaseAnswer(0, Choice.EMPTY))
                    : cost(phase - 1, only, room - rightCost);
            left.ifPresent(l -> singles.add(new Single(drill, l.value(), rightCost)));
        }
        return singles;
    }

    private Optional<PhaseAnswer> cost(int phase, Choice more, long limit) {
        return memo.solve(phase, forced[phase].union(more), forbidden[phase], limit);
    }
}
