package org.drillsheaf.desk.drill;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Lists of texts as lines of one field: an item keeps its mark and its other languages while its line is changed or moves. */
final class TextLines {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private TextLines() {}

    /** The text of an item in a language; empty when there is none. */
    static String text(JsonNode item, String language) {
        return item.isTextual()
                ? language.equals("en") ? item.textValue() : ""
                : item.path(language).asText("");
    }

    /** An item with another text in one language; blank takes the language away, but never the last one. */
    static JsonNode with(JsonNode item, String language, String text) {
        if (!item.isObject()) {
            if (language.equals("en") || text.isBlank()) {
                return language.equals("en") ? JSON.textNode(text) : item;
            }
            ObjectNode both = JSON.objectNode();
            if (item.isTextual()) {
                both.put("en", item.textValue());
            }
            return both.put(language, text);
        }
        ObjectNode copy = item.deepCopy();
        if (text.isBlank() && !language.equals("en")) {
            copy.remove(language);
        } else {
            copy.put(language, text);
        }
        return copy;
    }

    /** One line an item. */
    static String lines(JsonNode list, String language) {
        List<String> lines = new ArrayList<>();
        list.forEach(item -> lines.add(text(item, language)));
        return String.join("\n", lines);
    }

    /**
     * The list after its lines were changed. Items whose line is still there stay as they are; those between are taken in
     * order, and a line too many becomes a new item.
     */
    static ArrayNode changed(JsonNode list, String language, String written) {
        List<String> lines = new ArrayList<>(written.lines().map(String::strip).toList());
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        int before = list.size();
        int head = 0;
        while (head < before
                && head < lines.size()
                && text(list.get(head), language).equals(lines.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < before - head
                && tail < lines.size() - head
                && text(list.get(before - 1 - tail), language).equals(lines.get(lines.size() - 1 - tail))) {
            tail++;
        }
        ArrayNode changed = JSON.arrayNode();
        for (int i = 0; i < lines.size(); i++) {
            if (i < head) {
                changed.add(list.get(i));
            } else if (i >= lines.size() - tail) {
                changed.add(list.get(before - (lines.size() - i)));
            } else if (i < before - tail) {
                changed.add(with(list.get(i), language, lines.get(i)));
            } else {
                changed.add(JSON.objectNode().put(language, lines.get(i)));
            }
        }
        return changed;
    }
}
