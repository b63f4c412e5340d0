package org.drillsheaf.program;

import org.drillsheaf.saying.Saying;

/**
 * The search ended at its limit, or was stopped, before it found any program or showed that there is none.
 *
 * @param looked partial choices that were looked at
 * @param stopped because that was asked for
 */
public record Undecided(long looked, boolean stopped) implements BuildResult {
    /** One sentence for the coach. */
    public Saying words() {
        return Saying.phrase(stopped ? "undecided.stopped" : "undecided.limit").with("looked", looked);
    }
}
