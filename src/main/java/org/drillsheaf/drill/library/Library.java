package org.drillsheaf.drill.library;

import java.util.List;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.safety.Caution;
import org.drillsheaf.drill.safety.SafetyRules;

/**
 * Everything about drills that lies in a project folder.
 *
 * @param cautions sentences that every handout prints, in the order of their file
 * @param layers what the catalogue was made from
 */
public record Library(Catalogue catalogue, SafetyRules safetyRules, List<Caution> cautions, Layers layers) {
    public Library {
        cautions = List.copyOf(cautions);
    }
}
