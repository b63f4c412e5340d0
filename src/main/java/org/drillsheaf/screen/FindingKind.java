package org.drillsheaf.screen;

/** What one measured value means. */
public enum FindingKind {
    LIMITED("limited"),
    AT_THE_LINE("at the line"),
    FULL("full"),
    BEYOND_EXPECTED("beyond expected"),
    PAINFUL("painful"),
    NOT_TESTED("not tested"),
    /** A value for which there is no cut-off, for the client's age or at all. */
    NO_REFERENCE("no reference");

    private final String words;

    FindingKind(String words) {
        this.words = words;
    }

    /** The words on screen. */
    public String words() {
        return words;
    }
}
