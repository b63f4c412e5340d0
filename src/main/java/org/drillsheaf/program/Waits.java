package org.drillsheaf.program;

import java.util.List;

/**
 * The program waits for a clinician's word or for time to pass.
 *
 * @param reasons each a sentence
 */
public record Waits(List<String> reasons) implements BuildResult {
    public Waits {
        reasons = List.copyOf(reasons);
    }
}
