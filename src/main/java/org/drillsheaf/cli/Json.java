package org.drillsheaf.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillsheaf.saying.Saying;
import org.drillsheaf.saying.Speech;

/** Writes maps, lists, texts and numbers as indented JSON. */
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private Json() {}

    /** The same with sayings in it, each in words. */
    static String text(Map<String, Object> json, Speech speech) {
        Map<String, Object> said = new LinkedHashMap<>();
        json.forEach((key, value) -> said.put(key, said(value, speech)));
        return text(said);
    }

    private static Object said(Object value, Speech speech) {
        if (value instanceof Saying saying) {
            return speech.say(saying);
        } else if (value instanceof List<?> list) {
            return list.stream().map(item -> said(item, speech)).toList();
        } else if (value instanceof Map<?, ?> map) {
            Map<Object, Object> said = new LinkedHashMap<>();
            map.forEach((key, item) -> said.put(key, said(item, speech)));
            return said;
        }
        return value;
    }

    static String text(Map<String, Object> json) {
        try {
            return MAPPER.writeValueAsString(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of texts and numbers can always be written", e);
        }
    }
}
