package org.drillsheaf.store.record;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;

/**
 * Two saves that started from one version of a part. Both are kept.
 *
 * @param key names the clash until it is settled
 * @param client key of the client
 * @param base what both started from; empty content when the part was new
 * @param theirs what stands in the record
 * @param mine what came second; empty when it was a removal
 */
public record PartClash(
        UUID key,
        UUID client,
        PartKey part,
        Optional<Content> base,
        Part theirs,
        Optional<Content> mine,
        String mineBy,
        Instant mineAt) {

    /** One field that the two do not say alike, or that both changed. An empty value: the field is not there. */
    public record Field(
            String path, Optional<String> base, Optional<String> mine, Optional<String> theirs, ChangedBy changedBy) {}

    /** Who changed a field. */
    public enum ChangedBy {
        ME,
        THEM,
        BOTH
    }

    /** Every field in which the two versions differ, in the order of the paths. */
    public List<Field> fields() {
        SortedMap<String, String> before = fieldsOf(base);
        SortedMap<String, String> my = fieldsOf(mine);
        SortedMap<String, String> their = fieldsOf(theirs.content());
        SortedSet<String> paths = new TreeSet<>(my.keySet());
        paths.addAll(their.keySet());
        return paths.stream()
                .filter(path -> !Optional.ofNullable(my.get(path)).equals(Optional.ofNullable(their.get(path))))
                .map(path -> field(
                        path,
                        Optional.ofNullable(before.get(path)),
                        Optional.ofNullable(my.get(path)),
                        Optional.ofNullable(their.get(path))))
                .toList();
    }

    private static Field field(String path, Optional<String> before, Optional<String> my, Optional<String> their) {
        ChangedBy by = my.equals(before) ? ChangedBy.THEM : their.equals(before) ? ChangedBy.ME : ChangedBy.BOTH;
        return new Field(path, before, my, their, by);
    }

    /** Whether no field was changed by both in different ways, so that both can stand. */
    public boolean canBothStand() {
        return fields().stream().noneMatch(f -> f.changedBy() == ChangedBy.BOTH);
    }

    private static SortedMap<String, String> fieldsOf(Optional<Content> content) {
        return content.map(Content::fields).orElseGet(TreeMap::new);
    }
}
