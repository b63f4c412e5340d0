package org.drillsheaf.screen;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillsheaf.LocalText;

/**
 * Something under which a test is not taken.
 *
 * @param condition id of the condition; empty when the bar comes from recent surgery, fracture or dislocation
 * @param recentParts body parts whose surgery, fracture or dislocation within {@code weeks} bars the test
 * @param unless settings of the condition that lift the bar, all of them, as written
 * @param when settings of the condition without which there is no bar; a setting that was not given counts as fitting
 * @param fromWeek week of the condition from which it bars
 * @param weeks weeks after the beginning of the condition, or after the surgery, for which it bars; always when empty
 * @param bothSides whether it bars both sides even when the condition names one
 * @param reason one clause for the coach
 */
public record Bar(
        Optional<String> condition,
        Set<String> recentParts,
        Map<String, String> unless,
        Map<String, String> when,
        OptionalInt fromWeek,
        OptionalInt weeks,
        boolean bothSides,
        LocalText reason) {

    public Bar {
        recentParts = Set.copyOf(recentParts);
        unless = Map.copyOf(unless);
        when = Map.copyOf(when);
    }
}
