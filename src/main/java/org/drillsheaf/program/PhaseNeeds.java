package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.drill.Phase;

/**
 * What one phase asks of the builder.
 *
 * @param goals every goal of the vocabulary, in its order
 * @param fewestDrills hard lower number of drills
 * @param usualDrills guide; fewer are told as a remark
 * @param mostDrills hard upper number of drills
 * @param usualMinutes lower end of the phase's usual session
 * @param mostMinutes upper end of the phase's usual session
 * @param effort limits with the client's caps already in
 */
public record PhaseNeeds(
        Phase phase,
        List<GoalNeed> goals,
        int fewestDrills,
        int usualDrills,
        int mostDrills,
        int usualMinutes,
        int mostMinutes,
        EffortLimit effort) {
    public PhaseNeeds {
        goals = List.copyOf(goals);
    }
}
