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

    /**
     * @param cost empty when no program was found that holds the drill there
     * @param decided whether the search came to its end; if not, a program may cost less than that, or exist where none was found
     */
    public record InPhase(Phase phase, Optional<Cost> cost, boolean decided) {
        public String words() {
            String words = decided
                    ? cost.map(Cost::words).orElse("no program holds it there with all you asked for")
                    : cost.map(c -> "at most " + c.words() + "; the search ended before the proof")
                            .orElse("the search ended before it was known whether a program can hold it there");
            return phase.title() + ": " + words;
        }
    }

    public WhyNot {
        reasons = List.copyOf(reasons);
        phases = List.copyOf(phases);
    }
}
