package org.drillsheaf.drill;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.YamlSchema;

/** Reads the vocabularies of goals, positions and equipment. A file with problems gives an empty vocabulary. */
public final class WordsReader {
    private WordsReader() {}

    public static Map<String, Goal> goals(YamlNode file, YamlSchema schema, Problems problems) {
        return entries(file, "goals", schema, problems, WordsReader::goal);
    }

    public static Map<String, BodyPosition> positions(YamlNode file, YamlSchema schema, Problems problems) {
        return entries(file, "positions", schema, problems, WordsReader::position);
    }

    public static Map<String, EquipmentItem> equipment(YamlNode file, YamlSchema schema, Problems problems) {
        return entries(file, "equipment", schema, problems, WordsReader::item);
    }

    private static <T> Map<String, T> entries(
            YamlNode file, String key, YamlSchema schema, Problems problems, Function<YamlNode, T> entry) {
        Problems own = new Problems();
        schema.check(file, own);
        Map<String, T> byId = new LinkedHashMap<>();
        if (!own.hasErrors()) {
            for (YamlNode node : file.nearest("/" + key).items()) {
                String id = node.text("id").orElseThrow();
                if (byId.putIfAbsent(id, entry.apply(node)) != null) {
                    node.error(own, "“" + id + "” stands here a second time", "Keep one of the two");
                }
            }
        }
        problems.addAll(own.all());
        return byId;
    }

    private static Goal goal(YamlNode node) {
        return new Goal(
                node.text("id").orElseThrow(),
                node.localText("name").orElseThrow(),
                node.localText("meaning").orElseThrow(),
                node.localText("client").orElseThrow(),
                DrillReader.source(node.nearest("/source")));
    }

    private static BodyPosition position(YamlNode node) {
        return new BodyPosition(
                node.text("id").orElseThrow(),
                node.localText("name").orElseThrow(),
                node.localText("meaning").orElseThrow(),
                node.texts("roots"),
                DrillReader.source(node.nearest("/source")));
    }

    private static EquipmentItem item(YamlNode node) {
        return new EquipmentItem(
                node.text("id").orElseThrow(),
                node.localText("name").orElseThrow(),
                node.localText("meaning").orElseThrow(),
                node.nearest("/stand-ins").items().stream()
                        .map(s -> new EquipmentItem.StandIn(
                                s.text("id").orElseThrow(), s.localText("name").orElseThrow()))
                        .toList(),
                DrillReader.source(node.nearest("/source")));
    }
}
