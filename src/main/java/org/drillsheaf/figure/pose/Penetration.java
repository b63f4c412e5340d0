package org.drillsheaf.figure.pose;

import java.util.Locale;

/**
 * A part of the body that lies inside something.
 *
 * @param part name of the part
 * @param into name of the prop, the surface or the other part
 * @param depth of its deepest surface sample, statures
 * @param isContact whether the two touch on purpose: a declared contact, a soft or held thing, or flesh on flesh where a
 *     joint folds
 */
public record Penetration(String part, String into, double depth, boolean isContact) {
    /** Deepest allowed outside contacts, statures: 5 mm at 1.75 m. */
    public static final double OUTSIDE = .003;
    /** Deepest allowed where two things touch on purpose, statures: 21 mm at 1.75 m. */
    public static final double AT_CONTACT = .012;

    /** Deepest that is allowed here, statures. */
    public double allowed() {
        return isContact ? AT_CONTACT : OUTSIDE;
    }

    public boolean isTooDeep() {
        return depth > allowed();
    }

    /** For the author, with the depth at 1.75 m. */
    public String words() {
        return String.format(
                Locale.ROOT,
                "%s lies %.0f mm inside %s (allowed: %.0f mm at 1.75 m)",
                part,
                depth * 1750,
                into,
                allowed() * 1750);
    }
}
