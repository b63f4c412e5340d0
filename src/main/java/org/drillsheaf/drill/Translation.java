package org.drillsheaf.drill;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Who made the text of a drill in one language.
 *
 * @param byMachine a machine made it
 * @param reviewedOn when a person went through it; a person's own translation needs none
 */
public record Translation(String language, boolean byMachine, Optional<LocalDate> reviewedOn) {

    /** A machine's work that nobody has gone through: the handout has to say so. */
    public boolean isUnreviewed() {
        return byMachine && reviewedOn.isEmpty();
    }
}
