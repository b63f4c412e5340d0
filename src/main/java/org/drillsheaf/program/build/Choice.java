package org.drillsheaf.program.build;

import java.util.Arrays;

/** A small sorted set of drill numbers; immutable. */
final class Choice {
    static final Choice EMPTY = new Choice(new int[0]);

    private final int[] drills;

    private Choice(int[] sorted) {
        this.drills = sorted;
    }

    static Choice of(int... drills) {
        int[] sorted = drills.clone();
        Arrays.sort(sorted);
        return new Choice(sorted);
    }

    boolean has(int drill) {
        return Arrays.binarySearch(drills, drill) >= 0;
    }

    Choice with(int drill) {
        int at = Arrays.binarySearch(drills, drill);
        if (at >= 0) {
            return this;
        }
        int place = -at - 1;
        int[] more = new int[drills.length + 1];
        System.arraycopy(drills, 0, more, 0, place);
        more[place] = drill;
        System.arraycopy(drills, place, more, place + 1, drills.length - place);
        return new Choice(more);
    }

    /** Without the one at this place. */
    Choice without(int index) {
        int[] fewer = new int[drills.length - 1];
        System.arraycopy(drills, 0, fewer, 0, index);
        System.arraycopy(drills, index + 1, fewer, index, fewer.length - index);
        return new Choice(fewer);
    }

    Choice union(Choice other) {
        Choice all = this;
        for (int drill : other.drills) {
            all = all.with(drill);
        }
        return all;
    }

    int size() {
        return drills.length;
    }

    int get(int index) {
        return drills[index];
    }

    int[] toArray() {
        return drills.clone();
    }

    boolean hasAll(Choice other) {
        for (int drill : other.drills) {
            if (!has(drill)) {
                return false;
            }
        }
        return true;
    }

    boolean hasNone(Choice other) {
        for (int drill : drills) {
            if (other.has(drill)) {
                return false;
            }
        }
        return true;
    }

    int sharedWith(Choice other) {
        int shared = 0;
        for (int drill : drills) {
            if (other.has(drill)) {
                shared++;
            }
        }
        return shared;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Choice choice && Arrays.equals(drills, choice.drills);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(drills);
    }

    @Override
    public String toString() {
        return Arrays.toString(drills);
    }
}
