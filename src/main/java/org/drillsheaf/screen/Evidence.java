package org.drillsheaf.screen;

import org.drillsheaf.saying.Saying;

/**
 * One line of evidence of a presentation.
 *
 * @param statement the rule alone, without its truth and its values
 * @param words what is said, with the values
 */
public record Evidence(Kind kind, Role role, Saying statement, Saying words) {

    /** What it speaks for. */
    public enum Kind {
        FOR,
        AGAINST,
        NOT_KNOWN
    }

    /** Which part of the rule it belongs to. */
    public enum Role {
        REQUIRED,
        SUPPORTING,
        AGAINST
    }
}
