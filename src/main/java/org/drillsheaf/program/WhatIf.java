package org.drillsheaf.program;

import java.util.Comparator;
import java.util.function.Function;
import org.drillsheaf.saying.Saying;

/**
 * What a change of the client's means would gain.
 *
 * @param change for example {@code a band}
 * @param difference the program with the change against the one as it is; negative numbers are gains
 */
public record WhatIf(Saying change, Difference difference) {

    /** The largest gain first, what is not known last. */
    static final Comparator<WhatIf> BEST_FIRST = Comparator.<WhatIf>comparingInt(w -> w.level(Cost::coverage))
            .thenComparingInt(w -> w.level(Cost::minutes))
            .thenComparing(w -> w.change().toString());

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

    public Saying words() {
        boolean nothing = difference.cost().isPresent() && !gains();
        Saying told = nothing
                ? Saying.phrase(difference.decided() ? "what-if.nothing" : "what-if.nothing-found")
                : difference.words(Saying.phrase("without.none"), Saying.phrase("what-if.not-decided"));
        return Saying.phrase("what-if.with").with("change", change).with("words", told);
    }
}
