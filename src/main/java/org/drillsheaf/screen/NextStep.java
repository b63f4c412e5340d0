package org.drillsheaf.screen;

/** What follows from a re-screen. */
public enum NextStep {
    ADVANCE("go on"),
    STAY("stay"),
    STEP_BACK("step back"),
    REFER("refer");

    private final String words;

    NextStep(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
