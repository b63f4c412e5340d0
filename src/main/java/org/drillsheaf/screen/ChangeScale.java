package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import org.drillsheaf.client.Client;

/**
 * What a change of one test is shown against, in the test's own unit.
 *
 * @param aim the cut-off; empty when the test has no single one for this client
 * @param change smallest real change; 0 when the test has none
 * @param lowerIsFuller whether a smaller value is more movement
 */
public record ChangeScale(OptionalDouble aim, double change, boolean lowerIsFuller) {

    public static ChangeScale of(Client client, int age, MovementTest test) {
        Scale scale = new Scale(test, client.sex(), age, BigDecimal.ONE);
        Scale.Variant variant = scale.variants().get(0);
        long most =
                scale.variants().stream().mapToLong(Scale.Variant::change).max().orElse(0);
        OptionalDouble aim = OptionalDouble.empty();
        boolean lower = test.norm() instanceof Norm.Pair;
        if (test.norm() instanceof Norm.Threshold threshold) {
            lower = !threshold.higherIsFuller();
            boolean alike = scale.variants().stream()
                            .map(v -> scale.mark(threshold.cutoffs(), v).map(Norm.Mark::value))
                            .distinct()
                            .count()
                    == 1;
            aim = scale.hasReference() && alike
                    ? scale.mark(threshold.cutoffs(), variant).stream()
                            .mapToDouble(Norm.Mark::value)
                            .findFirst()
                    : OptionalDouble.empty();
        }
        return new ChangeScale(
                aim, test.step().multiply(BigDecimal.valueOf(most)).doubleValue(), lower);
    }
}
