package org.drillsheaf.program.build;

import java.util.Arrays;

/**
 * The drills that may still be added to a partial choice, what they would gain, and what all completions come to at least. The
 * bound rests on diminishing returns: what a drill gains can only shrink when others are added first, so the largest gains, as
 * many as there are places, are more than any completion can gain. How many positions and things a completion may still add
 * follows from the limit; drills that would need more are left out, and the largest gains are then taken from few positions.
 *
 * <p>One object a depth of the search, used again for every partial choice there. Not safe for several threads.
 */
final class OpenDrills {
    private static final int FEW_POSITIONS = 2;

    private final PartialChoice choice;
    private final PhaseModel model;
    private final Objective objective;
    private final int[] drills;
    private final int[] gains;
    private final long[] keys;
    private int count;
    private int free;
    private int minutes;
    private int changes;
    private int things;
    private int served;
    private long leftOut;
    private final Prices prices;
    private final Largest all;
    private final Largest staying;
    private final Largest rest;
    private final Largest[] byPosition;

    OpenDrills(PartialChoice choice, Objective objective, int size) {
        this.choice = choice;
        this.model = choice.model;
        this.objective = objective;
        drills = new int[size];
        gains = new int[size];
        keys = new long[size];
        int places = model.task.most();
        prices = new Prices(choice, objective);
        all = new Largest(places);
        staying = new Largest(places);
        rest = new Largest(places);
        byPosition = new Largest[model.positions];
        for (int x = 0; x < byPosition.length; x++) {
            byPosition[x] = new Largest(places);
        }
    }

    /** What every completion comes to at least that the limit keeps out of the order. */
    long leftOut() {
        return leftOut;
    }

    int count() {
        return count;
    }

    int[] drills() {
        return drills;
    }

    int drill(int i) {
        return drills[i];
    }

    /** Takes the drills that fit and can lead below the limit; the packed value that every completion comes to at least. */
    long look(int[] from, int start, int end, long limit) {
        free = model.task.most() - choice.size();
        count = 0;
        leftOut = Long.MAX_VALUE;
        all.clear(free);
        rest.clear(free);
        int again = 0;
        for (int k = start; k < end; k++) {
            int i = from[k];
            if (!choice.fits(i)) {
                continue;
            }
            drills[count] = i;
            gains[count] = choice.gain(i);
            all.add(gains[count++]);
            rest.add(model.mostMinutes[i]);
            again += model.change[i] || model.task.kept().isEmpty() ? 0 : 1;
        }
        minutes = choice.minutesUnder(rest.sum());
        changes = choice.changes() - Math.min(free, again);
        things = Long.bitCount(choice.equipment());
        int used = Math.max(0, Long.bitCount(choice.positions()) - 1);
        int shortfall = Math.max(0, choice.shortfall() - all.sum());
        long least = packed(shortfall, used, things);
        if (least >= limit) {
            return least;
        }
        int more = 0;
        while (more <= FEW_POSITIONS && packed(shortfall, positionsWith(more + 1), things) < limit) {
            more++;
        }
        keepNear(shortfall, limit);
        if (more <= FEW_POSITIONS) {
            leftOut = Math.min(leftOut, packed(shortfall, positionsWith(more + 1), things));
            least = keepPositions(more, limit);
        }
        return least < limit ? Math.max(least, prices.bound(drills, count, free, minutes, changes, limit)) : least;
    }

    private int positionsWith(int more) {
        return Math.max(0, Long.bitCount(choice.positions()) + more - 1);
    }

    private long packed(int shortfall, int positions, int equipment) {
        return objective.pack(shortfall, minutes, changes, positions, 0, equipment);
    }

    /** Leaves out drills that need a position or a thing too many. */
    private void keepNear(int shortfall, long limit) {
        int kept = 0;
        for (int k = 0; k < count; k++) {
            int i = drills[k];
            boolean stays = (choice.positions() & model.position[i]) != 0;
            int needed = Long.bitCount(choice.equipment() | model.equipment[i]);
            long least = packed(shortfall, positionsWith(stays ? 0 : 1), needed);
            if (least < limit) {
                drills[kept] = i;
                gains[kept++] = gains[k];
            } else {
                leftOut = Math.min(leftOut, least);
            }
        }
        count = kept;
    }

    /** Leaves out drills whose position cannot be one of the few that may be added. */
    private long keepPositions(int more, long limit) {
        staying.clear(free);
        for (Largest one : byPosition) {
            one.clear(free);
        }
        long seen = 0;
        for (int k = 0; k < count; k++) {
            int i = drills[k];
            if ((choice.positions() & model.position[i]) != 0) {
                staying.add(gains[k]);
            } else {
                byPosition[Long.numberOfTrailingZeros(model.position[i])].add(gains[k]);
                seen |= model.position[i];
            }
        }
        long least = packed(Math.max(0, choice.shortfall() - staying.sum()), positionsWith(0), things);
        long possible = 0;
        for (long left = seen; left != 0; left &= left - 1) {
            int x = Long.numberOfTrailingZeros(left);
            all.clear(free);
            all.add(staying);
            all.add(byPosition[x]);
            long one = packed(Math.max(0, choice.shortfall() - all.sum()), positionsWith(1), things);
            least = Math.min(least, one);
            if (one < limit) {
                possible |= 1L << x;
            } else {
                leftOut = Math.min(leftOut, one);
            }
            for (long others = more < 2 ? 0 : left & left - 1; others != 0; others &= others - 1) {
                int y = Long.numberOfTrailingZeros(others);
                rest.clear(free);
                rest.add(all);
                rest.add(byPosition[y]);
                long two = packed(Math.max(0, choice.shortfall() - rest.sum()), positionsWith(2), things);
                least = Math.min(least, two);
                if (two < limit) {
                    possible |= 1L << x | 1L << y;
                } else {
                    leftOut = Math.min(leftOut, two);
                }
            }
        }
        int kept = 0;
        for (int k = 0; k < count; k++) {
            if ((model.position[drills[k]] & (choice.positions() | possible)) != 0) {
                drills[kept] = drills[k];
                gains[kept++] = gains[k];
            }
        }
        count = kept;
        return least;
    }

    /**
     * Puts the drills to be tried next in front, the best first.
     *
     * @return how many these are; every completion below the limit holds one of them
     */
    int order(long limit) {
        int goal = goalToServe(limit);
        int front = 0;
        if (goal >= 0) {
            for (int k = 0; k < count; k++) {
                if (choice.serves(drills[k], goal)) {
                    int drill = drills[k];
                    int gain = gains[k];
                    drills[k] = drills[front];
                    gains[k] = gains[front];
                    drills[front] = drill;
                    gains[front++] = gain;
                }
            }
        } else {
            front = count;
        }
        for (int k = 0; k < front; k++) {
            keys[k] = key(drills[k], gains[k]);
        }
        Arrays.sort(keys, 0, front);
        for (int k = 0; k < front; k++) {
            drills[k] = (int) ((1L << 20) - 1 - (-keys[k] & (1L << 20) - 1));
            gains[k] = (int) (-keys[k] >>> 26);
        }
        rest.clear(free);
        for (int k = front; k < count; k++) {
            rest.add(gains[k]);
        }
        served = front;
        return front;
    }

    /** The goal with the fewest drills among those that cannot stay as they are; -1 when there is none. */
    private int goalToServe(long limit) {
        int used = positionsWith(0);
        int found = -1;
        long leftOutUnserved = Long.MAX_VALUE;
        int fewest = Integer.MAX_VALUE;
        for (int g = 0; g < model.weight.length; g++) {
            int missing = choice.missing(g);
            if (missing == 0) {
                continue;
            }
            long unserved = packed(model.weight[g] * missing, used, things);
            if (unserved < limit) {
                continue;
            }
            int servers = 0;
            for (int k = 0; k < count && servers < fewest; k++) {
                servers += choice.serves(drills[k], g) ? 1 : 0;
            }
            if (servers < fewest) {
                fewest = servers;
                found = g;
                leftOutUnserved = unserved;
            }
        }
        leftOut = Math.min(leftOut, leftOutUnserved);
        return found;
    }

    /** Gain in the high bits, then what costs nothing new, then the id; largest first. */
    private long key(int i, int gain) {
        int stays = (choice.positions() & model.position[i]) != 0 ? 1 : 0;
        int props = Long.bitCount(model.equipment[i] & ~choice.equipment());
        long key = gain;
        key = key << 1 | (model.change[i] ? 0 : 1);
        key = key << 1 | stays;
        key = key << 4 | (15 - Math.min(props, 15));
        return -(key << 20 | (1L << 20) - 1 - i);
    }

    /** No completion that holds the {@code i}-th drill of the order, or a later one, and none before it is better than this. */
    long boundFrom(int i) {
        all.clear(free);
        all.add(rest);
        for (int k = i; k < Math.min(served, i + free); k++) {
            all.add(gains[k]);
        }
        return packed(Math.max(0, choice.shortfall() - all.sum()), positionsWith(0), things);
    }
}
