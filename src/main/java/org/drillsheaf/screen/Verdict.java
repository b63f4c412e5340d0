package org.drillsheaf.screen;

/** What the findings say about one presentation. */
public enum Verdict {
    SUPPORTED("holds"),
    OPEN("open"),
    NOT_SUPPORTED("not held");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
