package org.drillsheaf.screen;

import java.util.Locale;
import org.drillsheaf.saying.Saying;

/** What one measured value means. */
public enum FindingKind {
    LIMITED,
    AT_THE_LINE,
    FULL,
    BEYOND_EXPECTED,
    PAINFUL,
    NOT_TESTED,
    /** A value for which there is no cut-off, for the client's age or at all. */
    NO_REFERENCE;

    /** The words on screen. */
    public Saying words() {
        return Saying.phrase("finding." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
