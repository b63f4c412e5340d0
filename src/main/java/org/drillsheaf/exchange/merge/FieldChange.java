package org.drillsheaf.exchange.merge;

import com.fasterxml.jackson.databind.JsonNode;

/**
 * One field of a drill that differs between two versions.
 *
 * @param pointer where it stands, as a JSON pointer, for example {@code /name/en}
 * @param old as it is now; a missing node when the field is new
 * @param fresh as it would be; a missing node when the field would go
 */
public record FieldChange(String pointer, JsonNode old, JsonNode fresh) {

    /** The place in plain writing, for example {@code name.en} or {@code action.2.en}, counted from 1. */
    public String field() {
        StringBuilder field = new StringBuilder();
        for (String step : pointer.split("/")) {
            if (!step.isEmpty()) {
                String plain = step.replace("~1", "/").replace("~0", "~");
                field.append(field.isEmpty() ? "" : ".")
                        .append(plain.matches("\\d{1,6}") ? String.valueOf(Integer.parseInt(plain) + 1) : plain);
            }
        }
        return field.toString();
    }

    /** A value for people: texts as they are, anything else as JSON, {@code –} for nothing. */
    public static String shown(JsonNode value) {
        if (value.isMissingNode()) {
            return "–";
        }
        return value.isValueNode() ? value.asText() : value.toString();
    }
}
