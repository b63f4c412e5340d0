package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A list with one text in each language, one text a line. The first language that has lines also carries what belongs to
 * a step as a whole: {@code [mark hug]}, {@code [picture end]} or {@code [mark hug, picture end]} behind its text.
 *
 * @param isOfPairs whether an item is a fault with its fix, written {@code fault → fix}
 */
record LocalListPart(String pointer, boolean isOfPairs) implements Part {
    /** Stands for a text that an item does not have in this language. */
    private static final String NO_TEXT = "–";

    private static final String ARROW = " → ";
    private static final Pattern OF_STEP =
            Pattern.compile("(.*?)\\s*\\[(?:mark ([a-z0-9-]+))?(?:, )?(?:picture (start|move|end))?]");
    private static final Set<String> NO_LANGUAGES = Set.of("mark", "picture");

    @Override
    public String cell(JsonNode drill, String language) {
        JsonNode list = drill.at(pointer);
        boolean isFirst = language.equals(first(list));
        List<String> lines = new ArrayList<>();
        boolean hasAny = false;
        for (JsonNode item : list) {
            String line = isOfPairs
                    ? pair(text(item.path("fault"), language), text(item.path("fix"), language))
                    : text(item, language);
            hasAny |= !line.isEmpty();
            lines.add((line.isEmpty() ? NO_TEXT : line.replace("\n", " ")) + (isFirst ? ofStep(item) : ""));
        }
        return hasAny ? String.join("\n", lines) : "";
    }

    private static String pair(String fault, String fix) {
        return fault.isEmpty() && fix.isEmpty() ? "" : fault + ARROW + fix;
    }

    private static String text(JsonNode text, String language) {
        return text.isTextual()
                ? (language.equals("en") ? text.asText() : "")
                : text.path(language).asText("");
    }

    private static String ofStep(JsonNode item) {
        List<String> words = new ArrayList<>();
        for (String key : List.of("mark", "picture")) {
            if (item.has(key)) {
                words.add(key + " " + item.path(key).asText());
            }
        }
        return words.isEmpty() ? "" : " [" + String.join(", ", words) + "]";
    }

    /** English where there is any, else the first language of the first item. */
    private String first(JsonNode list) {
        Set<String> languages = languages(list);
        return languages.contains("en") ? "en" : languages.stream().findFirst().orElse("en");
    }

    private Set<String> languages(JsonNode list) {
        Set<String> languages = new TreeSet<>();
        for (JsonNode item : list) {
            for (JsonNode text : isOfPairs ? List.of(item.path("fault"), item.path("fix")) : List.of(item)) {
                if (text.isTextual()) {
                    languages.add("en");
                }
                text.fieldNames().forEachRemaining(languages::add);
            }
        }
        languages.removeAll(NO_LANGUAGES);
        return languages;
    }

    @Override
    public void put(ObjectNode drill, Map<String, String> cells) throws CellMistake {
        JsonNode old = drill.at(pointer);
        Map<String, List<String>> lines = new LinkedHashMap<>();
        cells.forEach((language, cell) -> {
            if (!cell.isBlank()) {
                lines.put(language, Part.lines(cell));
            }
        });
        if (lines.isEmpty()) {
            Part.set(drill, pointer, old.isArray() && old.isEmpty() ? old : MissingNode.getInstance());
            return;
        }
        String first =
                lines.containsKey("en") ? "en" : lines.keySet().iterator().next();
        int count = lines.getOrDefault(first, List.of()).size();
        for (Map.Entry<String, List<String>> other : lines.entrySet()) {
            if (other.getValue().size() != count) {
                throw new CellMistake(
                        "There are " + other.getValue().size() + " lines in “" + other.getKey() + "” and " + count
                                + " in “" + first + "”",
                        "Give every language the same number of lines, " + NO_TEXT + " for a line without text");
            }
        }
        Set<String> unseen = languages(old);
        unseen.removeAll(cells.keySet());
        if (count != old.size() && !unseen.isEmpty()) {
            throw new CellMistake(
                    "The number of lines changed, and the column of “"
                            + unseen.iterator().next() + "” is not there",
                    "Bring the sheet with the columns of all languages");
        }
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (int i = 0; i < count; i++) {
            list.add(item(old.path(i), lines, first, i, unseen));
        }
        Part.set(drill, pointer, list);
    }

    private ObjectNode item(JsonNode old, Map<String, List<String>> lines, String first, int index, Set<String> unseen)
            throws CellMistake {
        ObjectNode item = JsonNodeFactory.instance.objectNode();
        if (isOfPairs) {
            item.putObject("fault");
            item.putObject("fix");
        }
        for (String language : unseen) {
            for (String key : isOfPairs ? List.of("fault", "fix") : List.of("")) {
                String text = text(key.isEmpty() ? old : old.path(key), language);
                if (!text.isEmpty()) {
                    at(item, key).put(language, text);
                }
            }
        }
        String mark = "";
        String picture = "";
        for (Map.Entry<String, List<String>> cell : lines.entrySet()) {
            String line = cell.getValue().get(index);
            Matcher ofStep = OF_STEP.matcher(line);
            if (!isOfPairs && cell.getKey().equals(first) && ofStep.matches()) {
                line = ofStep.group(1);
                mark = ofStep.group(2) == null ? "" : ofStep.group(2);
                picture = ofStep.group(3) == null ? "" : ofStep.group(3);
            }
            if (line.equals(NO_TEXT)) {
                continue;
            }
            put(item, cell.getKey(), line);
        }
        if (!mark.isEmpty()) {
            item.put("mark", mark);
        }
        if (!picture.isEmpty()) {
            item.put("picture", picture);
        }
        return item;
    }

    private void put(ObjectNode item, String language, String line) throws CellMistake {
        if (!isOfPairs) {
            item.put(language, line);
            return;
        }
        String[] sides = line.split("\\s*(?:→|->)\\s*", 2);
        if (sides.length < 2) {
            throw new CellMistake(
                    "“" + line + "” has no fix",
                    "Write the fault, an arrow and the fix: Your back hollows. → Sit lower.");
        }
        at(item, "fault").put(language, sides[0]);
        at(item, "fix").put(language, sides[1]);
    }

    private static ObjectNode at(ObjectNode item, String key) {
        return key.isEmpty() ? item : item.withObject("/" + key);
    }
}
