package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.saying.Saying;

/**
 * No home program for this client: too little is left to choose from, or too many conditions meet.
 *
 * @param reasons each a sentence
 */
public record InPersonOnly(List<Saying> reasons) implements BuildResult {
    public InPersonOnly {
        reasons = List.copyOf(reasons);
    }
}
