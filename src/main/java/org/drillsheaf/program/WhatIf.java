package org.drillsheaf.program;

import java.util.Comparator;
import java.util.function.Function;

/**
 * What a change of the client's means would gain.
 *
 * @param change for example {@code a band}
 * @param difference the program with the change against the one as it is; negative numbers are gains
 */
public record WhatIf(String change, Difference difference) {

    /** The largest gain first, what is not known last. */
    static final Comparator<WhatIf> BEST_FIRST = Comparator.<WhatIf>comparingInt(w -> w.level(Cost::coverage))
            .thenComparingInt(w -> w.level(Cost::minutes))
            .thenComparing(WhatIf::change);

    private int level(Function<Cost, Integer> level) {
        return difference.cost().map(level).orElse(Integer.MAX_VALUE);
    }

    /** Whether a gain was found; where the search ended early it may be larger, or one may be there that was not found. */
    public boolean gains() {
        return difference
                .cost()
                .filter(d -> d.coverage() < 0 || d.coverage() == 0 && d.minutes() < 0)
                .isPresent();
    }

    public String words() {
        boolean nothing = difference.cost().isPresent() && !gains();
        String found = difference.decided() ? "nothing gained" : "no gain was found; the search ended before the proof";
        return "With " + change + ": "
                + (nothing ? found : difference.words("no program fits", "not decided within the limit of the search"))
                + ".";
    }
}
