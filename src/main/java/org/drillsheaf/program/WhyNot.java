package org.drillsheaf.program;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;

/**
 * Why a drill is not in a program.
 *
 * @param reasons what keeps it out, each one clause; empty when nothing does and it only costs something
 * @param phases for every phase it could stand in, what a program with it there would be worse by
 */
public record WhyNot(String drill, List<String> reasons, List<InPhase> phases) {

    /** @param cost empty when no program holds the drill there */
    public record InPhase(Phase phase, Optional<Cost> cost) {
        public String words() {
            return phase.title() + ": "
                    + cost.map(Cost::words).orElse("no program holds it there with all you asked for");
        }
    }

    public WhyNot {
        reasons = List.copyOf(reasons);
        phases = List.copyOf(phases);
    }
}
