package org.drillsheaf.program;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.drillsheaf.drill.Phase;

/**
 * What the coach decided at a visit, each kept with its reason and shown with the program.
 *
 * @param start the phase to work on, against what the gates say
 */
public record CoachWishes(
        List<Weight> weights, List<Pin> pins, List<DoseWish> doses, List<Order> order, Optional<Start> start) {

    public static final CoachWishes NONE =
            new CoachWishes(List.of(), List.of(), List.of(), List.of(), Optional.empty());

    /** Another weight, and perhaps another target, for a goal in a phase. */
    public record Weight(Phase phase, String goal, int weight, OptionalInt target, String reason) {}

    /** A dose in place of the builder's; what is empty is left to the builder. */
    public record DoseWish(
            String drill,
            Optional<Phase> phase,
            OptionalInt sets,
            OptionalInt each,
            OptionalInt effort,
            String reason) {
        boolean isFor(String id, Phase where) {
            return drill.equals(id) && (phase.isEmpty() || phase.get() == where);
        }
    }

    /** Drills of a phase in the order the coach wants; the others follow in the usual order. */
    public record Order(Phase phase, List<String> drills) {
        public Order {
            drills = List.copyOf(drills);
        }
    }

    /** The coach's own choice of phase. */
    public record Start(Phase phase, String reason) {}

    public CoachWishes {
        weights = List.copyOf(weights);
        pins = List.copyOf(pins);
        doses = List.copyOf(doses);
        order = List.copyOf(order);
    }
}
