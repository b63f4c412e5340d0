package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drillsheaf.client.Client;
import org.drillsheaf.saying.Saying;

/**
 * The scale beside a field of a test, in errors of that very test: the cut-off lies at 0, right is always fuller, and the value
 * is unsure by one to each side.
 *
 * @param beyond where the upper mark lies, in errors; for a range its other end. Empty when there is none
 * @param fuller whether passing {@code beyond} is fuller than expected; for a range it is limited again
 */
public record FindingStrip(MovementTest test, double cutoff, long line, OptionalDouble beyond, boolean fuller) {

    /** The scale of a test for a client; empty when the test has no single cut-off or no error for this client. */
    public static Optional<FindingStrip> of(Client client, int age, MovementTest test) {
        Scale scale = new Scale(test, client.sex(), age, BigDecimal.ONE);
        Scale.Variant variant = scale.variants().get(0);
        boolean alike = scale.variants().stream().allMatch(v -> v.line() == variant.line());
        if (variant.line() == 0 || !alike || !scale.hasReference()) {
            return Optional.empty();
        }
        if (test.norm() instanceof Norm.Threshold threshold) {
            return single(scale, threshold.cutoffs())
                    .map(cutoff -> strip(test, scale, cutoff, single(scale, threshold.beyond()), true));
        }
        if (test.norm() instanceof Norm.Range range) {
            return single(scale, range.high())
                    .map(cutoff -> strip(test, scale, cutoff, single(scale, range.low()), false));
        }
        return Optional.empty();
    }

    private static FindingStrip strip(
            MovementTest test, Scale scale, double cutoff, Optional<Double> beyond, boolean fuller) {
        long line = scale.variants().get(0).line();
        FindingStrip strip = new FindingStrip(test, cutoff, line, OptionalDouble.empty(), fuller);
        return beyond.map(b -> new FindingStrip(test, cutoff, line, OptionalDouble.of(strip.errors(b)), fuller))
                .orElse(strip);
    }

    /** The mark when it is the same for every sex the client may have. */
    private static Optional<Double> single(Scale scale, List<Norm.Mark> marks) {
        Optional<Double> first = scale.mark(marks, scale.variants().get(0)).map(Norm.Mark::value);
        boolean alike = scale.variants().stream()
                .allMatch(v -> scale.mark(marks, v).map(Norm.Mark::value).equals(first));
        return alike ? first : Optional.empty();
    }

    /** How far a value lies from the cut-off, in errors; above 0 when it is fuller. */
    public double errors(double value) {
        double steps = (value - cutoff) / test.step().doubleValue();
        boolean turned = test.norm() instanceof Norm.Threshold threshold && !threshold.higherIsFuller()
                || test.norm() instanceof Norm.Range;
        return (turned ? -steps : steps) / line;
    }

    /** The cut-off with its unit. */
    public Saying saidCutoff() {
        return test.unit().amount(cutoff);
    }

    /** The error with its unit. */
    public Saying saidError() {
        return test.unit().amount(line * test.step().doubleValue());
    }
}
