package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.saying.Saying;

/**
 * What one goal asks of one phase.
 *
 * @param goal id of the goal
 * @param weight 0 to 5; 0 asks nothing
 * @param target coverage that counts as enough, at least 0
 * @param reasons where weight and target come from, each one clause: the phase's own table first, then every change with the
 *     finding, wish or condition behind it
 */
public record GoalNeed(String goal, int weight, int target, List<Saying> reasons) {
    public GoalNeed {
        if (weight < 0 || target < 0) {
            throw new IllegalArgumentException("weight and target of " + goal + " must not be negative");
        }
        reasons = List.copyOf(reasons);
    }

    /** Whether a drill for this goal can gain anything. */
    public boolean asksForSomething() {
        return weight > 0 && target > 0;
    }
}
