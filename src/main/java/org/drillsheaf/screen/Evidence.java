package org.drillsheaf.screen;

/**
 * One line of evidence of a presentation.
 *
 * @param words in words, with the values
 */
public record Evidence(Kind kind, Role role, String words) {

    /** What it speaks for. */
    public enum Kind {
        FOR("for"),
        AGAINST("against"),
        NOT_KNOWN("not known");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** Which part of the rule it belongs to. */
    public enum Role {
        REQUIRED,
        SUPPORTING,
        AGAINST
    }
}
