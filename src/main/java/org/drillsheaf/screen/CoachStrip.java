package org.drillsheaf.screen;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import org.drillsheaf.client.Client;
import org.drillsheaf.saying.Saying;

/**
 * Where a value stands against its cut-off, for one row of the coach sheet.
 *
 * @param errors distance from the cut-off in errors of the test, above 0 when it is fuller; empty when the test has no single
 *     cut-off for this client, or nothing was measured
 * @param cutoff the cut-off; empty likewise
 * @param error the error
 */
public record CoachStrip(Finding finding, OptionalDouble errors, Saying cutoff, Saying error) {

    /** The place of a finding. Where the sex is not given and decides, there is no single cut-off and no place. */
    public static CoachStrip of(Client client, int age, Finding finding) {
        MovementTest test = finding.test();
        Scale scale = new Scale(test, client.sex(), age, BigDecimal.ONE);
        Scale.Variant variant = scale.variants().get(0);
        Optional<Norm.Mark> mark = test.norm() instanceof Norm.Threshold threshold && scale.hasReference()
                ? scale.mark(threshold.cutoffs(), variant)
                : Optional.empty();
        boolean alike = test.norm() instanceof Norm.Threshold threshold
                && scale.variants().stream()
                        .allMatch(v -> scale.mark(threshold.cutoffs(), v)
                                        .map(Norm.Mark::value)
                                        .equals(mark.map(Norm.Mark::value))
                                && v.line() == variant.line());
        if (mark.isEmpty() || !alike || variant.line() == 0) {
            return new CoachStrip(finding, OptionalDouble.empty(), Saying.NOTHING, Saying.NOTHING);
        }
        Optional<Double> value = finding.measurement().flatMap(Measurement::value);
        OptionalDouble errors = value.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        (scale.fuller(value.get()) - scale.fuller(mark.get().value())) / (double) variant.line());
        return new CoachStrip(
                finding,
                errors,
                test.unit().amount(mark.get().value()),
                test.unit()
                        .amount(test.step()
                                .multiply(BigDecimal.valueOf(variant.line()))
                                .doubleValue()));
    }
}
