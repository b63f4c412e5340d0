package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;

/** A part of a drill as it is shown in cells: one, or one for each language. */
interface Part {
    /** The language of a part that has none. */
    String NO_LANGUAGE = "";

    /** Where the part lies in a drill, as a JSON pointer. */
    String pointer();

    /** The text of the cell; empty when there is nothing. */
    String cell(JsonNode drill, String language);

    /**
     * Writes edited cells into a drill.
     *
     * @param cells language to the text of its cell, the languages in the order of the columns
     */
    void put(ObjectNode drill, Map<String, String> cells) throws CellMistake;

    /** The lines of a cell without empty ones at the end. */
    static List<String> lines(String cell) {
        return cell.isBlank()
                ? List.of()
                : cell.stripTrailing().lines().map(String::strip).toList();
    }

    /** Puts a value at a pointer, or takes it away; a map that becomes empty by this goes too. */
    static void set(ObjectNode drill, String pointer, JsonNode value) {
        String[] steps = pointer.substring(1).split("/");
        if (steps.length == 1) {
            setOrRemove(drill, steps[0], value);
            return;
        }
        JsonNode inner = drill.path(steps[0]);
        ObjectNode map = inner.isObject() ? (ObjectNode) inner : JsonNodeFactory.instance.objectNode();
        setOrRemove(map, steps[1], value);
        setOrRemove(drill, steps[0], map.isEmpty() ? map.path("nothing") : map);
    }

    private static void setOrRemove(ObjectNode map, String key, JsonNode value) {
        if (value.isMissingNode()) {
            map.remove(key);
        } else {
            map.set(key, value);
        }
    }
}
