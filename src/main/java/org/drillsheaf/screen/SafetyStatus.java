package org.drillsheaf.screen;

import java.util.Locale;
import org.drillsheaf.saying.Saying;

/** What the safety answers of a visit allow. Only CLEAR lets anything be built. */
public enum SafetyStatus {
    CLEAR,
    /** At least one question was not answered; it blocks like a yes. */
    UNANSWERED,
    /** Waits for a clinician's written word. */
    HELD,
    /** A sign that a clinician must look at first; the referral note is written. */
    STOPPED;

    public Saying words() {
        return Saying.phrase("safety." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
}
