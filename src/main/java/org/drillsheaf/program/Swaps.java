package org.drillsheaf.program;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drillsheaf.program.build.BuildTask;
import org.drillsheaf.program.build.Objective;
import org.drillsheaf.program.build.RuleCheck;
import org.drillsheaf.program.build.Valuation;

/** Next best drills for a place in a program, with all else as it is. */
final class Swaps {
    private final BuildTask task;
    private final Objective objective;
    private final List<List<String>> drills;
    private final Valuation now;

    /** @param drills ids by phase */
    Swaps(BuildTask task, Objective objective, List<List<String>> drills) {
        this.task = task;
        this.objective = objective;
        this.drills = drills;
        this.now = Valuation.of(task, drills);
    }

    private record Swap(String drill, Valuation value) {}

    /** At most {@code most} of them, best first. */
    List<Alternative> alternatives(int phase, String instead, int most) {
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
        return swaps.stream()
                .sorted(Comparator.<Swap>comparingLong(s -> s.value.packed(objective))
                        .thenComparing(Swap::drill))
                .limit(most)
                .map(s -> new Alternative(s.drill, Cost.of(s.value).minus(Cost.of(now))))
                .toList();
    }
}
