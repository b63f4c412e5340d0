package org.drillsheaf.program;

import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;

/**
 * What a change of the client's means would gain.
 *
 * @param change for example {@code a band}
 * @param difference the program with the change minus the one as it is; negative numbers are gains; empty when the search
 *     ended at its limit
 */
public record WhatIf(String change, Optional<Cost> difference) {

    /** The largest gain first, what is not known last. */
    static final Comparator<WhatIf> BEST_FIRST = Comparator.<WhatIf>comparingInt(w -> w.level(Cost::coverage))
            .thenComparingInt(w -> w.level(Cost::minutes))
            .thenComparing(WhatIf::change);

    private int level(Function<Cost, Integer> level) {
        return difference.map(level).orElse(Integer.MAX_VALUE);
    }

    public boolean gains() {
        return difference
                .filter(d -> d.coverage() < 0 || d.coverage() == 0 && d.minutes() < 0)
                .isPresent();
    }

    public String words() {
        if (difference.isEmpty()) {
            return "With " + change + ": not decided within the limit of the search.";
        }
        return "With " + change + ": " + (gains() ? difference.get().words() : "nothing gained") + ".";
    }
}
