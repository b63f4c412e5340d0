package org.drillsheaf.program.build;

import java.util.List;

/**
 * What a search found.
 *
 * @param drills by phase; empty when nothing was found
 * @param value packed
 * @param bound packed; nothing better is possible
 * @param capped ended by the cap on nodes
 */
record SearchResult(List<Choice> drills, long value, long bound, boolean capped) {
    SearchResult {
        drills = List.copyOf(drills);
    }

    boolean found() {
        return !drills.isEmpty();
    }
}
