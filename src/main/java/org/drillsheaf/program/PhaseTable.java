package org.drillsheaf.program;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillsheaf.drill.Phase;

/**
 * The phases of the house and what a reading changes in them.
 *
 * @param rows all four, in order
 * @param settleFirst presentations that begin with Settle whatever the gates say
 * @param leastDrills a home program needs so many drills to choose from in every phase
 * @param leastFamilies and so many families
 * @param measuredBy goal id to the tests that speak about it
 */
public record PhaseTable(
        List<PhaseRow> rows,
        List<ReadingChange> changes,
        Set<String> settleFirst,
        int leastDrills,
        int leastFamilies,
        Map<String, List<String>> measuredBy) {
    public PhaseTable {
        rows = List.copyOf(rows);
        changes = List.copyOf(changes);
        settleFirst = Set.copyOf(settleFirst);
        measuredBy = Map.copyOf(measuredBy);
        if (rows.size() != Phase.values().length) {
            throw new IllegalArgumentException("there are four phases");
        }
    }

    public PhaseRow row(Phase phase) {
        return rows.get(phase.ordinal());
    }
}
