package org.drillsheaf.screen;

import java.util.List;
import org.drillsheaf.screen.rule.Rule;

/**
 * What a re-screen must show between two phases.
 *
 * @param id for example {@code settle-to-restore}
 * @param required all of these must hold
 * @param helps said beside it; decides nothing
 */
public record Gate(String id, String name, List<Rule> required, List<Rule> helps) {

    public Gate {
        required = List.copyOf(required);
        helps = List.copyOf(helps);
    }
}
