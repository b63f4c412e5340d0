package org.drillsheaf;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Pattern;

/** Writes values in the style of our files: short ones on one line, longer ones on a line a part. */
final class YamlWriter {
    /** Longest line that is not broken, characters. */
    static final int WIDTH = 118;

    private static final Pattern PLAIN =
            Pattern.compile("\\d{4}-\\d{2}-\\d{2}|[\\p{L}(¿¡][^\\p{Cc}\\[\\]{},#&*!|>'\"%@`\\\\]*");
    private static final Set<String> WORDS_OF_YAML =
            Set.of("true", "false", "yes", "no", "on", "off", "null", "y", "n", ".inf", ".nan");

    private YamlWriter() {}

    /**
     * A value behind its key, or behind the dash of a list.
     *
     * @param column where the line's text has come to
     * @param indent of the parts of a value that needs several lines
     * @param afterKey whether a value of several lines begins on a new one
     */
    static String value(JsonNode json, int column, int indent, boolean afterKey) {
        String line = line(json);
        if (!json.isContainerNode() || json.isEmpty() || column + 1 + line.length() <= WIDTH) {
            return afterKey ? " " + line : line;
        }
        String lines = lines(json, indent);
        return afterKey ? "\n" + " ".repeat(indent) + lines : lines;
    }

    /** On several lines; the first one is not indented. */
    private static String lines(JsonNode json, int indent) {
        StringJoiner lines = new StringJoiner("\n" + " ".repeat(indent));
        if (json.isArray()) {
            json.forEach(item -> lines.add("- " + value(item, indent + 1, indent + 2, false)));
            return lines.toString();
        }
        json.properties().forEach(f -> lines.add(entry(f.getKey(), f.getValue(), indent)));
        return lines.toString();
    }

    static String entry(String key, JsonNode json, int indent) {
        String written = text(key);
        return written + ":" + value(json, indent + written.length() + 1, indent + 2, true);
    }

    private static String line(JsonNode json) {
        if (json.isArray()) {
            StringJoiner items = new StringJoiner(", ", "[", "]");
            json.forEach(item -> items.add(line(item)));
            return items.toString();
        }
        if (json.isObject()) {
            StringJoiner entries = new StringJoiner(", ", "{", "}");
            json.properties().forEach(f -> entries.add(text(f.getKey()) + ": " + line(f.getValue())));
            return entries.toString();
        }
        return json.isTextual() ? text(json.textValue()) : json.toString();
    }

    private static String text(String text) {
        boolean plain = PLAIN.matcher(text).matches()
                && !text.contains(": ")
                && !text.endsWith(":")
                && text.equals(text.strip())
                && !WORDS_OF_YAML.contains(text.toLowerCase(java.util.Locale.ROOT));
        if (plain) {
            return text;
        }
        return QuotedText.quoted(text);
    }
}
