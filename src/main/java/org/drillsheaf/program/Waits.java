package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.saying.Saying;

/**
 * The program waits for a clinician's word or for time to pass.
 *
 * @param reasons each a sentence
 */
public record Waits(List<Saying> reasons) implements BuildResult {
    public Waits {
        reasons = List.copyOf(reasons);
    }
}
