package org.drillsheaf;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.StreamSupport;

/** What stands in a file and what a schema wants there, in the words of somebody who writes the file. */
final class SchemaWords {
    private static final int LONGEST_SHOWN = 40;
    private static final int MOST_CHOICES = 20;

    private SchemaWords() {}

    /** What stands there now, such as “17O” or a list. */
    static String found(JsonNode value) {
        return switch (value.getNodeType()) {
            case OBJECT -> "lines of its own";
            case ARRAY -> "a list";
            case NULL, MISSING -> "nothing";
            default -> {
                String text = value.asText();
                yield text.isEmpty()
                        ? "empty"
                        : "“" + (text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text) + "”";
            }
        };
    }

    /**
     * What would be right.
     *
     * @param keyword the rule that is broken
     * @param rules all rules for this value
     * @return empty when the rule is none that can be said in a few words
     */
    static Optional<String> wanted(String keyword, JsonNode rules) {
        JsonNode rule = rules.path(keyword);
        return switch (keyword) {
            case "type", "minimum", "maximum", "exclusiveMinimum", "exclusiveMaximum" ->
                Optional.of("Write " + kind(rules) + range(rules));
            case "enum" -> choices(rule);
            case "const" -> Optional.of("Write “" + rule.asText() + "”");
            case "minLength" -> Optional.of("Write something here, or leave the line out if it may be missing");
            case "maxLength" -> Optional.of("Write " + rule.asInt() + " signs at most");
            case "minItems", "minProperties" -> Optional.of("Write at least " + rule.asInt());
            case "maxItems", "maxProperties" -> Optional.of("Write " + rule.asInt() + " at most");
            case "uniqueItems" -> Optional.of("Name each only once");
            case "pattern" ->
                texts(rules.path("examples")).stream().findFirst().map(example -> "Write it like “" + example + "”");
            default -> Optional.empty();
        };
    }

    private static String kind(JsonNode rules) {
        JsonNode type = rules.path("type");
        List<String> kinds = new ArrayList<>();
        for (String one : type.isArray() ? texts(type) : List.of(type.asText("number"))) {
            kinds.add(
                    switch (one) {
                        case "integer" -> "a whole number";
                        case "number" -> "a number";
                        case "boolean" -> "true or false";
                        case "string" -> "a text; one that looks like a number or a date needs quotes";
                        case "array" -> "a list: [one, another]";
                        default -> "lines of its own below it, each “name: value”";
                    });
        }
        return String.join(", or ", kinds);
    }

    private static String range(JsonNode rules) {
        Optional<String> least = bound(rules, "minimum", "").or(() -> bound(rules, "exclusiveMinimum", "more than "));
        Optional<String> most = bound(rules, "maximum", "").or(() -> bound(rules, "exclusiveMaximum", "less than "));
        if (least.isPresent() && most.isPresent()) {
            return " from " + least.get() + " to " + most.get();
        }
        return least.map(bound -> bound.startsWith("more") ? ", " + bound : ", " + bound + " or more")
                .or(() -> most.map(bound -> bound.startsWith("less") ? ", " + bound : ", " + bound + " at most"))
                .orElse("");
    }

    private static Optional<String> bound(JsonNode rules, String keyword, String before) {
        return Optional.ofNullable(rules.get(keyword)).map(value -> before + value.asText());
    }

    private static Optional<String> choices(JsonNode rule) {
        List<String> words = texts(rule);
        return words.isEmpty() || words.size() > MOST_CHOICES
                ? Optional.empty()
                : Optional.of("Use one of: " + String.join(", ", words));
    }

    private static List<String> texts(JsonNode list) {
        return StreamSupport.stream(list.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }
}
