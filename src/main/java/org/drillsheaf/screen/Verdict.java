package org.drillsheaf.screen;

import java.util.Locale;
import org.drillsheaf.saying.Saying;

/** What the findings say about one presentation. */
public enum Verdict {
    SUPPORTED,
    OPEN,
    NOT_SUPPORTED;

    public Saying words() {
        return Saying.phrase("verdict." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
