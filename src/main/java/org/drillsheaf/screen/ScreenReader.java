package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Ids;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.client.ClientFile;
import org.drillsheaf.client.Visit;

/** Reads the values of a client's visits. Immutable and safe for several threads. */
public final class ScreenReader {
    private final Battery battery;

    public ScreenReader(Battery battery) {
        this.battery = battery;
    }

    /**
     * The screens of all visits, in the order of their dates. A joint count keeps its last value with its date; everything
     * else is measured anew or not tested.
     */
    public List<Screen> read(ClientFile file, Problems problems) {
        List<Screen> screens = new ArrayList<>();
        Map<String, Measurement> kept = new LinkedHashMap<>();
        for (Visit visit : file.visits()) {
            List<Measurement> measurements = new ArrayList<>(measurements(visit, problems));
            Set<String> taken = new LinkedHashSet<>();
            measurements.forEach(m -> taken.add(m.testId()));
            kept.forEach((id, measurement) -> {
                if (!taken.contains(id)) {
                    measurements.add(measurement);
                }
            });
            measurements.stream().filter(this::isCount).forEach(m -> kept.put(m.testId(), m));
            screens.add(new Screen(
                    visit.date(),
                    measurements,
                    visit.measuredBy().orElse(file.client().coach())));
        }
        return screens;
    }

    private boolean isCount(Measurement measurement) {
        return battery.test(measurement.testId())
                .map(t -> t.norm() instanceof Norm.Count)
                .orElse(false);
    }

    private List<Measurement> measurements(Visit visit, Problems problems) {
        Optional<YamlNode> node = visit.screen();
        if (node.isEmpty()) {
            return List.of();
        }
        Map<String, List<Measurement>> byTest = new LinkedHashMap<>();
        node.get().entries().forEach((id, value) -> {
            if (Ids.check(value, id, battery.tests().keySet(), "test", problems)) {
                MovementTest test = battery.test(id).orElseThrow();
                byTest.put(id, new MeasurementReader(test, visit.date(), problems).read(value));
            }
        });
        List<Measurement> inOrder = new ArrayList<>();
        battery.tests().keySet().forEach(id -> inOrder.addAll(byTest.getOrDefault(id, List.of())));
        return inOrder;
    }
}
