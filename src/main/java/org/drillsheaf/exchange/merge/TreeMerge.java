package org.drillsheaf.exchange.merge;

import static org.drillsheaf.exchange.merge.TreeDifference.at;
import static org.drillsheaf.exchange.merge.TreeDifference.child;
import static org.drillsheaf.exchange.merge.TreeDifference.keys;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Merges three ways: what one side left as it was, the other side may change. Maps merge key by key, lists whose items have
 * ids item by item, other lists of one length place by place. Where both sides changed one field to different values, that
 * is a clash: mine stays until somebody chose.
 */
public final class TreeMerge {
    private static final JsonNode NOTHING = MissingNode.getInstance();
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final Optional<Take> take;
    private final List<FieldChange> clashes = new ArrayList<>();

    private TreeMerge(Optional<Take> take) {
        this.take = take;
    }

    /**
     * @param merged both sides together; in a clash the side that was chosen, mine without a choice
     * @param clashes fields that both sides changed differently: mine as {@code old}, theirs as {@code fresh}; also those
     *     that the choice decided
     */
    public record Result(JsonNode merged, List<FieldChange> clashes) {
        public Result {
            clashes = List.copyOf(clashes);
        }
    }

    /**
     * Merges one drill.
     *
     * @param ancestors versions that both sides may come from: as it was exported, and the starter drill that the exporter
     *     knew. Mine counts as unchanged when it is any of them, theirs only when it is all of them: then neither whoever
     *     exported it nor whoever edited the file changed it
     * @param mine as it is now; a missing node when it is not there
     * @param theirs as it comes in
     */
    public static Result merge(List<JsonNode> ancestors, JsonNode mine, JsonNode theirs, Optional<Take> take) {
        TreeMerge merge = new TreeMerge(take);
        JsonNode merged = merge.node("", ancestors, mine, theirs);
        return new Result(merged, merge.clashes);
    }

    private JsonNode node(String pointer, List<JsonNode> ancestors, JsonNode mine, JsonNode theirs) {
        if (mine.equals(theirs) || (!ancestors.isEmpty() && ancestors.stream().allMatch(theirs::equals))) {
            return mine;
        }
        if (ancestors.contains(mine)) {
            return theirs;
        }
        if (mine.isObject() && theirs.isObject()) {
            return map(pointer, ancestors, mine, theirs);
        }
        if (isKeyed(mine) && isKeyed(theirs)) {
            return keyed(pointer, ancestors, mine, theirs);
        }
        if (mine.isArray()
                && theirs.isArray()
                && mine.size() == theirs.size()
                && ancestors.stream().allMatch(a -> a.isArray() && a.size() == mine.size())) {
            ArrayNode merged = JSON.arrayNode();
            for (int i = 0; i < mine.size(); i++) {
                int index = i;
                merged.add(node(pointer + "/" + i, each(ancestors, a -> a.get(index)), mine.get(i), theirs.get(i)));
            }
            return merged;
        }
        clashes.add(new FieldChange(pointer, mine, theirs));
        return take.equals(Optional.of(Take.THEIRS)) ? theirs : mine;
    }

    private JsonNode map(String pointer, List<JsonNode> ancestors, JsonNode mine, JsonNode theirs) {
        ObjectNode merged = JSON.objectNode();
        for (String key : keys(mine, theirs)) {
            JsonNode value =
                    node(child(pointer, key), each(ancestors, a -> at(a, key)), at(mine, key), at(theirs, key));
            if (!value.isMissingNode()) {
                merged.set(key, value);
            }
        }
        return merged;
    }

    private JsonNode keyed(String pointer, List<JsonNode> ancestors, JsonNode mine, JsonNode theirs) {
        Map<String, JsonNode> mineById = byId(mine);
        Map<String, JsonNode> all = new LinkedHashMap<>(mineById);
        Map<String, JsonNode> theirsById = byId(theirs);
        theirsById.forEach(all::putIfAbsent);
        ArrayNode merged = JSON.arrayNode();
        for (String id : all.keySet()) {
            JsonNode value = node(
                    child(pointer, id),
                    each(ancestors, a -> isKeyed(a) ? byId(a).getOrDefault(id, NOTHING) : NOTHING),
                    mineById.getOrDefault(id, NOTHING),
                    theirsById.getOrDefault(id, NOTHING));
            if (!value.isMissingNode()) {
                merged.add(value);
            }
        }
        return merged;
    }

    /** A list of maps that all have an id of their own. */
    private static boolean isKeyed(JsonNode list) {
        return list.isArray() && !list.isEmpty() && byId(list).size() == list.size();
    }

    private static Map<String, JsonNode> byId(JsonNode list) {
        Map<String, JsonNode> byId = new LinkedHashMap<>();
        for (JsonNode item : list) {
            if (item.isObject() && item.path("id").isTextual()) {
                byId.put(item.path("id").asText(), item);
            }
        }
        return byId;
    }

    private static List<JsonNode> each(List<JsonNode> nodes, UnaryOperator<JsonNode> part) {
        return nodes.stream().map(part).map(n -> n == null ? NOTHING : n).toList();
    }
}
