package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/**
 * One phase as the client's program holds it.
 *
 * @param entries in the order of the session; empty for a phase that is behind
 * @param remarks for the coach, each a sentence
 */
public record PhasePlan(
        Phase phase,
        Standing standing,
        List<Entry> entries,
        int minutes,
        int sessionsPerWeek,
        List<CoveredGoal> goals,
        List<Saying> remarks) {

    /** Where the client stands with a phase. */
    public enum Standing {
        /** Its gate was met before a program was built for it. */
        NOT_NEEDED,
        /** Part of an earlier program. */
        DONE,
        NOW,
        AHEAD;

        /** The word in data files, for example {@code not-needed}. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    public PhasePlan {
        entries = List.copyOf(entries);
        goals = List.copyOf(goals);
        remarks = List.copyOf(remarks);
    }
}
