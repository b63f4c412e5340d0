package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A part without language: a word, a number, a day, a range.
 *
 * @param writing how a value is written in its cell
 */
record PlainPart(String pointer, Writing writing) implements Part {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    /** How a value is written in a cell. */
    enum Writing {
        /** A word or a sentence. */
        TEXT {
            @Override
            String show(JsonNode value) {
                return value.asText();
            }

            @Override
            JsonNode read(String cell) {
                return JSON.textNode(cell.strip());
            }
        },
        /** A day such as 2026-10-12. */
        DAY {
            @Override
            String show(JsonNode value) {
                return value.asText();
            }

            @Override
            JsonNode read(String cell) throws CellMistake {
                if (!cell.strip().matches("\\d{4}-\\d{2}-\\d{2}")) {
                    throw new CellMistake("“" + cell + "” is no day", "Write it as 2026-10-12");
                }
                return JSON.textNode(cell.strip());
            }
        },
        NUMBER {
            @Override
            String show(JsonNode value) {
                return value.asText();
            }

            @Override
            JsonNode read(String cell) throws CellMistake {
                return number(cell);
            }
        },
        YES_OR_NO {
            @Override
            String show(JsonNode value) {
                return value.asBoolean() ? "yes" : "no";
            }

            @Override
            JsonNode read(String cell) throws CellMistake {
                return switch (cell.strip().toLowerCase(java.util.Locale.ROOT)) {
                    case "yes", "true" -> JSON.booleanNode(true);
                    case "no", "false" -> JSON.booleanNode(false);
                    default -> throw new CellMistake("“" + cell + "” is neither yes nor no", "Write yes or no");
                };
            }
        },
        /** Words, one a line. */
        WORDS {
            @Override
            String show(JsonNode value) {
                List<String> words = new ArrayList<>();
                value.forEach(word -> words.add(word.asText()));
                return String.join("\n", words);
            }

            @Override
            JsonNode read(String cell) {
                ArrayNode words = JSON.arrayNode();
                Part.lines(cell).stream().filter(line -> !line.isEmpty()).forEach(words::add);
                return words;
            }
        },
        /** Words with a number each, {@code restore-hip-extension: 3}, one a line. */
        COUNTED_WORDS {
            @Override
            String show(JsonNode value) {
                List<String> lines = new ArrayList<>();
                value.properties()
                        .forEach(e -> lines.add(e.getKey() + ": " + e.getValue().asText()));
                return String.join("\n", lines);
            }

            @Override
            JsonNode read(String cell) throws CellMistake {
                ObjectNode words = JSON.objectNode();
                for (String line : Part.lines(cell)) {
                    int colon = line.lastIndexOf(':');
                    if (colon < 0) {
                        throw new CellMistake(
                                "“" + line + "” has no number", "Write a word, a colon and a number on each line");
                    }
                    words.set(line.substring(0, colon).strip(), number(line.substring(colon + 1)));
                }
                return words;
            }
        },
        /** {@code 2 (1 to 3)}: the usual value and its range. */
        USUAL_AND_RANGE {
            @Override
            String show(JsonNode value) {
                JsonNode range = value.path("range");
                return value.path("default").asText() + " (" + range.path(0).asText() + " to "
                        + range.path(1).asText() + ")";
            }

            @Override
            JsonNode read(String cell) throws CellMistake {
                Matcher matcher = RANGE.matcher(cell.strip());
                if (!matcher.matches()) {
                    throw new CellMistake(
                            "“" + cell + "” is no value with a range",
                            "Write the usual value and in brackets the least and the most, for example 2 (1 to 3)");
                }
                ObjectNode range = JSON.objectNode();
                range.set("default", number(matcher.group(1)));
                range.putArray("range").add(number(matcher.group(2))).add(number(matcher.group(3)));
                return range;
            }
        },
        /** {@code 3} or {@code 5 to 7}. */
        ONE_OR_RANGE {
            @Override
            String show(JsonNode value) {
                return value.isArray()
                        ? value.path(0).asText() + " to " + value.path(1).asText()
                        : value.asText();
            }

            @Override
            JsonNode read(String cell) throws CellMistake {
                String[] bounds = cell.strip().split("\\s+to\\s+");
                if (bounds.length == 1) {
                    return number(cell);
                }
                return JSON.arrayNode().add(number(bounds[0])).add(number(bounds[1]));
            }
        };

        abstract String show(JsonNode value);

        abstract JsonNode read(String cell) throws CellMistake;

        private static final Pattern RANGE =
                Pattern.compile("(\\d{1,4})\\s*\\(\\s*(\\d{1,4})\\s+to\\s+(\\d{1,4})\\s*\\)");

        private static JsonNode number(String text) throws CellMistake {
            String plain = text.strip();
            if (plain.matches("-?\\d{1,6}")) {
                return JSON.numberNode(Integer.parseInt(plain));
            }
            if (plain.matches("-?\\d{1,6}\\.\\d{1,6}")) {
                return JSON.numberNode(Double.parseDouble(plain));
            }
            throw new CellMistake("“" + plain + "” is no number", "Write a number such as 2 or 0.5, with a point");
        }
    }

    @Override
    public String cell(JsonNode drill, String language) {
        JsonNode value = drill.at(pointer);
        return value.isMissingNode() || value.isNull() ? "" : writing.show(value);
    }

    @Override
    public void put(ObjectNode drill, Map<String, String> cells) throws CellMistake {
        String cell = cells.getOrDefault(NO_LANGUAGE, "");
        boolean isEmptyList = writing == Writing.WORDS && drill.at(pointer).isArray();
        Part.set(drill, pointer, cell.isBlank() && !isEmptyList ? MissingNode.getInstance() : writing.read(cell));
    }
}
