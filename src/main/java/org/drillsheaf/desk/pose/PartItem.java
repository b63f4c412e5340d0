package org.drillsheaf.desk.pose;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.pose.PropKind;

/** One contact, prop or mark of a keyframe, as it is shown in a list and changed field by field. */
final class PartItem {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final List<String> CONTACTS = List.of("touch", "flat", "place");
    private static final List<String> MARKS = List.of("arrow", "swing", "pad", "angle", "breath");

    private PartItem() {}

    /** Kinds that can be added to a list. */
    static List<String> kinds(String list) {
        return switch (list) {
            case "contacts" -> CONTACTS;
            case "marks" -> MARKS;
            default ->
                java.util.Arrays.stream(PropKind.values()).map(PropKind::id).toList();
        };
    }

    /** The kind of an item. */
    static String kind(String list, JsonNode item) {
        if (item.isTextual()) {
            return item.textValue();
        }
        return kinds(list).stream().filter(item::has).findFirst().orElse("other");
    }

    /** What an item is about, shorter than its fields: body point and surface. */
    static String about(String list, JsonNode item) {
        JsonNode part = list.equals("contacts") ? item : item.path(kind(list, item));
        List<String> words = new ArrayList<>();
        if (list.equals("contacts")) {
            words.add(item.path(kind(list, item)).asText());
        }
        for (String key : List.of("plane", "on", "to", "at", "about", "way", "label", "x", "top")) {
            JsonNode value = part.path(key);
            boolean shown = list.equals("contacts") ? value.isValueNode() : value.isTextual();
            if (shown && words.size() < 2) {
                words.add(value.asText());
            }
        }
        return String.join(" – ", words);
    }

    /** A new item of a kind, complete enough to be read. */
    static JsonNode fresh(String list, String kind, int number) {
        if (list.equals("contacts")) {
            ObjectNode contact = JSON.objectNode();
            return switch (kind) {
                case "touch" -> contact.put("touch", "feet").put("plane", "floor");
                case "flat" -> contact.put("flat", "feet").put("plane", "floor");
                default -> contact.put("place", "heel.R").put("x", 0);
            };
        }
        ObjectNode part = JSON.objectNode();
        if (list.equals("marks")) {
            switch (kind) {
                case "arrow" -> part.put("at", "knee.R").set("dir", vector(1, 0, 0));
                case "swing" -> part.put("about", "hip.R").put("at", "knee.R");
                case "pad" -> part.put("at", "heel.R");
                case "angle" -> part.put("at", "knee.R");
                default -> part.put("way", "out");
            }
            return JSON.objectNode().put("id", kind + "-" + number).set(kind, part);
        }
        switch (kind) {
            case "band", "rail" -> part.put("a", "palm.L").put("b", "palm.R");
            case "towel", "pillow", "block" -> part.set("at", vector(0, .05, 0));
            case "wall" -> part.put("x", -.12);
            default -> {
                // the kind's own sizes and place do
            }
        }
        return JSON.objectNode().set(kind, part);
    }

    private static JsonNode vector(double x, double y, double z) {
        return JSON.arrayNode().add(x).add(y).add(z);
    }

    /** The fields of an item: JSON pointer to the text that stands in the field. */
    static Map<String, String> fields(JsonNode item) {
        Map<String, String> fields = new LinkedHashMap<>();
        item.properties().forEach(f -> {
            if (f.getValue().isObject()) {
                f.getValue()
                        .properties()
                        .forEach(g -> fields.put("/" + f.getKey() + "/" + g.getKey(), text(g.getValue())));
            } else {
                fields.put("/" + f.getKey(), text(f.getValue()));
            }
        });
        return fields;
    }

    private static String text(JsonNode value) {
        return value.isTextual()
                ? value.textValue()
                : value.toString().replace(",", ", ").replace("\"", "");
    }

    /** The item with another text in one field; empty when the text is no value. */
    static Optional<JsonNode> with(JsonNode item, String pointer, String text) {
        String written = text.strip().replace('\u2212', '-');
        Optional<JsonNode> value = written.isEmpty()
                ? Optional.empty()
                : YamlNode.parse("field", "value: " + written, new Problems())
                        .flatMap(n -> n.get("value"))
                        .map(YamlNode::json)
                        .filter(v -> !v.isObject() && !v.isNull());
        JsonNode next = value.orElse(TextNode.valueOf(written));
        ObjectNode copy = item.deepCopy();
        int slash = pointer.lastIndexOf('/');
        JsonNode map = copy.at(pointer.substring(0, slash));
        if (written.isEmpty() || !(map instanceof ObjectNode entries)) {
            return Optional.empty();
        }
        entries.set(pointer.substring(slash + 1), next);
        return Optional.of(copy);
    }
}
