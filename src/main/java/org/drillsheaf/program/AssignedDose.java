package org.drillsheaf.program;

import org.drillsheaf.drill.Dose;
import org.drillsheaf.drill.DoseTime;
import org.drillsheaf.drill.Drill;

/**
 * How much of one drill the client does in one session.
 *
 * @param sets rounds
 * @param count what is counted: {@code breaths}, {@code repetitions}, {@code steps} or {@code minutes}
 * @param each how many of them in a round, for each side where sides take turns
 * @param holdSeconds longest steady work, 0 when there is none
 * @param restSeconds rest between rounds
 * @param effort 0 to 10
 * @param sides {@code both-together}, {@code each-side} or {@code one-side}
 */
public record AssignedDose(
        int sets, String count, int each, int holdSeconds, int restSeconds, int effort, String sides) {

    /** The usual dose of a drill, for a client of whom nothing is known. */
    public static AssignedDose usual(Drill drill) {
        Dose dose = drill.dose();
        return of(dose, dose.usual(), dose.holdSeconds().usual());
    }

    /** A dose that was chosen; one round has no rest between rounds. */
    static AssignedDose of(Dose dose, Dose.Chosen chosen, int holdSeconds) {
        return new AssignedDose(
                chosen.sets(),
                dose.count().id(),
                chosen.each(),
                holdSeconds,
                chosen.sets() > 1 ? DoseTime.restSeconds(chosen.effort()) : 0,
                chosen.effort(),
                dose.sides().id());
    }
}
