package org.drillsheaf.program.build;

import java.util.Arrays;
import java.util.Optional;

/**
 * The best choice for one phase alone, exactly. A depth-first search adds one drill after the other, those that gain most
 * first, and leaves a branch as soon as a bound shows that it cannot beat the best choice found.
 *
 * <p>The bound rests on diminishing returns: what a drill gains can only shrink when others are added first, so the largest
 * gains of all drills still open, as many as there are places, are more than any completion can gain. The same is done once
 * for completions that stay in the positions already used and once for those that need one more.
 *
 * <p>One object solves one question; not safe for several threads.
 */
final class PhaseSearch {
    private final PhaseModel model;
    private final Objective objective;
    private final Tally tally;
    private final int places;
    private final boolean[] barred;
    private final boolean[] familyUsed;

    private final int[] chosen;
    private int size;
    private final int[] top;
    private final int[] halves;
    private long positions;
    private long equipment;
    private int fewestSum;
    private int mostSum;
    private int strongCount;
    private int changes;

    private long best;
    private int[] bestChosen = new int[0];
    private boolean found;

    PhaseSearch(PhaseModel model, Objective objective, int families, Tally tally) {
        this.model = model;
        this.objective = objective;
        this.tally = tally;
        places = model.task.most();
        barred = new boolean[model.size()];
        familyUsed = new boolean[families];
        chosen = new int[places + 1];
        top = new int[model.weight.length];
        halves = new int[model.weight.length];
        changes = model.task.kept().size();
    }

    /**
     * @param below only a choice with a smaller value counts
     * @return empty when there is no such choice
     */
    Optional<PhaseAnswer> solve(Choice forced, Choice forbidden, long below) {
        best = below;
        for (int i = 0; i < forbidden.size(); i++) {
            int local = model.local(forbidden.get(i));
            if (local >= 0) {
                barred[local] = true;
            }
        }
        for (int i = 0; i < forced.size(); i++) {
            int local = model.local(forced.get(i));
            if (local < 0 || barred[local] || !fits(local) || size == places) {
                return Optional.empty();
            }
            add(local);
            barred[local] = true;
        }
        int[] open = new int[model.size()];
        int count = 0;
        for (int i = 0; i < model.size(); i++) {
            if (!barred[i]) {
                open[count++] = i;
            }
        }
        search(open, 0, count);
        if (!found) {
            return Optional.empty();
        }
        int[] drills = Arrays.stream(bestChosen).map(i -> model.drill[i]).toArray();
        return Optional.of(new PhaseAnswer(best, Choice.of(drills)));
    }

    private void search(int[] open, int from, int to) {
        tally.looked++;
        tally.weighed(to - from + 1);
        if (tally.spent()) {
            return;
        }
        int shortfall = shortfall();
        if (size >= model.task.fewest()) {
            long value = value(shortfall);
            if (value < best) {
                best = value;
                bestChosen = Arrays.copyOf(chosen, size);
                found = true;
            }
        }
        int free = places - size;
        if (free == 0) {
            return;
        }
        long[] sorted = sortedByGain(open, from, to);
        int count = sorted.length;
        if (count == 0) {
            return;
        }
        int minutes = Math.max(0, model.task.targetMinutes() - mostSum - mostMinutes(sorted, free));
        int fewestChanges = changesAtLeast(sorted, free);
        int[] next = new int[count];
        for (int i = 0; i < count; i++) {
            next[i] = local(sorted[i]);
        }
        for (int i = 0; i < count; i++) {
            if (bound(sorted, i, free, shortfall, minutes, fewestChanges) >= best) {
                tally.ruledOut++;
                return;
            }
            int drill = next[i];
            add(drill);
            search(next, i + 1, count);
            remove(drill);
        }
    }

    /** Gain in the high bits, then what costs nothing new, then the id; largest first. */
    private long[] sortedByGain(int[] open, int from, int to) {
        long[] sorted = new long[to - from];
        int count = 0;
        for (int k = from; k < to; k++) {
            int i = open[k];
            if (!fits(i)) {
                continue;
            }
            int stays = (positions & model.position[i]) != 0 ? 1 : 0;
            int props = Long.bitCount(model.equipment[i] & ~equipment);
            long key = gain(i);
            key = key << 1 | (model.change[i] ? 0 : 1);
            key = key << 1 | stays;
            key = key << 4 | (15 - Math.min(props, 15));
            sorted[count++] = -(key << 20 | (1L << 20) - 1 - i);
        }
        sorted = Arrays.copyOf(sorted, count);
        Arrays.sort(sorted);
        return sorted;
    }

    private static int local(long key) {
        return (int) ((1L << 20) - 1 - (-key & (1L << 20) - 1));
    }

    private static int gainOf(long key) {
        return (int) (-key >>> 26);
    }

    /** No completion by drills from {@code at} on is better than this. */
    private long bound(long[] sorted, int at, int free, int shortfall, int minutes, int fewestChanges) {
        int all = 0;
        int staying = 0;
        int stayingCount = 0;
        int last = Math.min(sorted.length, at + free);
        for (int i = at; i < last; i++) {
            all += gainOf(sorted[i]);
        }
        for (int i = at; i < sorted.length && stayingCount < free; i++) {
            if ((model.position[local(sorted[i])] & positions) != 0) {
                staying += gainOf(sorted[i]);
                stayingCount++;
            }
        }
        int used = Math.max(0, Long.bitCount(positions) - 1);
        int props = Long.bitCount(equipment);
        int moving = positions == 0 ? used : used + 1;
        long whenMoving = objective.pack(Math.max(0, shortfall - all), minutes, fewestChanges, moving, 0, props);
        if (positions == 0) {
            return whenMoving;
        }
        if (stayingCount == 0) {
            return whenMoving;
        }
        long whenStaying = objective.pack(Math.max(0, shortfall - staying), minutes, fewestChanges, used, 0, props);
        return Math.min(whenMoving, whenStaying);
    }

    private int mostMinutes(long[] sorted, int free) {
        int[] largest = new int[free];
        for (long key : sorted) {
            int m = model.mostMinutes[local(key)];
            for (int j = 0; j < free && m > 0; j++) {
                if (m > largest[j]) {
                    int swap = largest[j];
                    largest[j] = m;
                    m = swap;
                }
            }
        }
        return Arrays.stream(largest).sum();
    }

    private int shortfall() {
        int sum = 0;
        for (int g = 0; g < top.length; g++) {
            int missing = model.target[g] - top[g] - halves[g];
            if (missing > 0) {
                sum += model.weight[g] * missing;
            }
        }
        return sum;
    }

    private int gain(int i) {
        int sum = 0;
        int[] goals = model.goal[i];
        int[] strengths = model.strength[i];
        for (int k = 0; k < goals.length; k++) {
            int g = goals[k];
            int missing = model.target[g] - top[g] - halves[g];
            if (missing > 0) {
                int s = strengths[k];
                int adds = s > top[g] ? s - top[g] + (top[g] >> 1) : s >> 1;
                sum += model.weight[g] * Math.min(missing, adds);
            }
        }
        return sum;
    }

    private long value(int shortfall) {
        return objective.pack(
                shortfall,
                Math.max(0, model.task.targetMinutes() - mostSum),
                changes,
                Math.max(0, Long.bitCount(positions) - 1),
                0,
                Long.bitCount(equipment));
    }

    private boolean fits(int i) {
        return !familyUsed[model.family[i]]
                && fewestSum + model.fewestMinutes[i] <= model.task.mostMinutes()
                && (!model.strong[i] || strongCount < model.task.strongAtMost());
    }

    private void add(int i) {
        chosen[size++] = i;
        familyUsed[model.family[i]] = true;
        fewestSum += model.fewestMinutes[i];
        mostSum += model.mostMinutes[i];
        strongCount += model.strong[i] ? 1 : 0;
        changes += change(i);
        recount();
    }

    private void remove(int i) {
        size--;
        familyUsed[model.family[i]] = false;
        fewestSum -= model.fewestMinutes[i];
        mostSum -= model.mostMinutes[i];
        strongCount -= model.strong[i] ? 1 : 0;
        changes -= change(i);
        recount();
    }

    /** A drill that was not planned before is a change; one that was, and stands again, takes one back. */
    private int change(int i) {
        return model.change[i] ? 1 : model.task.kept().isEmpty() ? 0 : -1;
    }

    /** Fewest changes that a completion with so many more drills can come to. */
    private int changesAtLeast(long[] sorted, int free) {
        int again = 0;
        if (!model.task.kept().isEmpty()) {
            for (long key : sorted) {
                again += model.change[local(key)] ? 0 : 1;
            }
        }
        return changes - Math.min(free, again);
    }

    /** Coverage, positions and equipment are no sums; with at most a dozen drills counting anew is cheap. */
    private void recount() {
        Arrays.fill(top, 0);
        Arrays.fill(halves, 0);
        positions = 0;
        equipment = 0;
        for (int c = 0; c < size; c++) {
            int i = chosen[c];
            positions |= model.position[i];
            equipment |= model.equipment[i];
            int[] goals = model.goal[i];
            for (int k = 0; k < goals.length; k++) {
                int g = goals[k];
                int s = model.strength[i][k];
                if (s > top[g]) {
                    halves[g] += top[g] >> 1;
                    top[g] = s;
                } else {
                    halves[g] += s >> 1;
                }
            }
        }
    }
}
