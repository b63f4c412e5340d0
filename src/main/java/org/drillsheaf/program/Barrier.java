package org.drillsheaf.program;

import org.drillsheaf.saying.Saying;

/**
 * What keeps a drill from a client, whatever the phase.
 *
 * @param subject id of the condition, position, item or restriction
 * @param words one clause for the coach
 */
public record Barrier(Kind kind, String subject, Saying words) {

    /** Where a barrier comes from. */
    public enum Kind {
        /** A condition. Nobody lets go of it. */
        SAFETY,
        /** What the reading brings. */
        RESTRICTION,
        LANGUAGE,
        POSITION,
        EQUIPMENT,
        /** The coach left it out. */
        LEFT_OUT
    }

    /** Whether the coach or client could let go of it. */
    public boolean isChoice() {
        return kind == Kind.POSITION || kind == Kind.EQUIPMENT || kind == Kind.LEFT_OUT;
    }
}
