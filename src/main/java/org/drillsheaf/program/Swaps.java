package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.program.build.RuleCheck;
import org.drillsheaf.program.build.Valuation;

/** Next best drills for every place in a program, with all else as it is. Immutable. */
final class Swaps {
    /** By phase, then by the drill that stands there. */
    private final List<Map<String, List<Alternative>>> alternatives;

    private Swaps(List<Map<String, List<Alternative>>> alternatives) {
        this.alternatives = List.copyOf(alternatives);
    }

    private record Swap(String drill, Valuation value) {}

    /**
     * @param drills ids by phase
     * @param most for each place
     */
    static Swaps of(BuildTask task, Objective objective, List<List<String>> drills, int most) {
        Cost now = Cost.of(Valuation.of(task, drills));
        List<Map<String, List<Alternative>>> alternatives = new ArrayList<>();
        for (int phase = 0; phase < drills.size(); phase++) {
            Map<String, List<Alternative>> here = new TreeMap<>();
            for (String drill : drills.get(phase)) {
                here.put(
                        drill,
                        swaps(task, drills, phase, drill).stream()
                                .sorted(Comparator.<Swap>comparingLong(s -> s.value.packed(objective))
                                        .thenComparing(Swap::drill))
                                .limit(most)
                                .map(s -> new Alternative(
                                        s.drill, Cost.of(s.value).minus(now)))
                                .toList());
            }
            alternatives.add(here);
        }
        return new Swaps(alternatives);
    }

    private static List<Swap> swaps(BuildTask task, List<List<String>> drills, int phase, String instead) {
        List<Swap> swaps = new ArrayList<>();
        for (BuildTask.Candidate candidate : task.candidates()) {
            if (!candidate.options().containsKey(phase) || drills.get(phase).contains(candidate.id())) {
                continue;
            }
            List<List<String>> changed = new ArrayList<>(drills);
            List<String> here = new ArrayList<>(drills.get(phase));
            here.set(here.indexOf(instead), candidate.id());
            changed.set(phase, here);
            if (RuleCheck.broken(task, changed).isEmpty()) {
                swaps.add(new Swap(candidate.id(), Valuation.of(task, changed)));
            }
        }
        return swaps;
    }

    /** Best first. */
    List<Alternative> alternatives(int phase, String instead) {
        return Objects.requireNonNull(alternatives.get(phase).get(instead));
    }
}
