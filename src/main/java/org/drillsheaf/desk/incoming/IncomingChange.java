package org.drillsheaf.desk.incoming;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.exchange.DrillChange;
import org.drillsheaf.exchange.merge.FieldChange;

/**
 * One drill of a file that would differ from now.
 *
 * @param change with their value where both sides changed the same field
 * @param mine the same with ours there; empty where nothing clashes, or nothing of theirs would be left
 */
public record IncomingChange(DrillChange change, Optional<DrillChange> mine, boolean clashes) {

    /** What the coach decides about it. */
    public enum Choice {
        /** It stays as it is. */
        LEAVE,
        /** It comes in, with theirs where both changed the same field. */
        TAKE,
        /** It comes in, with ours where both changed the same field. */
        TAKE_BUT_KEEP_OURS
    }

    public String id() {
        return change.id();
    }

    /** What can be chosen. */
    public List<Choice> choices() {
        return mine.isPresent()
                ? List.of(Choice.LEAVE, Choice.TAKE, Choice.TAKE_BUT_KEEP_OURS)
                : List.of(Choice.LEAVE, Choice.TAKE);
    }

    /** What a choice would do; empty when it does nothing. */
    public Optional<DrillChange> of(Choice choice) {
        return switch (choice) {
            case LEAVE -> Optional.empty();
            case TAKE -> Optional.of(change);
            case TAKE_BUT_KEEP_OURS -> mine;
        };
    }

    /** Fields as they are and as they would be. */
    public List<FieldChange> fields(Choice choice) {
        return of(choice).orElse(change).fields();
    }
}
