package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A part with one text in each language.
 *
 * @param writing what stands in the cell of a language
 */
record LocalPart(String pointer, Writing writing) implements Part {
    /** What stands in the cell of a language. */
    enum Writing {
        /** One text. */
        TEXT,
        /** The forms of a noun, {@code one: breath} and {@code other: breaths}, one a line. */
        FORMS,
        /** Who translated: {@code person} or {@code machine}, and behind semicolons the day of a review and who reviewed. */
        TRANSLATION
    }

    @Override
    public String cell(JsonNode drill, String language) {
        JsonNode value = drill.at(pointer);
        if (value.isTextual()) {
            return language.equals("en") ? value.asText() : ""; // a text without language is English
        }
        JsonNode text = value.path(language);
        return switch (writing) {
            case TEXT -> text.asText("");
            case FORMS -> forms(text);
            case TRANSLATION -> translation(text);
        };
    }

    private static String forms(JsonNode forms) {
        List<String> lines = new ArrayList<>();
        forms.properties()
                .forEach(e -> lines.add(e.getKey() + ": " + e.getValue().asText()));
        return String.join("\n", lines);
    }

    private static String translation(JsonNode translation) {
        List<String> words = new ArrayList<>();
        for (String key : List.of("by", "reviewed-on", "reviewer")) {
            if (translation.has(key)) {
                words.add(translation.path(key).asText());
            }
        }
        return String.join("; ", words);
    }

    @Override
    public void put(ObjectNode drill, Map<String, String> cells) throws CellMistake {
        JsonNode value = drill.at(pointer);
        ObjectNode texts = JsonNodeFactory.instance.objectNode();
        if (value.isTextual()) {
            texts.put("en", value.asText());
        } else {
            value.properties().forEach(e -> texts.set(e.getKey(), e.getValue()));
        }
        for (Map.Entry<String, String> cell : cells.entrySet()) {
            if (cell.getValue().isBlank()) {
                texts.remove(cell.getKey());
            } else {
                texts.set(cell.getKey(), read(cell.getValue().strip()));
            }
        }
        Part.set(drill, pointer, texts.isEmpty() ? MissingNode.getInstance() : texts);
    }

    private JsonNode read(String cell) throws CellMistake {
        JsonNodeFactory json = JsonNodeFactory.instance;
        if (writing == Writing.TEXT) {
            return json.textNode(cell);
        }
        ObjectNode map = json.objectNode();
        if (writing == Writing.FORMS) {
            for (String line : Part.lines(cell)) {
                int colon = line.indexOf(':');
                if (colon < 0) {
                    throw new CellMistake(
                            "“" + line + "” does not say which form it is",
                            "Write “one: breath” and “other: breaths”, one a line");
                }
                map.put(
                        line.substring(0, colon).strip(),
                        line.substring(colon + 1).strip());
            }
            return map;
        }
        String[] words = cell.split("\\s*;\\s*", 3);
        map.put("by", words[0]);
        if (words.length > 1) {
            if (!words[1].matches("\\d{4}-\\d{2}-\\d{2}")) {
                throw new CellMistake(
                        "“" + words[1] + "” is no day", "Write for example “machine; 2026-11-02; Ana Ruiz”");
            }
            map.put("reviewed-on", words[1]);
        }
        if (words.length > 2) {
            map.put("reviewer", words[2]);
        }
        return map;
    }
}
