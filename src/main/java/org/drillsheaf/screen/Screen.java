package org.drillsheaf.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;

/**
 * The values of one visit. A test or side without a measurement was not tested.
 *
 * @param measurements in the order of the battery, left before right; the order in which they were written does not matter
 * @param measuredBy who measured
 */
public record Screen(LocalDate date, List<Measurement> measurements, String measuredBy) {

    public Screen {
        measurements = List.copyOf(measurements);
    }

    public Optional<Measurement> measurement(String testId, Optional<Side> side) {
        return measurements.stream()
                .filter(m -> m.testId().equals(testId) && m.side().equals(side))
                .findFirst();
    }
}
