package org.drillsheaf.program;

import java.util.Optional;
import org.drillsheaf.saying.Saying;

/**
 * A reason for a drill that names a goal.
 *
 * @param goal id of the goal
 * @param strength 1 to 3, of the drill for the goal
 * @param because the findings that speak for the goal, or the phase that asks for it
 */
public record GoalReason(String goal, int strength, Saying because) {
    private static final String KEY = "why.serves";

    /** Empty when the reason names no goal. */
    public static Optional<GoalReason> of(Saying reason) {
        if (reason instanceof Saying.Phrase phrase
                && phrase.key().equals(KEY)
                && phrase.with().get("goal") instanceof Saying.Name goal
                && phrase.with().get("strength") instanceof Saying.Figure strength) {
            return Optional.ofNullable(phrase.with().get("because"))
                    .map(because -> new GoalReason(goal.id(), (int) strength.number(), because));
        }
        return Optional.empty();
    }

    /** The same to be said. */
    public Saying saying() {
        return Saying.phrase(KEY)
                .with("goal", Saying.name(Saying.Name.Kind.GOAL, goal))
                .with("strength", strength)
                .with("because", because);
    }
}
