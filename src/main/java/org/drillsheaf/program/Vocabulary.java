package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.screen.Gate;
import org.drillsheaf.screen.ReadingRules;

/**
 * Everything the house has written down, read once and passed on in parts.
 *
 * @param reading tests, presentations and safety questions
 * @param library drills, their words and the safety rules
 * @param gates between the phases, in order, the last one out of Integrate
 */
public record Vocabulary(
        ReadingRules reading, Library library, PhaseTable phases, List<Gate> gates, BuilderSettings builder) {
    public Vocabulary {
        gates = List.copyOf(gates);
    }
}
