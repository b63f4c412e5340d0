package org.drillsheaf.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Optional;
import org.drillsheaf.exchange.merge.FieldChange;

/**
 * What an import would do to one drill.
 *
 * @param fields what differs from now; for a drill that is added, nothing
 * @param clashes fields that both sides changed, with theirs as the fresh value; decided only when {@link ImportPlan} says so
 * @param result the drill as it would be
 * @param file what the clinic's file would hold; empty when it would go, because the drill is the starter's again
 * @param name the drill's name, in its first language
 */
public record DrillChange(
        String id,
        Kind kind,
        String name,
        List<FieldChange> fields,
        List<FieldChange> clashes,
        JsonNode result,
        Optional<String> file) {

    /** What happens to the drill. */
    public enum Kind {
        ADDED,
        CHANGED,
        WITHDRAWN
    }

    public DrillChange {
        fields = List.copyOf(fields);
        clashes = List.copyOf(clashes);
    }
}
