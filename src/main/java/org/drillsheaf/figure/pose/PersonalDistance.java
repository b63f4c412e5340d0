package org.drillsheaf.figure.pose;

import org.drillsheaf.Source;

/**
 * A distance for one client.
 *
 * @param centimetres rounded to one centimetre
 * @param spread the client's own best distance lies within this many centimetres of it
 */
public record PersonalDistance(String name, int centimetres, int spread) {
    /** Why the spread is what it is. */
    public static final Source SPREAD = new Source(
            Source.Kind.HOUSE,
            "adults of one stature differ in the length of a limb by about one part in twenty; at least 1 cm");

    private static final double RELATIVE = .05;

    /**
     * @param statures the distance as a fraction of stature
     * @param statureCentimetres from 50 to 272
     */
    public static PersonalDistance of(String name, double statures, double statureCentimetres) {
        if (!(statureCentimetres >= 50 && statureCentimetres <= 272)) {
            throw new IllegalArgumentException("no adult or child is " + statureCentimetres + " cm tall");
        }
        double exact = statures * statureCentimetres;
        return new PersonalDistance(name, (int) Math.round(exact), (int) Math.max(1, Math.ceil(RELATIVE * exact)));
    }

    /** A length that was measured on the client (a foot, a shank) instead of taken from the stature. */
    public static PersonalDistance measured(String name, double centimetres) {
        return new PersonalDistance(name, (int) Math.round(centimetres), 1);
    }

    public int least() {
        return Math.max(0, centimetres - spread);
    }

    public int most() {
        return centimetres + spread;
    }

    /** How many foot lengths it is, for those who have no ruler; to a quarter. */
    public double footLengths(double statureCentimetres) {
        return Math.round(4 * centimetres / (FittingSizes.FOOT * statureCentimetres)) / 4.0;
    }
}
