package org.drillsheaf.exchange.merge;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What differs between two versions of a drill, down to single values. */
public final class TreeDifference {
    private TreeDifference() {}

    /** Every field that differs, in the order of the document. The order of the keys of a map does not count. */
    public static List<FieldChange> between(JsonNode old, JsonNode fresh) {
        List<FieldChange> changes = new ArrayList<>();
        compare("", old, fresh, changes);
        return List.copyOf(changes);
    }

    private static void compare(String pointer, JsonNode old, JsonNode fresh, List<FieldChange> changes) {
        if (old.equals(fresh)) {
            return;
        }
        if (old.isObject() && fresh.isObject()) {
            for (String key : keys(old, fresh)) {
                compare(child(pointer, key), at(old, key), at(fresh, key), changes);
            }
        } else if (old.isArray() && fresh.isArray() && old.size() == fresh.size()) {
            for (int i = 0; i < old.size(); i++) {
                compare(pointer + "/" + i, old.get(i), fresh.get(i), changes);
            }
        } else {
            changes.add(new FieldChange(pointer, old, fresh));
        }
    }

    static Set<String> keys(JsonNode first, JsonNode second) {
        Set<String> keys = new LinkedHashSet<>();
        first.fieldNames().forEachRemaining(keys::add);
        second.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    static JsonNode at(JsonNode map, String key) {
        JsonNode value = map.get(key);
        return value == null ? MissingNode.getInstance() : value;
    }

    static String child(String pointer, String key) {
        return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
    }
}
