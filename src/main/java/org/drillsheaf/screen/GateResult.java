package org.drillsheaf.screen;

import java.util.List;
import org.drillsheaf.screen.rule.Truth;

/**
 * A gate for one client.
 *
 * @param lines required lines first, then those that help
 */
public record GateResult(Gate gate, Status status, List<Line> lines) {

    /** Whether the gate is open; never used for safety. */
    public enum Status {
        MET("gate met"),
        NOT_MET("gate not met"),
        NOT_KNOWN("gate not known");

        private final String words;

        Status(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /**
     * One line of the gate.
     *
     * @param measured false when it is answered by what the coach has seen
     */
    public record Line(Truth truth, boolean required, boolean measured, String words) {}

    public GateResult {
        lines = List.copyOf(lines);
    }
}
