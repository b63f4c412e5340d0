package org.drillsheaf.program.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What the later phases come to at least with each set of drills that a phase can share with them; what costs them least first. Immutable. */
final class Onward {
    private final Map<Long, Long> values;
    private final long[] shared;
    private final long[] value;
    private final long[] positions;

    private Onward(Map<Long, Long> values, PhaseModel phase) {
        this.values = values;
        // Where a choice holds several sets, the one that costs the later phases least comes first.
        List<Map.Entry<Long, Long>> sorted = new ArrayList<>(values.entrySet());
        sorted.sort(Map.Entry.<Long, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()));
        shared = new long[sorted.size()];
        value = new long[sorted.size()];
        positions = new long[sorted.size()];
        for (int k = 0; k < shared.length; k++) {
            shared[k] = sorted.get(k).getKey();
            value[k] = sorted.get(k).getValue();
            Choice drills = ChoiceLists.drills(shared[k]);
            for (int i = 0; i < drills.size(); i++) {
                positions[k] |= phase.positionOf(drills.get(i));
            }
        }
    }

    /** @param phase the one that shares, and offers every drill of every set */
    static Onward of(Map<Long, Long> values, PhaseModel phase) {
        return new Onward(values, phase);
    }

    int size() {
        return shared.length;
    }

    long shared(int k) {
        return shared[k];
    }

    long value(int k) {
        return value[k];
    }

    /** The positions of the drills that are shared. */
    long positions(int k) {
        return positions[k];
    }

    /** Whatever is shared. */
    long least() {
        return value.length == 0 ? 0 : value[0];
    }

    /** With this set; the largest number when the later phases cannot follow. */
    long with(long set) {
        return values.getOrDefault(set, Long.MAX_VALUE);
    }
}
