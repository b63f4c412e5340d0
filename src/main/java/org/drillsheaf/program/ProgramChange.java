package org.drillsheaf.program;

import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/**
 * One difference between a program and the one before.
 *
 * @param drill id
 * @param why one clause
 */
public record ProgramChange(Phase phase, Kind kind, String drill, Saying why) {

    /** What happened to the drill. */
    public enum Kind {
        ADDED,
        LEFT_OUT,
        DOSE;

        /** The word in data files, for example {@code left-out}. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }
}
