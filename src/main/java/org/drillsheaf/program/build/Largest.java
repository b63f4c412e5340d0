package org.drillsheaf.program.build;

/** The largest few of many whole numbers, and their sum. Not safe for several threads. */
final class Largest {
    private final int[] sorted;
    private int most;
    private int size;
    private int sum;

    Largest(int capacity) {
        sorted = new int[capacity];
        most = capacity;
    }

    /** Forgets all, and keeps so many from now on. */
    void clear(int keep) {
        most = keep;
        size = 0;
        sum = 0;
    }

    void add(int number) {
        if (size == most && (most == 0 || number <= sorted[size - 1])) {
            return;
        }
        int at;
        if (size == most) {
            at = size - 1;
            sum -= sorted[at];
        } else {
            at = size++;
        }
        while (at > 0 && sorted[at - 1] < number) {
            sorted[at] = sorted[at - 1];
            at--;
        }
        sorted[at] = number;
        sum += number;
    }

    void add(Largest other) {
        for (int i = 0; i < other.size; i++) {
            add(other.sorted[i]);
        }
    }

    int sum() {
        return sum;
    }
}
