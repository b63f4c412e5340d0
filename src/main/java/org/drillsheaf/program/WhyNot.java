package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.drill.Phase;

/**
 * Why a drill is not in a program.
 *
 * @param reasons what keeps it out, each one clause; empty when nothing does and it only costs something
 * @param phases for every phase it could stand in, what a program with it there would be worse by
 */
public record WhyNot(String drill, List<String> reasons, List<InPhase> phases) {

    /**
     * @param difference the best program that holds the drill there, against the one there is
     */
    public record InPhase(Phase phase, Difference difference) {
        public String words() {
            return phase.title() + ": "
                    + difference.words(
                            "no program holds it there with all you asked for",
                            "the search ended before it was known whether a program can hold it there");
        }
    }

    public WhyNot {
        reasons = List.copyOf(reasons);
        phases = List.copyOf(phases);
    }
}
