package org.drillsheaf.screen;

import java.util.List;
import java.util.Locale;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.screen.rule.Truth;

/**
 * A gate for one client.
 *
 * @param lines required lines first, then those that help
 */
public record GateResult(Gate gate, Status status, List<Line> lines) {

    /** Whether the gate is open; never used for safety. */
    public enum Status {
        MET,
        NOT_MET,
        NOT_KNOWN;

        public Saying words() {
            return Saying.phrase("gate." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    /**
     * One line of the gate.
     *
     * @param measured false when it is answered by what the coach has seen
     */
    public record Line(Truth truth, boolean required, boolean measured, Saying words) {}

    public GateResult {
        lines = List.copyOf(lines);
    }
}
