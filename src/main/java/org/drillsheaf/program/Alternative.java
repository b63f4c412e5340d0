package org.drillsheaf.program;

import org.drillsheaf.saying.Saying;

/**
 * Another drill for a place in the program, with the rest as it is.
 *
 * @param cost the changed program minus the chosen one
 */
public record Alternative(String drill, Cost cost) {
    public Saying words() {
        return cost.words();
    }
}
