package org.drillsheaf.store.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.drillsheaf.store.sql.StoreFailure;
import org.jspecify.annotations.Nullable;

/**
 * What one part of a record says: the values of a YAML file without its layout. Immutable. A place in it is a path such as
 * {@code /screen/thigh-drop/left}; in a list it is the position, or the {@code id} of the item when all items have one
 * ({@code /wrist-pain/side}).
 */
public final class Content {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonNode json;

    private Content(JsonNode json) {
        this.json = json;
    }

    /** Copies the values. */
    public static Content of(JsonNode json) {
        return new Content(json.deepCopy());
    }

    public static Content emptyMap() {
        return new Content(NODES.objectNode());
    }

    public static Content emptyList() {
        return new Content(NODES.arrayNode());
    }

    /** Reads what {@link #text} wrote. */
    static Content parse(String text) {
        try {
            return new Content(JSON.readTree(text));
        } catch (JsonProcessingException e) {
            throw new StoreFailure(
                    StoreFailure.Kind.DAMAGED,
                    "the record",
                    "What is kept here cannot be read any more",
                    "Leave the record as it is, and restore the newest backup");
        }
    }

    /** One line, always the same for the same values in the same order. */
    String text() {
        return json.toString();
    }

    /** A copy of the values. */
    public JsonNode json() {
        return json.deepCopy();
    }

    /** The values as a YAML text. */
    public String yaml() {
        return YamlLines.write(json);
    }

    /** The single value at a path, as written; empty for a map, a list or nothing. */
    public Optional<String> value(String path) {
        JsonNode found = at(path);
        return found == null || found.isContainerNode() || found.isNull()
                ? Optional.empty()
                : Optional.of(found.asText());
    }

    /** The content below a path. */
    public Optional<Content> below(String path) {
        JsonNode found = at(path);
        return found == null ? Optional.empty() : Optional.of(new Content(found));
    }

    private @Nullable JsonNode at(String path) {
        JsonNode here = json;
        for (String step : steps(path)) {
            here = child(here, step);
            if (here == null) {
                return null;
            }
        }
        return here;
    }

    private static @Nullable JsonNode child(JsonNode parent, String step) {
        if (parent instanceof ArrayNode list) {
            int index = index(list, step);
            return index < 0 ? null : list.get(index);
        }
        return parent.get(step);
    }

    /** This content with one value laid at a path; maps on the way are made. A list grows by one item at most. */
    public Content with(String path, String text) {
        return with(path, NODES.textNode(text));
    }

    public Content with(String path, double number) {
        boolean whole = number == Math.rint(number) && Math.abs(number) <= Integer.MAX_VALUE;
        return with(path, whole ? NODES.numberNode((int) number) : NODES.numberNode(number));
    }

    public Content with(String path, boolean truth) {
        return with(path, NODES.booleanNode(truth));
    }

    /** With a map or list laid at a path. */
    public Content with(String path, Content content) {
        return with(path, content.json());
    }

    private Content with(String path, JsonNode value) {
        List<String> steps = steps(path);
        if (steps.isEmpty()) {
            return new Content(value);
        }
        JsonNode copy = json.deepCopy();
        JsonNode here = copy;
        for (String step : steps.subList(0, steps.size() - 1)) {
            JsonNode next = child(here, step);
            if (next == null || !next.isContainerNode()) {
                next = NODES.objectNode();
                put(here, step, next);
            }
            here = next;
        }
        put(here, steps.get(steps.size() - 1), value);
        return new Content(copy);
    }

    private static void put(JsonNode parent, String step, JsonNode value) {
        if (parent instanceof ArrayNode list) {
            int index = index(list, step);
            if (index < 0) {
                list.add(value);
            } else {
                list.set(index, value);
            }
        } else {
            ((ObjectNode) parent).set(step, value);
        }
    }

    /** This content without what stands at a path; unchanged when nothing stands there. */
    public Content without(String path) {
        List<String> steps = steps(path);
        if (steps.isEmpty() || at(path) == null) {
            return this;
        }
        JsonNode copy = json.deepCopy();
        JsonNode here = copy;
        for (String step : steps.subList(0, steps.size() - 1)) {
            here = java.util.Objects.requireNonNull(child(here, step));
        }
        String last = steps.get(steps.size() - 1);
        if (here instanceof ArrayNode list) {
            list.remove(index(list, last));
        } else {
            ((ObjectNode) here).remove(last);
        }
        return new Content(copy);
    }

    /** Position of the item that a step names, by its id or its number; -1 when there is none. */
    private static int index(ArrayNode list, String step) {
        for (int i = 0; i < list.size(); i++) {
            if (step.equals(list.get(i).path("id").asText(""))) {
                return i;
            }
        }
        if (step.matches("\\d{1,6}")) {
            int index = Integer.parseInt(step);
            return index < list.size() ? index : -1;
        }
        return -1;
    }

    /**
     * Every field with its value, as written; a list of single values is one field. Two contents say the same when these are
     * equal.
     */
    public SortedMap<String, String> fields() {
        SortedMap<String, String> fields = new TreeMap<>();
        collect("", json, fields);
        return Collections.unmodifiableSortedMap(fields);
    }

    private static void collect(String path, JsonNode node, SortedMap<String, String> fields) {
        if (node instanceof ObjectNode map && !map.isEmpty()) {
            map.properties().forEach(e -> collect(path + "/" + escape(e.getKey()), e.getValue(), fields));
        } else if (node instanceof ArrayNode list && holdsMaps(list)) {
            boolean named = namedItems(list);
            for (int i = 0; i < list.size(); i++) {
                String step = named ? list.get(i).get("id").asText() : Integer.toString(i);
                collect(path + "/" + escape(step), list.get(i), fields);
            }
        } else {
            fields.put(path, node.isContainerNode() ? node.toString() : node.asText());
        }
    }

    private static boolean holdsMaps(ArrayNode list) {
        for (JsonNode item : list) {
            if (item.isContainerNode()) {
                return true;
            }
        }
        return false;
    }

    private static boolean namedItems(ArrayNode list) {
        java.util.Set<String> ids = new java.util.HashSet<>();
        for (JsonNode item : list) {
            if (!item.path("id").isTextual() || !ids.add(item.get("id").asText())) {
                return false;
            }
        }
        return true;
    }

    private static String escape(String step) {
        return step.replace("~", "~0").replace("/", "~1");
    }

    private static List<String> steps(String path) {
        List<String> steps = new ArrayList<>();
        for (String step : path.split("/")) {
            if (!step.isEmpty()) {
                steps.add(step.replace("~1", "/").replace("~0", "~"));
            }
        }
        return steps;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Content content && json.equals(content.json);
    }

    @Override
    public int hashCode() {
        return json.hashCode();
    }

    /** Without values, so that none gets into a log by accident. */
    @Override
    public String toString() {
        return "Content" + fields().keySet();
    }
}
