package org.drillsheaf.screen;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;

/**
 * How the findings lie on each other.
 *
 * @param underneath the side that probably lies further forward under the leading name
 * @param underneathWords why, one sentence; empty without a side
 * @param onTop name of what is still on top of one side forward
 * @param onTopWords why, one sentence
 * @param local limited tests that no presentation explains
 * @param fading presentations held at the visit compared with and open or not held now
 * @param expectedFirst the side expected to come back first
 */
public record Layers(
        Optional<Side> underneath,
        Saying underneathWords,
        Optional<Saying> onTop,
        Saying onTopWords,
        List<LocalFinding> local,
        List<Saying> fading,
        Side expectedFirst) {

    /**
     * A local finding.
     *
     * @param goal id of the goal that takes the place of a wish where there is none
     */
    public record LocalFinding(Saying words, Optional<String> goal) {}

    public Layers {
        local = List.copyOf(local);
        fading = List.copyOf(fading);
    }

    static Layers none(Side expectedFirst) {
        return new Layers(
                Optional.empty(),
                Saying.NOTHING,
                Optional.empty(),
                Saying.NOTHING,
                List.of(),
                List.of(),
                expectedFirst);
    }
}
