package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/**
 * Why a drill is not in a program.
 *
 * @param reasons what keeps it out, each one clause; empty when nothing does and it only costs something
 * @param phases for every phase it could stand in, what a program with it there would be worse by
 */
public record WhyNot(String drill, List<Saying> reasons, List<InPhase> phases) {

    /**
     * @param difference the best program that holds the drill there, against the one there is
     */
    public record InPhase(Phase phase, Difference difference) {
        public Saying words() {
            Saying told = difference.words(Saying.phrase("why-not.no-program"), Saying.phrase("why-not.not-decided"));
            return Saying.phrase("why-not.in-phase")
                    .with("phase", phase.saidName())
                    .with("words", told);
        }
    }

    public WhyNot {
        reasons = List.copyOf(reasons);
        phases = List.copyOf(phases);
    }
}
