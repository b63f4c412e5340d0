package org.drillsheaf.program;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillsheaf.Source;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.program.build.Level;

/**
 * How the builder of the house chooses.
 *
 * @param order what is made as small as possible, the most important first
 * @param carriedOver least number of drills that neighbouring phases share
 * @param mostSteps how often the search may weigh a drill before it stops and says how far it got
 * @param alternatives how many next best drills are shown for each place
 * @param leastDosePercent no drill gets less than this part of its usual minutes
 * @param doseBounds {@code sets}, {@code repetitions}, {@code hold-seconds}, {@code hold-seconds-from-65}
 * @param moderate the effort that a strong drill for one goal gets where its range allows
 */
public record BuilderSettings(
        List<Level> order,
        int carriedOver,
        int mostSteps,
        int alternatives,
        int leastDosePercent,
        Map<String, DoseBound> doseBounds,
        Moderate moderate) {

    /** A published upper bound on a dose. */
    public record DoseBound(int most, Source source) {}

    /** Drills of this strength for the goal are dosed within this effort in these phases. */
    public record Moderate(String goal, int strength, Set<Phase> phases, int least, int most, Source source) {
        public Moderate {
            phases = Set.copyOf(phases);
        }
    }

    public BuilderSettings {
        order = List.copyOf(order);
        doseBounds = Map.copyOf(doseBounds);
    }

    /** The bound, or a number no drill reaches when the house has none. */
    int atMost(String bound) {
        DoseBound found = doseBounds.get(bound);
        return found == null ? Integer.MAX_VALUE : found.most();
    }
}
