package org.drillsheaf.program;

import java.util.List;
import org.drillsheaf.drill.Drill;
import org.drillsheaf.drill.safety.Judgement;

/**
 * A drill of the catalogue for one client.
 *
 * @param judgement what the client's conditions do to it; its drill has every written change in it
 * @param barriers what keeps it from the client; empty when it may be offered
 */
public record Offer(Judgement judgement, List<Barrier> barriers) {
    public Offer {
        barriers = List.copyOf(barriers);
    }

    /** The drill as this client would do it. */
    public Drill drill() {
        return judgement.drill();
    }

    public String id() {
        return judgement.drill().id();
    }

    public boolean isOpen() {
        return barriers.isEmpty();
    }

    /** The position of the session in which it is done. */
    String position() {
        return drill().positions().get(0);
    }
}
