package org.drillsheaf.screen;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.RuleReader;

/**
 * Reads a gate: {@code id}, {@code name}, {@code required} and {@code helps}, whose lines are rules in the same language as the
 * presentations, with their definitions and groups. Immutable and safe for several threads.
 */
public record GateReader(Battery battery, Presentations presentations) {

    /** Empty when a rule is wrong; the reasons then stand in {@code problems}, each with its line. */
    public Optional<Gate> read(YamlNode node, Problems problems) {
        Problems found = new Problems();
        Set<String> ids = new LinkedHashSet<>();
        presentations.list().forEach(p -> ids.add(p.id()));
        ids.add(presentations.none().id());
        RuleReader rules = new RuleReader(
                PresentationReader.words(battery, ids), presentations.definitions(), presentations.groups(), found);
        Optional<String> id = node.text("id");
        if (id.isEmpty()) {
            node.error(found, "A gate has no id", "Add a line “id: settle-to-restore”");
        }
        Gate gate = new Gate(
                id.orElse(""),
                node.text("name").orElse(id.orElse("")),
                list(node, "required", rules),
                list(node, "helps", rules));
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(gate);
    }

    /** Reads a file of gates, in the order of the phases. */
    public Optional<List<Gate>> readAll(YamlNode root, YamlSchema schema, Problems problems) {
        Problems found = new Problems();
        schema.check(root, found);
        List<Gate> gates = new ArrayList<>();
        if (!found.hasErrors()) {
            for (YamlNode node : root.get("gates").map(YamlNode::items).orElse(List.of())) {
                read(node, found).ifPresent(gates::add);
            }
        }
        problems.addAll(found.all());
        return found.hasErrors() ? Optional.empty() : Optional.of(List.copyOf(gates));
    }

    private static List<Rule> list(YamlNode node, String key, RuleReader rules) {
        return node.get(key).map(n -> rules.readList(n, false)).orElse(List.of());
    }
}
