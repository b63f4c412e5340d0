package org.drillsheaf.program;

/**
 * The search ended at its limit, or was stopped, before it found any program or showed that there is none.
 *
 * @param looked partial choices that were looked at
 * @param stopped because that was asked for
 */
public record Undecided(long looked, boolean stopped) implements BuildResult {
    /** One sentence for the coach. */
    public String words() {
        return "After " + looked + " partial choices no program was found, and it is not shown that there is none."
                + (stopped
                        ? " The search was stopped; build again to go on."
                        : " Pin less, allow more minutes, or raise most-steps in shared/builder.yaml.");
    }
}
