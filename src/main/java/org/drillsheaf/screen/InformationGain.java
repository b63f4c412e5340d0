package org.drillsheaf.screen;

/**
 * Uncertainty in bits. Source: Quinlan JR, Induction of decision trees, Machine Learning 1986;1:81–106.
 */
public final class InformationGain {
    private InformationGain() {}

    /** Entropy of some shares of a whole; shares need not add up to 1 and are scaled. Bits. */
    public static double entropy(double... shares) {
        double sum = 0;
        for (double share : shares) {
            sum += share;
        }
        double bits = 0;
        for (double share : shares) {
            if (share > 0) {
                double part = share / sum;
                bits -= part * StrictMath.log(part) / StrictMath.log(2);
            }
        }
        return bits;
    }

    /**
     * Expected drop of entropy when a whole is split into groups.
     *
     * @param groups one row a group: how much of each class lies in it
     */
    public static double gain(double[][] groups) {
        double all = 0;
        double[] whole = new double[groups.length == 0 ? 0 : groups[0].length];
        for (double[] group : groups) {
            for (int i = 0; i < group.length; i++) {
                whole[i] += group[i];
                all += group[i];
            }
        }
        double rest = 0;
        for (double[] group : groups) {
            double size = 0;
            for (double share : group) {
                size += share;
            }
            if (size > 0) {
                rest += size / all * entropy(group);
            }
        }
        return entropy(whole) - rest;
    }
}
