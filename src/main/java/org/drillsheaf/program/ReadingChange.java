package org.drillsheaf.program;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;
import org.drillsheaf.drill.Phase;

/**
 * What a reading changes in the phases.
 *
 * @param when ids of presentations, or {@code joint-laxity}; any of them is enough
 * @param words what it is called in a reason
 * @param level every weight above 0 becomes this
 * @param wishBy added to the client's own wish
 * @param effortLimit most effort of any drill
 */
public record ReadingChange(
        String id,
        Set<String> when,
        LocalText words,
        List<Add> add,
        OptionalInt level,
        OptionalInt wishBy,
        OptionalInt effortLimit,
        List<NotOffered> notOffered,
        Source source) {

    /** Added to the weight of a goal in some phases. */
    public record Add(String goal, Set<Phase> phases, int by) {
        public Add {
            phases = Set.copyOf(phases);
        }
    }

    /** Drills of a goal that are kept out of some phases in some positions. */
    public record NotOffered(String goal, Set<String> positions, Set<Phase> phases, LocalText words) {
        public NotOffered {
            positions = Set.copyOf(positions);
            phases = Set.copyOf(phases);
        }
    }

    public ReadingChange {
        when = Set.copyOf(when);
        add = List.copyOf(add);
        notOffered = List.copyOf(notOffered);
    }
}
