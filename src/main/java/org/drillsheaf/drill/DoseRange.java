package org.drillsheaf.drill;

/**
 * A whole number that may be dosed between two bounds.
 *
 * @param usual the default, within the bounds
 * @param least lower bound
 * @param most upper bound
 */
public record DoseRange(int usual, int least, int most) {

    public DoseRange {
        if (least > most || usual < least || usual > most || least < 0) {
            throw new IllegalArgumentException(usual + " is not within " + least + " to " + most);
        }
    }

    public static DoseRange fixed(int value) {
        return new DoseRange(value, value, value);
    }

    public boolean contains(int value) {
        return value >= least && value <= most;
    }

    /** The value of this range that is nearest to the wanted one. */
    public int nearest(int wanted) {
        return Math.max(least, Math.min(most, wanted));
    }
}
