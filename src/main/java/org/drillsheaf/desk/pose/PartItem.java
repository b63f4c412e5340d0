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
import org.drillsheaf.desk.words.Words;
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
    static String about(String list, JsonNode item, Words words) {
        JsonNode part = list.equals("contacts") ? item : item.path(kind(list, item));
        List<String> told = new ArrayList<>();
        if (list.equals("contacts")) {
            told.add(item.path(kind(list, item)).asText());
        }
        for (String key : List.of("plane", "on", "to", "at", "about", "way", "label", "x", "top")) {
            JsonNode value = part.path(key);
            boolean shown = list.equals("contacts") ? value.isValueNode() : value.isTextual();
            if (shown && told.size() < 2) {
                told.add(value.isNumber() ? words.number(value.asText()) : value.asText());
            }
        }
        return String.join(" – ", told);
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

    /** The fields of an item: JSON pointer to the text that stands in the field, numbers as the language writes them. */
    static Map<String, String> fields(JsonNode item, Words words) {
        Map<String, String> fields = new LinkedHashMap<>();
        item.properties().forEach(f -> {
            if (f.getValue().isObject()) {
                f.getValue()
                        .properties()
                        .forEach(g -> fields.put("/" + f.getKey() + "/" + g.getKey(), text(g.getValue(), words)));
            } else {
                fields.put("/" + f.getKey(), text(f.getValue(), words));
            }
        });
        return fields;
    }

    private static String text(JsonNode value, Words words) {
        if (value.isTextual()) {
            return value.textValue();
        }
        if (value.isNumber()) {
            return words.number(value.asText());
        }
        List<String> parts = new ArrayList<>();
        value.forEach(part -> parts.add(text(part, words)));
        // Where a comma stands inside numbers, it cannot stand between them too.
        String between = words.decimalSign().equals(",") ? "; " : ", ";
        return value.isArray() ? "[" + String.join(between, parts) + "]" : value.asText();
    }

    /** What was typed in place of this value, as a file writes it: numbers with a point, the parts of a list with commas. */
    private static String plain(JsonNode before, String typed) {
        String text = typed.strip().replace('\u2212', '-');
        if (before.isNumber()) {
            return Words.plain(text);
        }
        return before.isArray() && text.contains(";") ? text.replace(',', '.').replace(';', ',') : text;
    }

    /** The item with another text in one field; empty when the text is no value. */
    static Optional<JsonNode> with(JsonNode item, String pointer, String text) {
        String written = plain(item.at(pointer), text);
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
