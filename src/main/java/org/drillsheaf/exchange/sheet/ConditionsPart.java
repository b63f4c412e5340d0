package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * For whom a drill is not, or not unchanged: {@code hip-posterior: exclude; The hip bends past 80°.} or {@code neck: modify
 * two-pillows; The head lies level.}, one a line. Where a condition stays, what the cell does not show stays with it.
 */
record ConditionsPart(String pointer) implements Part {
    private static final Pattern LINE =
            Pattern.compile("([a-z0-9-]+)\\s*:\\s*(exclude|modify|caution)(?:\\s+([a-z0-9-]+))?\\s*(?:;\\s*(.+))?");

    @Override
    public String cell(JsonNode drill, String language) {
        List<String> lines = new ArrayList<>();
        for (JsonNode condition : drill.at(pointer)) {
            String variant =
                    condition.has("variant") ? " " + condition.path("variant").asText() : "";
            lines.add(condition.path("id").asText() + ": "
                    + condition.path("action").asText() + variant + "; " + reason(condition));
        }
        return String.join("\n", lines);
    }

    private static String reason(JsonNode condition) {
        JsonNode reason = condition.path("reason");
        return (reason.isTextual() ? reason : reason.path("en")).asText("");
    }

    @Override
    public void put(ObjectNode drill, Map<String, String> cells) throws CellMistake {
        JsonNode before = drill.at(pointer);
        Map<String, JsonNode> byId = new HashMap<>();
        before.forEach(condition -> byId.put(condition.path("id").asText(), condition));
        ArrayNode conditions = JsonNodeFactory.instance.arrayNode();
        for (String line : Part.lines(cells.getOrDefault(NO_LANGUAGE, ""))) {
            Matcher matcher = LINE.matcher(line);
            if (!matcher.matches()) {
                throw new CellMistake(
                        "“" + line + "” is no line about a condition",
                        "Write for example “hip-posterior: exclude; The hip bends far.” or “neck: modify two-pillows;"
                                + " …”");
            }
            conditions.add(condition(matcher, byId.get(matcher.group(1)), line));
        }
        Part.set(drill, pointer, conditions.isEmpty() && !before.isArray() ? MissingNode.getInstance() : conditions);
    }

    private static ObjectNode condition(
            Matcher line, @org.jspecify.annotations.Nullable JsonNode before, String written) throws CellMistake {
        String reason = line.group(4) == null ? "" : line.group(4).strip();
        if (before == null && reason.isEmpty()) {
            throw new CellMistake(
                    "“" + written + "” gives no reason", "Write a semicolon and the reason behind it, in English");
        }
        ObjectNode condition = JsonNodeFactory.instance.objectNode();
        condition.put("id", line.group(1));
        condition.put("action", line.group(2));
        if (line.group(3) != null) {
            condition.put("variant", line.group(3));
        }
        if (before == null) {
            condition.putObject("reason").put("en", reason);
            condition.putObject("source").put("kind", "house").put("text", "The clinic's own");
            return condition;
        }
        JsonNode old = before.path("reason");
        if (reason.isEmpty() || reason.equals(reason(before))) {
            condition.set("reason", old);
        } else {
            // A translation of another reason would be wrong.
            condition.putObject("reason").put("en", reason);
        }
        condition.set("source", before.path("source"));
        return condition;
    }
}
