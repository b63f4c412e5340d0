package org.drillsheaf.program;

import java.util.Map;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;
import org.drillsheaf.drill.Phase;

/**
 * A phase as the house has it.
 *
 * @param sentence what it is for, for the client
 * @param good what good looks like, for the client
 * @param fewestDrills hard
 * @param usualDrills a remark below it
 * @param mostDrills hard
 * @param usualMinutes lower end of a usual session
 * @param mostMinutes upper end
 * @param fewestWeeks usual length
 * @param sessionsPerWeek at most, never more than the client's own number
 * @param goals goal id to weight and target
 */
public record PhaseRow(
        Phase phase,
        LocalText name,
        String meaning,
        LocalText sentence,
        LocalText good,
        int fewestDrills,
        int usualDrills,
        int mostDrills,
        int usualMinutes,
        int mostMinutes,
        int fewestWeeks,
        int mostWeeks,
        EffortLimit effort,
        int sessionsPerWeek,
        Map<String, Asked> goals,
        Source source) {

    /** Weight 0 to 5 and target of a goal. */
    public record Asked(int weight, int target) {}

    public PhaseRow {
        goals = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(goals));
    }
}
