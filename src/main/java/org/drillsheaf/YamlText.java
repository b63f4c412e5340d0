package org.drillsheaf;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;

/** Turns the text of a YAML document into nodes, and refuses what our files never need. */
final class YamlText {
    private static final int DEEPEST = 30;
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private YamlText() {}

    static Optional<YamlNode> parse(String file, String text, Problems problems) {
        if (text.length() > YamlNode.LARGEST_FILE) {
            problems.error(file, 0, "The file is too large", "Keep it under " + YamlNode.LARGEST_FILE + " characters");
            return Optional.empty();
        }
        if (hasOverlongLine(file, text, problems)) {
            return Optional.empty();
        }
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(YamlNode.LARGEST_FILE);
        options.setAllowDuplicateKeys(false);
        YAMLFactory factory = YAMLFactory.builder().loaderOptions(options).build();
        try (JsonParser parser = factory.createParser(text)) {
            if (parser.nextToken() == null) {
                problems.error(file, 1, "The file is empty", "Write at least one line of YAML");
                return Optional.empty();
            }
            YamlNode root = new Parse(file, parser, problems).node("");
            if (parser.nextToken() != null) {
                problems.error(
                        file,
                        parser.currentTokenLocation().getLineNr(),
                        "A second YAML document begins here",
                        "Keep one document a file and remove the line with three dashes");
                return Optional.empty();
            }
            return problems.hasErrors() ? Optional.empty() : Optional.of(root);
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            problems.error(
                    file,
                    Math.max(line, 0),
                    "This is not valid YAML: " + firstLine(e.getOriginalMessage()),
                    "Check the indents, colons, quotes and brackets around this line");
            return Optional.empty();
        } catch (IOException e) {
            throw new IllegalStateException("a text in memory cannot fail to be read", e);
        }
    }

    /** The YAML library needs many seconds for a text of megabytes on one line, so that is told before it is asked. */
    private static boolean hasOverlongLine(String file, String text, Problems problems) {
        int line = 1;
        int start = 0;
        while (start < text.length()) {
            int end = text.indexOf('\n', start);
            end = end < 0 ? text.length() : end;
            if (end - start > 4 * YamlNode.LONGEST_TEXT) {
                problems.error(
                        file,
                        line,
                        "This line is " + (end - start) + " characters long",
                        "Keep every text under " + YamlNode.LONGEST_TEXT + " characters");
                return true;
            }
            start = end + 1;
            line++;
        }
        return false;
    }

    private static String firstLine(String message) {
        String line = message.strip().lines().findFirst().orElse("unreadable").strip();
        return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
    }

    /** One pass over the parser's tokens. */
    private record Parse(String file, JsonParser parser, Problems problems) {

        YamlNode node(String path) throws IOException {
            int line = parser.currentTokenLocation().getLineNr();
            JsonToken token = parser.currentToken();
            if (path.chars().filter(c -> c == '/').count() > DEEPEST) {
                problems.error(
                        file,
                        line,
                        "The lists or maps are nested too deep here",
                        "Keep them under " + DEEPEST + " levels");
                parser.skipChildren();
                return new YamlNode(file, line, path, null, null, null, JSON.nullNode());
            }
            return switch (token) {
                case START_OBJECT -> map(line, path);
                case START_ARRAY -> list(line, path);
                case VALUE_NULL -> new YamlNode(file, line, path, null, null, null, JSON.nullNode());
                default -> value(line, path, token);
            };
        }

        private YamlNode map(int line, String path) throws IOException {
            Map<String, YamlNode> entries = new LinkedHashMap<>();
            ObjectNode json = JSON.objectNode();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                int keyLine = parser.currentTokenLocation().getLineNr();
                parser.nextToken();
                YamlNode child = node(path + "/" + YamlNode.step(key));
                if (entries.putIfAbsent(key, child) != null) {
                    problems.error(
                            file, keyLine, "“" + shorten(key) + "” stands here a second time", "Keep one of the two");
                }
                json.set(key, child.json());
            }
            return new YamlNode(file, line, path, null, java.util.Collections.unmodifiableMap(entries), null, json);
        }

        private YamlNode list(int line, String path) throws IOException {
            List<YamlNode> items = new ArrayList<>();
            ArrayNode json = JSON.arrayNode();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                YamlNode item = node(path + "/" + items.size());
                items.add(item);
                json.add(item.json());
            }
            return new YamlNode(file, line, path, null, null, List.copyOf(items), json);
        }

        private YamlNode value(int line, String path, JsonToken token) throws IOException {
            String text = parser.getText();
            if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
                problems.error(
                        file,
                        line,
                        "“*" + text + "” points at another place",
                        "Write the value out; our files use no anchors");
            }
            if (text.length() > YamlNode.LONGEST_TEXT) {
                problems.error(
                        file,
                        line,
                        "This text is " + text.length() + " characters long",
                        "Keep every text under " + YamlNode.LONGEST_TEXT + " characters");
                text = text.substring(0, 40);
                token = JsonToken.VALUE_STRING;
            }
            JsonNode json =
                    switch (token) {
                        case VALUE_TRUE -> JSON.booleanNode(true);
                        case VALUE_FALSE -> JSON.booleanNode(false);
                        case VALUE_NUMBER_INT -> whole(text);
                        case VALUE_NUMBER_FLOAT -> decimal(text);
                        default -> JSON.textNode(text);
                    };
            return new YamlNode(file, line, path, text, null, null, json);
        }

        private static JsonNode decimal(String text) {
            try {
                return JSON.numberNode(Double.parseDouble(text.replace("_", "")));
            } catch (NumberFormatException e) {
                return JSON.textNode(text); // .nan, .inf
            }
        }

        private JsonNode whole(String text) throws IOException {
            BigDecimal exact = parser.getDecimalValue();
            return exact.abs().compareTo(BigDecimal.valueOf(Integer.MAX_VALUE)) <= 0
                    ? JSON.numberNode(exact.intValue())
                    : JSON.textNode(text);
        }

        private static String shorten(String text) {
            return text.length() > 60 ? text.substring(0, 60) + "…" : text;
        }
    }
}
