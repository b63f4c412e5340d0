package org.drillsheaf;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.CollectionNode;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * The text of a YAML file that is changed in single places: everything else keeps its lines, its order and its comments.
 * Immutable. Places are JSON pointers such as {@code /pose/start/joints/hip/flex}.
 */
public final class YamlDocument {
    private final String text;
    private final YamlNode node;
    private final JsonNode json;

    private YamlDocument(String text, YamlNode node) {
        this.text = text;
        this.node = node;
        this.json = node.json();
    }

    /** @return empty when the text is no YAML map; the reason then stands in {@code problems} */
    public static Optional<YamlDocument> of(String file, String text, Problems problems) {
        return YamlNode.parse(file, text, problems).filter(YamlNode::isMap).map(node -> new YamlDocument(text, node));
    }

    public String text() {
        return text;
    }

    /** The whole file with its lines. */
    public YamlNode node() {
        return node;
    }

    /** What stands at a place; missing when nothing does. */
    public JsonNode at(String pointer) {
        return json.at(pointer);
    }

    /** The same file with another value at a place; a key that is not there yet comes last in its map. */
    public YamlDocument with(String pointer, JsonNode value) {
        return with(pointer, value, List.of());
    }

    /**
     * The same file with another value at a place.
     *
     * @param order keys of the map in their usual order: a new key comes behind those before it
     */
    public YamlDocument with(String pointer, JsonNode value, List<String> order) {
        if (at(pointer).equals(value)) {
            return this;
        }
        return changed(JsonPointer.compile(pointer), value, order);
    }

    /** The same file without what stands at a place. */
    public YamlDocument without(String pointer) {
        JsonPointer place = JsonPointer.compile(pointer);
        return json.at(place).isMissingNode() ? this : changed(place, MissingNode.getInstance(), List.of());
    }

    private YamlDocument changed(JsonPointer pointer, JsonNode value, List<String> order) {
        JsonNode wanted = replaced(json, pointer, value);
        Node root = new Yaml(new LoaderOptions()).compose(new StringReader(text));
        String edited = edit((MappingNode) root, json, pointer, value, order);
        Problems problems = new Problems();
        YamlDocument document = of(node.file(), edited, problems)
                .orElseThrow(() -> new IllegalStateException("the edited text is no YAML: " + problems.all()));
        if (!document.json.equals(wanted)) {
            throw new IllegalStateException("the edit of " + pointer + " changed something else");
        }
        return document;
    }

    /** Goes down to the innermost part that stands on lines of its own, and writes that anew. */
    private String edit(MappingNode map, JsonNode here, JsonPointer pointer, JsonNode value, List<String> order) {
        String key = pointer.getMatchingProperty();
        NodeTuple entry = entry(map, key);
        if (entry == null) {
            return insert(map, key, replaced(MissingNode.getInstance(), pointer.tail(), value), order);
        }
        JsonNode child = here.path(key);
        Node node = entry.getValueNode();
        if (!pointer.tail().matches()) {
            if (node instanceof MappingNode inner && goesOn(inner, child, pointer.tail(), value)) {
                return edit(inner, child, pointer.tail(), value, order);
            }
            if (node instanceof SequenceNode list && isBlock(list)) {
                String inItem = editItem(list, child, pointer.tail(), value, order);
                if (!inItem.isEmpty()) {
                    return inItem;
                }
            }
        }
        JsonNode whole = replaced(child, pointer.tail(), value);
        if (whole.isMissingNode()) {
            return remove(entry);
        }
        int column = entry.getKeyNode().getStartMark().getColumn();
        int colon = text.indexOf(':', index(entry.getKeyNode().getEndMark())) + 1;
        return text.substring(0, colon)
                + YamlWriter.value(whole, column + key.length() + 1, column + 2, true)
                + text.substring(Math.max(colon, end(node)));
    }

    private String editItem(SequenceNode list, JsonNode here, JsonPointer pointer, JsonNode value, List<String> order) {
        int at = pointer.getMatchingIndex();
        if (at < 0 || at >= list.getValue().size()) {
            return "";
        }
        Node item = list.getValue().get(at);
        JsonNode child = here.get(at);
        if (item instanceof MappingNode map && goesOn(map, child, pointer.tail(), value)) {
            return edit(map, child, pointer.tail(), value, order);
        }
        JsonNode whole = replaced(child, pointer.tail(), value);
        if (whole.isMissingNode()) {
            return "";
        }
        int column = item.getStartMark().getColumn();
        return text.substring(0, index(item.getStartMark()))
                + YamlWriter.value(whole, column - 1, column, false)
                + text.substring(end(item));
    }

    /** Whether a map can be edited inside: on lines of its own, and no key of it would be taken away. */
    private static boolean goesOn(MappingNode map, JsonNode json, JsonPointer pointer, JsonNode value) {
        return isBlock(map)
                && !pointer.matches()
                && !(value.isMissingNode() && pointer.tail().matches())
                && json.isObject();
    }

    private static boolean isBlock(CollectionNode<?> node) {
        return node.getFlowStyle() == FlowStyle.BLOCK;
    }

    private String insert(MappingNode map, String key, JsonNode value, List<String> order) {
        List<NodeTuple> entries = map.getValue();
        NodeTuple before = entries.get(entries.size() - 1);
        List<String> earlier = order.contains(key) ? order.subList(0, order.indexOf(key)) : List.of();
        for (NodeTuple entry : entries) {
            if (earlier.contains(key(entry))) {
                before = entry;
            }
        }
        int column = before.getKeyNode().getStartMark().getColumn();
        int line = text.indexOf('\n', end(before.getValueNode()));
        int place = line < 0 ? text.length() : line;
        return text.substring(0, place)
                + "\n"
                + " ".repeat(column)
                + YamlWriter.entry(key, value, column)
                + text.substring(place);
    }

    /** Only for keys at the left margin: they fill whole lines. */
    private String remove(NodeTuple entry) {
        int start = index(entry.getKeyNode().getStartMark());
        int line = text.indexOf('\n', Math.max(start, end(entry.getValueNode())));
        return text.substring(0, start) + (line < 0 ? "" : text.substring(line + 1));
    }

    private static @Nullable NodeTuple entry(MappingNode map, String key) {
        return map.getValue().stream()
                .filter(e -> key(e).equals(key))
                .findFirst()
                .orElse(null);
    }

    private static String key(NodeTuple entry) {
        return entry.getKeyNode() instanceof ScalarNode scalar ? scalar.getValue() : "";
    }

    /** Behind the last sign of a node, without the lines and comments that follow it. */
    private int end(Node node) {
        if (node instanceof CollectionNode<?> collection
                && isBlock(collection)
                && !collection.getValue().isEmpty()) {
            Object last = collection.getValue().get(collection.getValue().size() - 1);
            return last instanceof NodeTuple entry
                    ? Math.max(end(entry.getKeyNode()), end(entry.getValueNode()))
                    : end((Node) last);
        }
        int end = index(node.getEndMark());
        int start = index(node.getStartMark());
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    private int index(Mark mark) {
        return text.offsetByCodePoints(0, mark.getIndex());
    }

    /** A copy with another value at a place; maps on the way there are made. */
    private static JsonNode replaced(JsonNode json, JsonPointer pointer, JsonNode value) {
        if (pointer.matches()) {
            return value;
        }
        if (json instanceof ArrayNode list) {
            ArrayNode copy = list.deepCopy();
            int at = pointer.getMatchingIndex();
            if (at < 0 || at >= copy.size()) {
                throw new IllegalArgumentException("the list has no item " + pointer.getMatchingProperty());
            }
            JsonNode item = replaced(copy.get(at), pointer.tail(), value);
            if (item.isMissingNode()) {
                copy.remove(at);
            } else {
                copy.set(at, item);
            }
            return copy;
        }
        ObjectNode copy = json instanceof ObjectNode map ? map.deepCopy() : JsonNodeFactory.instance.objectNode();
        JsonNode part = replaced(copy.path(pointer.getMatchingProperty()), pointer.tail(), value);
        if (part.isMissingNode()) {
            copy.remove(pointer.getMatchingProperty());
        } else {
            copy.set(pointer.getMatchingProperty(), part);
        }
        return copy;
    }
}
