package org.drillsheaf.program.build;

/**
 * When and how far {@link SetChains} lists choices. What the best value is does not depend on it, only how soon it is known.
 *
 * @param overDrills fewer drills in a task than one more are proved without lists in a blink, and the tree is the older and simpler proof
 * @param mostDrills in a task; over more the lists get too long, and the tree, which asks only for the best choices, is sooner ready
 * @param mostSteps for all lists of one search; then the tree goes on
 * @param mostChoices held at a time; more would take more memory than they are worth, and the tree goes on
 * @param fewSets with more sets of drills to share than this, one search of a phase for all its choices takes less than one for each set; at least 1
 */
record Listing(int overDrills, int mostDrills, long mostSteps, int mostChoices, int fewSets) {
    /** The house's own. */
    static final Listing USUAL = new Listing(150, 2_500, 100_000_000, 500_000, 200);

    /** No lists; for tasks in which nearly every choice is as good as any other. */
    static final Listing NEVER = new Listing(0, -1, 0, 0, 1);

    Listing {
        if (fewSets < 1) {
            throw new IllegalArgumentException("fewer sets than one: " + fewSets);
        }
    }

    boolean isFor(BuildTask task) {
        int drills = task.candidates().size();
        return drills > overDrills && drills <= mostDrills;
    }
}
