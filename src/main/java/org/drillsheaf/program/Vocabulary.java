package org.drillsheaf.program;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.drill.library.Library;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Sayings;
import org.drillsheaf.saying.Speech;
import org.drillsheaf.screen.Gate;
import org.drillsheaf.screen.ReadingRules;

/**
 * Everything the house has written down, read once and passed on in parts.
 *
 * @param reading tests, presentations and safety questions
 * @param library drills, their words and the safety rules
 * @param gates between the phases, in order, the last one out of Integrate
 * @param sayings phrases of everything that the reading and the builder have to say
 */
public record Vocabulary(
        ReadingRules reading,
        Library library,
        PhaseTable phases,
        List<Gate> gates,
        BuilderSettings builder,
        Sayings sayings) {
    public Vocabulary {
        gates = List.copyOf(gates);
    }

    /** Says what there is to say in one language, with the house's own names. */
    public Speech speech(String language) {
        return sayings.in(language, this::name);
    }

    private Optional<LocalText> name(Saying.Name.Kind kind, String id) {
        return switch (kind) {
            case TEST, PART, PRESENTATION -> reading.name(kind, id);
            case PHASE -> Phase.of(id).map(phases::row).map(PhaseRow::name);
            case GOAL, CONDITION, POSITION, EQUIPMENT, DRILL -> library.name(kind, id);
            case SIDE, MARK, WORD, OBSERVED, LANGUAGE -> Optional.empty();
        };
    }
}
