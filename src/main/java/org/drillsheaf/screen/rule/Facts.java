package org.drillsheaf.screen.rule;

import java.util.Optional;
import org.drillsheaf.Side;

/** What the atoms of a rule are asked of. */
public interface Facts {
    /**
     * Truth of an atom for one side, or for none. An atom that speaks of both sides or of either is asked for each side.
     *
     * @param side the side meant, already worked out from {@code this}, {@code other}, {@code first} and {@code last}
     */
    Truth truth(Rule.Atom atom, Optional<Side> side);

    /** The side expected to come back first. */
    Side expectedFirst();
}
