package org.drillsheaf.drill.safety;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Side;
import org.drillsheaf.drill.Action;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.Variant;

/**
 * What a client's conditions do to one drill.
 *
 * @param drill the drill as it may be printed: with every change in it; as written when it is excluded
 * @param variants the written changes in it
 * @param limits the changes of dose in it
 * @param lieOn the only side to lie on, in a drill done lying on the side
 * @param reasons why, in the order the conditions were told
 * @param texts sentences to print with the drill, at most {@link Safety#MOST_TEXTS}
 * @param facts what the drill asks of the body
 */
public record Judgement(
        Action action,
        Drill drill,
        List<Variant> variants,
        DoseLimits limits,
        Optional<Side> lieOn,
        List<Reason> reasons,
        List<LocalText> texts,
        Facts facts) {

    public Judgement {
        variants = List.copyOf(variants);
        reasons = List.copyOf(reasons);
        texts = List.copyOf(texts);
    }

    /** For a drill shown without a client: nothing is known of what it asks. */
    public Judgement(
            Action action,
            Drill drill,
            List<Variant> variants,
            DoseLimits limits,
            Optional<Side> lieOn,
            List<Reason> reasons,
            List<LocalText> texts) {
        this(action, drill, variants, limits, lieOn, reasons, texts, new Facts(Map.of(), Map.of(), Set.of()));
    }

    public boolean isOffered() {
        return action != Action.EXCLUDE;
    }
}
