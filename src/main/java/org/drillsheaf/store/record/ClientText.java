package org.drillsheaf.store.record;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/**
 * A client's file taken apart. Whether its values make sense is {@code ClientReader}'s to say: a half-filled visit is kept
 * like any other.
 *
 * @param id of the client
 * @param parts what each part says
 */
public record ClientText(String id, Map<PartKey, Content> parts) {

    public ClientText {
        parts = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(parts));
    }

    /** Empty when the text is no client's file; the reasons then stand in {@code problems}. */
    public static Optional<ClientText> parse(String file, String text, Problems problems) {
        return YamlNode.parse(file, text, problems).flatMap(root -> of(root, problems));
    }

    public static Optional<ClientText> of(YamlNode root, Problems problems) {
        Problems found = new Problems();
        Map<PartKey, Content> parts = new LinkedHashMap<>();
        String id = root.get("client").flatMap(c -> c.text("id")).orElse("");
        if (id.isEmpty()) {
            root.error(found, "The client has no id", "Write “client:” with a line “id: …” below it");
        }
        root.get("client").ifPresent(c -> parts.put(PartKey.CLIENT, Content.of(c.json())));
        parts.put(
                PartKey.CONDITIONS,
                root.get("conditions").map(c -> Content.of(c.json())).orElse(Content.emptyList()));
        for (YamlNode visit : root.get("visits").map(YamlNode::items).orElse(java.util.List.of())) {
            visit.date("date")
                    .ifPresentOrElse(
                            date -> {
                                if (parts.put(PartKey.visit(date), Content.of(visit.json())) != null) {
                                    visit.error(found, "There are two visits on " + date, "Keep one visit a date");
                                }
                            },
                            () -> visit.error(found, "This visit has no date", "Write “date: 2026-03-05”"));
        }
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(new ClientText(id, parts));
    }
}
