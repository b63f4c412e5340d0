package org.drillsheaf.figure.pose;

import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.figure.body.Vec3;

/** What the author says about where the body rests, leans or holds. */
public sealed interface Contact {

    /** Where it is written. */
    int line();

    /**
     * The nearest surface of a region lies {@code press} deep in a surface.
     *
     * @param region a single region of the body
     * @param on a surface, a prop or another region of the body
     * @param press depth in statures; about .006 for firm contact, more for soft flesh under load
     */
    record Touch(String region, String on, double press, double weight, int line) implements Contact {}

    /** The sole lies flat on a surface. */
    record Flat(Side side, String plane, int line) implements Contact {}

    /**
     * A point of the body lies where the target says.
     *
     * @param point name of a body point
     */
    record Place(String point, Target target, double weight, int line) implements Contact {}

    /** Where a placed point has to be. */
    sealed interface Target {
        /** At coordinates; those that are empty stay free. */
        record Room(Optional<Double> x, Optional<Double> y, Optional<Double> z) implements Target {}

        /** At another point of the body, moved by an offset in world axes. */
        record Body(String point, Vec3 offset) implements Target {}
    }
}
