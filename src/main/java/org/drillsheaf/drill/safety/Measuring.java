package org.drillsheaf.drill.safety;

import org.drillsheaf.drill.Drill;

/** Finds what rules may ask of a drill. What cannot be found out is left out of the facts and so counts as not safe. */
@FunctionalInterface
public interface Measuring {
    Facts facts(Drill drill);
}
