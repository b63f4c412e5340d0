package org.drillsheaf.figure.statics;

import java.util.Arrays;
import java.util.List;

/**
 * Masses of the segments as fractions of body mass, and where their centre of mass lies between their ends.
 *
 * <p>Source: Winter DA, Biomechanics and Motor Control of Human Movement, 4th ed. 2009, table 4.1, from Dempster WT,
 * WADC-TR-55-159, 1955. The trunk's parts are laid on the drawn spine links; that placement is our own.
 */
public enum SegmentMass {
    HAND(.006, .506, true),
    FOREARM(.016, .430, true),
    UPPER_ARM(.028, .436, true),
    FOOT(.0145, .500, true),
    SHANK(.0465, .433, true),
    THIGH(.100, .433, true),
    HEAD_AND_NECK(.081, 1.0, false),
    THORAX(.216, .820, false),
    ABDOMEN(.139, .440, false),
    PELVIS(.142, .105, false);

    private final double mass;
    private final double centre;
    private final boolean paired;

    SegmentMass(double mass, double centre, boolean paired) {
        this.mass = mass;
        this.centre = centre;
        this.paired = paired;
    }

    /** Fraction of body mass, of one side for limbs. */
    public double mass() {
        return mass;
    }

    /** Published place of the centre of mass from the proximal end, fraction of the segment's length. */
    public double centre() {
        return centre;
    }

    public boolean isPaired() {
        return paired;
    }

    /** Fraction of body mass of several segments together, limbs of one side. */
    public static double of(SegmentMass... segments) {
        return Arrays.stream(segments).mapToDouble(SegmentMass::mass).sum();
    }

    /** Head, neck, trunk and both arms: what the legs carry. */
    public static double headArmsTrunk() {
        return of(HEAD_AND_NECK, THORAX, ABDOMEN, PELVIS) + 2 * of(HAND, FOREARM, UPPER_ARM);
    }

    /** All segments of a body, limbs twice; 1 when the table closes. */
    public static double whole() {
        return List.of(values()).stream()
                .mapToDouble(s -> s.paired ? 2 * s.mass : s.mass)
                .sum();
    }
}
