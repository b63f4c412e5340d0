package org.drillsheaf.program.build;

import java.util.EnumSet;
import java.util.List;

/**
 * Packs the levels into one whole number, the first level in the highest bits, so that comparing two numbers compares level
 * by level and adding two adds level by level. Immutable.
 */
public final class Objective {
    private static final Level[] LEVELS = Level.values();

    private final List<Level> order;
    private final int[] shift = new int[LEVELS.length];

    /** @param order every level once, the most important first */
    public Objective(List<Level> order) {
        if (order.size() != LEVELS.length || !EnumSet.copyOf(order).equals(EnumSet.allOf(Level.class))) {
            throw new IllegalArgumentException("the order names every level once: " + order);
        }
        this.order = List.copyOf(order);
        int bit = 0;
        for (int i = order.size() - 1; i >= 0; i--) {
            shift[order.get(i).ordinal()] = bit;
            bit += order.get(i).bits();
        }
    }

    public List<Level> order() {
        return order;
    }

    public long pack(int coverage, int minutes, int changes, int positions, int repeats, int equipment) {
        return one(Level.COVERAGE, coverage)
                + one(Level.MINUTES, minutes)
                + one(Level.CHANGES, changes)
                + one(Level.POSITIONS, positions)
                + one(Level.REPEATS, repeats)
                + one(Level.EQUIPMENT, equipment);
    }

    /** A packed number that holds only this level. */
    public long one(Level level, int value) {
        return (long) value << shift[level.ordinal()];
    }

    /** A packed number without this level and the less important ones. */
    long above(Level level, long packed) {
        int bits = shift[level.ordinal()] + level.bits();
        return bits >= Long.SIZE ? 0 : packed >>> bits << bits;
    }

    public int unpack(long packed, Level level) {
        return (int) (packed >>> shift[level.ordinal()]) & ((1 << level.bits()) - 1);
    }
}
