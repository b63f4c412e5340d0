package org.drillsheaf.desk.screen;

import java.util.function.DoubleUnaryOperator;

/**
 * The height of something with broken lines at its last width. The toolkit works such heights out anew several times in each
 * layout, for every row of a table in which one row has changed.
 */
final class KnownHeight {
    private double width = Double.NaN;
    private double height;

    /** Something inside has changed. */
    void forget() {
        width = Double.NaN;
    }

    double at(double wanted, DoubleUnaryOperator work) {
        if (width != wanted) {
            height = work.applyAsDouble(wanted);
            width = wanted;
        }
        return height;
    }
}
