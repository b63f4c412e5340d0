package org.drillsheaf.store.record;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;

/**
 * One client as kept: all parts with their versions, without removed ones.
 *
 * @param key stays for life and names nobody
 * @param id as in the client's file, for example {@code odile-farrant}
 */
public record ClientRecord(UUID key, String id, Map<PartKey, Part> parts) {

    public ClientRecord {
        parts = java.util.Collections.unmodifiableMap(new TreeMap<>(parts));
    }

    public Optional<Part> part(PartKey part) {
        return Optional.ofNullable(parts.get(part));
    }

    /** The days of the visits, oldest first. */
    public List<LocalDate> visits() {
        return parts.keySet().stream().flatMap(p -> p.date().stream()).toList();
    }

    /** The client's file, as {@code ClientReader} reads it. */
    public String yaml() {
        JsonNodeFactory nodes = JsonNodeFactory.instance;
        ObjectNode root = nodes.objectNode();
        content(PartKey.CLIENT).ifPresent(c -> root.set("client", c.json()));
        root.set("conditions", content(PartKey.CONDITIONS).map(Content::json).orElse(nodes.arrayNode()));
        ArrayNode visits = nodes.arrayNode();
        for (LocalDate date : visits()) {
            content(PartKey.visit(date)).ifPresent(c -> visits.add(c.json()));
        }
        root.set("visits", visits);
        return YamlLines.write(root);
    }

    private Optional<Content> content(PartKey key) {
        return part(key).flatMap(Part::content);
    }
}
