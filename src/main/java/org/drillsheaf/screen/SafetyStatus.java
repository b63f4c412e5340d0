package org.drillsheaf.screen;

/** What the safety answers of a visit allow. Only CLEAR lets anything be built. */
public enum SafetyStatus {
    CLEAR("clear"),
    /** At least one question was not answered; it blocks like a yes. */
    UNANSWERED("not answered"),
    /** Waits for a clinician's written word. */
    HELD("held"),
    /** A sign that a clinician must look at first; the referral note is written. */
    STOPPED("stopped");

    private final String words;

    SafetyStatus(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
