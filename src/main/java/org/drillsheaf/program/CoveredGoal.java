package org.drillsheaf.program;

/**
 * How far a phase covers a goal.
 *
 * @param covered strongest drill in full and half of each further one rounded down, not cut at the target
 */
public record CoveredGoal(GoalNeed need, int covered) {
    public int missing() {
        return Math.max(0, need.target() - covered);
    }
}
