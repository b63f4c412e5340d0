package org.drillsheaf.screen;

import java.util.Locale;
import org.drillsheaf.saying.Saying;

/** What follows from a re-screen. */
public enum NextStep {
    ADVANCE,
    STAY,
    STEP_BACK,
    REFER;

    public Saying words() {
        return Saying.phrase("step." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
