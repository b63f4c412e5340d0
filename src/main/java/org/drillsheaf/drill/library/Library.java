package org.drillsheaf.drill.library;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.drill.BodyPosition;
import org.drillsheaf.drill.Catalogue;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.DrillWords;
import org.drillsheaf.drill.EquipmentItem;
import org.drillsheaf.drill.Goal;
import org.drillsheaf.drill.safety.Caution;
import org.drillsheaf.drill.safety.Condition;
import org.drillsheaf.drill.safety.SafetyRules;
import org.drillsheaf.saying.Saying;

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

    /** The name of a thing that lies in the library; empty for everything else. */
    public Optional<LocalText> name(Saying.Name.Kind kind, String id) {
        DrillWords words = catalogue.words();
        return switch (kind) {
            case GOAL -> Optional.ofNullable(words.goals().get(id)).map(Goal::name);
            case CONDITION -> safetyRules.condition(id).map(Condition::name);
            case POSITION -> Optional.ofNullable(words.positions().get(id)).map(BodyPosition::name);
            case EQUIPMENT -> Optional.ofNullable(words.equipment().get(id)).map(EquipmentItem::name);
            case DRILL -> catalogue.drill(id).map(Drill::name);
            case TEST, PART, PRESENTATION, PHASE, SIDE, MARK, WORD, OBSERVED, LANGUAGE -> Optional.empty();
        };
    }
}
