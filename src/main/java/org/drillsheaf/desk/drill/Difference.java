package org.drillsheaf.desk.drill;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * One place in which two editions of a drill differ.
 *
 * @param place path in the file, for example {@code action, 2, en}
 * @param before empty when it was not there; {@code now} likewise
 */
public record Difference(String place, String before, String now) {

    /** Every place in which two files differ, in the order of the newer one. */
    public static List<Difference> between(JsonNode before, JsonNode now) {
        List<Difference> all = new ArrayList<>();
        collect("", before, now, all);
        return all;
    }

    private static void collect(String place, JsonNode before, JsonNode now, List<Difference> all) {
        if (before.equals(now)) {
            return;
        }
        if (before.isObject() && now.isObject()) {
            Set<String> keys = new LinkedHashSet<>();
            now.fieldNames().forEachRemaining(keys::add);
            before.fieldNames().forEachRemaining(keys::add);
            keys.forEach(key -> collect(join(place, key), before.path(key), now.path(key), all));
        } else if (before.isArray() && now.isArray()) {
            for (int i = 0; i < Math.max(before.size(), now.size()); i++) {
                collect(join(place, String.valueOf(i + 1)), before.path(i), now.path(i), all);
            }
        } else {
            all.add(new Difference(place, text(before), text(now)));
        }
    }

    private static String join(String place, String key) {
        return place.isEmpty() ? key : place + ", " + key;
    }

    private static String text(JsonNode value) {
        if (value.isObject()) {
            List<String> parts = new ArrayList<>();
            value.properties().forEach(p -> parts.add(p.getKey() + ": " + text(p.getValue())));
            return String.join("; ", parts);
        }
        if (value.isArray()) {
            List<String> parts = new ArrayList<>();
            value.forEach(item -> parts.add(text(item)));
            return String.join(", ", parts);
        }
        return value.asText("");
    }
}
