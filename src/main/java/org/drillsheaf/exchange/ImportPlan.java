package org.drillsheaf.exchange;

import java.util.List;
import org.drillsheaf.Problem;

/**
 * What an import would do, before it does anything.
 *
 * @param changes drills that would differ from now, in the order of the file
 * @param undecided drills with fields that both sides changed, while nobody said which side counts; they stay as they are
 * @param rejected why single drills cannot come in
 * @param notes what is worth knowing
 * @param same number of drills of the file that change nothing
 */
public record ImportPlan(
        List<DrillChange> changes, List<DrillChange> undecided, List<Problem> rejected, List<Problem> notes, int same) {

    public ImportPlan {
        changes = List.copyOf(changes);
        undecided = List.copyOf(undecided);
        rejected = List.copyOf(rejected);
        notes = List.copyOf(notes);
    }

    public List<DrillChange> changes(DrillChange.Kind kind) {
        return changes.stream().filter(c -> c.kind() == kind).toList();
    }
}
