package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.drillsheaf.store.record.ClientRecord;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.Part;
import org.drillsheaf.store.record.PartKey;

/**
 * Everything about one client as it stands on the desk, typed and perhaps not yet saved. Immutable.
 *
 * @param key of the client in the record
 * @param id as in the client's file
 */
public record ClientDraft(UUID key, String id, SortedMap<PartKey, Content> parts) {

    public ClientDraft {
        parts = Collections.unmodifiableSortedMap(new TreeMap<>(parts));
    }

    public static ClientDraft of(ClientRecord record) {
        SortedMap<PartKey, Content> parts = new TreeMap<>();
        record.parts().forEach((key, part) -> part.content().ifPresent(content -> parts.put(key, content)));
        return new ClientDraft(record.key(), record.id(), parts);
    }

    public Content part(PartKey key) {
        return parts.getOrDefault(key, key.equals(PartKey.CONDITIONS) ? Content.emptyList() : Content.emptyMap());
    }

    public Content visit(LocalDate date) {
        return part(PartKey.visit(date));
    }

    public Content person() {
        return part(PartKey.CLIENT);
    }

    public ClientDraft with(PartKey key, Content content) {
        SortedMap<PartKey, Content> changed = new TreeMap<>(parts);
        changed.put(key, content);
        return new ClientDraft(this.key, id, changed);
    }

    public ClientDraft without(PartKey key) {
        SortedMap<PartKey, Content> changed = new TreeMap<>(parts);
        changed.remove(key);
        return new ClientDraft(this.key, id, changed);
    }

    /** The days of the visits, oldest first. */
    public List<LocalDate> visits() {
        return parts.keySet().stream().flatMap(p -> p.date().stream()).toList();
    }

    public String name() {
        return person().value("/name").orElse(id);
    }

    /** The client's file, as {@code ClientReader} reads it. */
    public String yaml() {
        Map<PartKey, Part> kept = parts.entrySet().stream()
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        e -> new Part(
                                e.getKey(), 1, java.util.Optional.of(e.getValue()), "", java.time.Instant.EPOCH)));
        return new ClientRecord(key, id, kept).yaml();
    }
}
