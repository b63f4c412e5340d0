package org.drillsheaf.drill.safety;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.drill.Action;

/**
 * One rule of a condition.
 *
 * @param action what it does when it takes hold
 * @param written the expression as written, for reasons
 * @param variants ids of the written changes that answer it, best first; for {@code MODIFY}
 * @param limits the change of dose that answers it; for {@code MODIFY}
 * @param answeredByVariant the change answers it although the expression still holds (a pillow between the legs does not
 *     end lying on the side)
 * @param asWritten read on the drill as written only, so that no change can answer it
 * @param text the sentence that is printed
 */
public record Rule(
        Action action,
        Expression expression,
        String written,
        List<String> variants,
        DoseLimits limits,
        boolean answeredByVariant,
        boolean asWritten,
        Optional<LocalText> text) {

    public Rule {
        variants = List.copyOf(variants);
    }
}
