package org.drillsheaf.program;

import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/**
 * A drill that the coach asks for or asks to leave out.
 *
 * @param drill id of the drill
 * @param phase where it must or must not stand; empty: somewhere (must have), nowhere at all (must not have)
 * @param reason the coach's words, may be empty
 */
public record Pin(Kind kind, String drill, Optional<Phase> phase, String reason) {

    /** What the coach asks. */
    public enum Kind {
        MUST_HAVE,
        MUST_NOT_HAVE,
        /** Must have, because it was in the program before. */
        KEEP;

        public Saying words() {
            return Saying.phrase("pin." + id());
        }

        /** The word in data files, for example {@code must-have}. */
        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    public boolean wanted() {
        return kind != Kind.MUST_NOT_HAVE;
    }
}
