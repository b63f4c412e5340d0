package org.drillsheaf.store.record;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * One save of one part, as it was asked for.
 *
 * @param base the version it started from
 * @param content empty for a removal
 * @param at when it was asked for, in whole milliseconds
 */
record PartSave(UUID client, PartKey part, long base, Optional<Content> content, String who, Instant at) {

    PartSave from(long otherBase) {
        return new PartSave(client, part, otherBase, content, who, at);
    }

    boolean isOfSamePart(PartSave other) {
        return client.equals(other.client) && part.equals(other.part);
    }
}
