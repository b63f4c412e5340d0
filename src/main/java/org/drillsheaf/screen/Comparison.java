package org.drillsheaf.screen;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.Side;
import org.drillsheaf.saying.Saying;

/**
 * Two readings side by side.
 *
 * @param changes every test and side of either date, in the order of the battery
 * @param sideOrder sentences about which side came back first
 * @param remarks further sentences: fading names, another coach, the note on chance
 */
public record Comparison(
        LocalDate before, LocalDate now, List<TestChange> changes, List<Saying> sideOrder, List<Saying> remarks) {

    public Comparison {
        changes = List.copyOf(changes);
        sideOrder = List.copyOf(sideOrder);
        remarks = List.copyOf(remarks);
    }

    public Optional<TestChange> change(String testId, Optional<Side> side, Optional<String> part) {
        return changes.stream()
                .filter(c -> c.test().id().equals(testId)
                        && c.side().equals(side)
                        && c.part().equals(part))
                .findFirst();
    }

    public boolean anyGained() {
        return changes.stream().anyMatch(TestChange::gained);
    }

    public boolean anyNewPain() {
        return changes.stream().anyMatch(TestChange::newPain);
    }
}
