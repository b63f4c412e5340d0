package org.drillsheaf.program.build;

import java.util.Arrays;

/** A small sorted set of drill numbers; immutable. */
final class Choice {
    static final Choice EMPTY = new Choice(new int[0]);

    private final int[] drills;
    private final int hash;

    private Choice(int[] sorted) {
        this.drills = sorted;
        // Sets of small numbers: the usual sum would give many of them the same hash.
        int mixed = 0;
        for (int drill : sorted) {
            mixed = (mixed + drill + 1) * 0x9E3779B1;
            mixed ^= mixed >>> 15;
        }
        hash = mixed;
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

    /** Those of which the condition is true. */
    Choice only(java.util.function.IntPredicate condition) {
        int[] some = new int[drills.length];
        int size = 0;
        for (int drill : drills) {
            if (condition.test(drill)) {
                some[size++] = drill;
            }
        }
        return size == drills.length ? this : new Choice(Arrays.copyOf(some, size));
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
        if (this == other || other.drills.length == 0) {
            return true;
        }
        int left = drills.length - other.drills.length;
        int at = 0;
        for (int drill : other.drills) {
            while (left >= 0 && drills[at] < drill) {
                at++;
                left--;
            }
            if (left < 0 || drills[at++] != drill) {
                return false;
            }
        }
        return true;
    }

    boolean hasNone(Choice other) {
        if (other.drills.length == 0) {
            return true;
        }
        for (int drill : drills) {
            if (other.has(drill)) {
                return false;
            }
        }
        return true;
    }

    int sharedWith(Choice other) {
        int shared = 0;
        int k = 0;
        for (int drill : drills) {
            while (k < other.drills.length && other.drills[k] < drill) {
                k++;
            }
            if (k < other.drills.length && other.drills[k] == drill) {
                shared++;
            }
        }
        return shared;
    }

    /** The list of ids that comes first in the alphabet first, a list before its own longer ones. */
    static int compareByName(Choice one, Choice other) {
        return Arrays.compare(one.drills, other.drills);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Choice choice && hash == choice.hash && Arrays.equals(drills, choice.drills);
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public String toString() {
        return Arrays.toString(drills);
    }
}
