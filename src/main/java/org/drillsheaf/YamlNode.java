package org.drillsheaf;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import org.jspecify.annotations.Nullable;

/**
 * A piece of a YAML document that knows its file and line, so that whoever reads it can say where something is wrong. A
 * map, a list or a single value; immutable.
 */
public final class YamlNode {
    /** No text in any of our files is longer; a longer one is a mistake or an attack. Characters. */
    public static final int LONGEST_TEXT = 4_000;
    /** No file of ours is larger. Characters. */
    public static final int LARGEST_FILE = 16_000_000;

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final String file;
    private final int line;
    private final String path;
    private final @Nullable String text;
    private final @Nullable Map<String, YamlNode> map;
    private final @Nullable List<YamlNode> list;
    private final JsonNode json;

    YamlNode(
            String file,
            int line,
            String path,
            @Nullable String text,
            @Nullable Map<String, YamlNode> map,
            @Nullable List<YamlNode> list,
            JsonNode json) {
        this.file = file;
        this.line = line;
        this.path = path;
        this.text = text;
        this.map = map;
        this.list = list;
        this.json = json;
    }

    /**
     * Reads one YAML document.
     *
     * @param file name of the file, for messages only
     * @return empty when the text is no YAML or breaks our limits; the reason then stands in {@code problems}
     */
    public static Optional<YamlNode> parse(String file, String text, Problems problems) {
        Problems own = new Problems(); // what was found in other files must not decide about this one
        Optional<YamlNode> root = YamlText.parse(file, text, own);
        problems.addAll(own.all());
        return root;
    }

    /**
     * The same content as a document that nobody wrote down as YAML.
     *
     * @param file name of the file, for messages only
     * @param lineOf the line to tell for a place, given as a JSON pointer
     */
    public static YamlNode of(String file, JsonNode json, ToIntFunction<String> lineOf) {
        return of(file, json, "", lineOf);
    }

    private static YamlNode of(String file, JsonNode json, String path, ToIntFunction<String> lineOf) {
        int line = lineOf.applyAsInt(path);
        if (json.isObject()) {
            Map<String, YamlNode> entries = new LinkedHashMap<>();
            json.properties()
                    .forEach(entry -> entries.put(
                            entry.getKey(), of(file, entry.getValue(), path + "/" + step(entry.getKey()), lineOf)));
            return new YamlNode(file, line, path, null, java.util.Collections.unmodifiableMap(entries), null, json);
        }
        if (json.isArray()) {
            List<YamlNode> items = new ArrayList<>();
            for (JsonNode item : json) {
                items.add(of(file, item, path + "/" + items.size(), lineOf));
            }
            return new YamlNode(file, line, path, null, null, List.copyOf(items), json);
        }
        return new YamlNode(file, line, path, json.isNull() ? null : json.asText(), null, null, json);
    }

    /** A key as one step of a JSON pointer. */
    static String step(String key) {
        return key.replace("~", "~0").replace("/", "~1");
    }

    public String file() {
        return file;
    }

    /** Line on which this node begins, from 1. */
    public int line() {
        return line;
    }

    /** Place inside the document as a JSON pointer, for example {@code /dose/sets/0}; empty for the root. */
    public String path() {
        return path;
    }

    public boolean isMap() {
        return map != null;
    }

    public boolean isList() {
        return list != null;
    }

    /** A single value that is not null. */
    public boolean isValue() {
        return text != null;
    }

    /** The same content for a schema. */
    public JsonNode json() {
        return json;
    }

    /** Keys of a map in the order of the file; empty for anything else. */
    public Set<String> keys() {
        return map == null ? Set.of() : map.keySet();
    }

    /** Entries of a map in the order of the file; empty for anything else. */
    public Map<String, YamlNode> entries() {
        return map == null ? Map.of() : map;
    }

    /** Items of a list; empty for anything else. */
    public List<YamlNode> items() {
        return list == null ? List.of() : list;
    }

    public boolean has(String key) {
        return map != null && map.containsKey(key);
    }

    public Optional<YamlNode> get(String key) {
        return map == null ? Optional.empty() : Optional.ofNullable(map.get(key));
    }

    /** The node at a JSON pointer below this one, or the nearest node above it that exists. */
    public YamlNode nearest(String pointer) {
        YamlNode here = this;
        for (String step : pointer.split("/")) {
            if (step.isEmpty()) {
                continue;
            }
            String key = step.replace("~1", "/").replace("~0", "~");
            YamlNode next = null;
            if (here.map != null) {
                next = here.map.get(key);
            } else if (here.list != null && key.matches("\\d{1,6}")) {
                int index = Integer.parseInt(key);
                next = index < here.list.size() ? here.list.get(index) : null;
            }
            if (next == null) {
                return here;
            }
            here = next;
        }
        return here;
    }

    /** The written value of a single value; empty for a map, a list or null. */
    public Optional<String> text() {
        return Optional.ofNullable(text);
    }

    public Optional<String> text(String key) {
        return get(key).flatMap(YamlNode::text);
    }

    /** A finite number, or empty. */
    public Optional<Double> number() {
        return json.isNumber() && Double.isFinite(json.doubleValue())
                ? Optional.of(json.doubleValue())
                : Optional.empty();
    }

    public Optional<Double> number(String key) {
        return get(key).flatMap(YamlNode::number);
    }

    public Optional<Integer> integer() {
        return json.isInt() ? Optional.of(json.intValue()) : Optional.empty();
    }

    public Optional<Integer> integer(String key) {
        return get(key).flatMap(YamlNode::integer);
    }

    /** {@code true}/{@code false}, or the words yes and no. */
    public Optional<Boolean> truth() {
        if (json.isBoolean()) {
            return Optional.of(json.booleanValue());
        }
        if ("yes".equals(text)) {
            return Optional.of(true);
        }
        return "no".equals(text) ? Optional.of(false) : Optional.empty();
    }

    public Optional<Boolean> truth(String key) {
        return get(key).flatMap(YamlNode::truth);
    }

    /** An ISO day such as 2026-03-05. */
    public Optional<LocalDate> date() {
        try {
            return text == null ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    public Optional<LocalDate> date(String key) {
        return get(key).flatMap(YamlNode::date);
    }

    /** The texts of a list of single values, or of one single value; empty when the key is missing. */
    public List<String> texts(String key) {
        Optional<YamlNode> node = get(key);
        if (node.isEmpty()) {
            return List.of();
        }
        if (node.get().text != null) {
            return List.of(node.get().text);
        }
        List<String> texts = new ArrayList<>();
        for (YamlNode item : node.get().items()) {
            item.text().ifPresent(texts::add);
        }
        return List.copyOf(texts);
    }

    /** A text by language, written either as a map of language to text or as one English text. */
    public Optional<LocalText> localText() {
        if (text != null) {
            return Optional.of(LocalText.english(text));
        }
        Map<String, String> texts = new LinkedHashMap<>();
        entries().forEach((language, node) -> node.text().ifPresent(t -> texts.put(language, t)));
        return texts.isEmpty() ? Optional.empty() : Optional.of(new LocalText(texts));
    }

    public Optional<LocalText> localText(String key) {
        return get(key).flatMap(YamlNode::localText);
    }

    /**
     * This node with another laid over it: maps merge key by key, anything else (lists too) is replaced. Every part keeps
     * the file and line it was written on.
     */
    public YamlNode with(YamlNode over) {
        if (map == null || over.map == null) {
            return over;
        }
        Map<String, YamlNode> merged = new LinkedHashMap<>(map);
        over.map.forEach((key, node) -> merged.merge(key, node, YamlNode::with));
        ObjectNode mergedJson = JSON.objectNode();
        merged.forEach((key, node) -> mergedJson.set(key, node.json));
        return new YamlNode(
                over.file, over.line, path, null, java.util.Collections.unmodifiableMap(merged), null, mergedJson);
    }

    /** This map with one text under a key, which counts as written where the map begins; anything else unchanged. */
    public YamlNode with(String key, String value) {
        if (map == null) {
            return this;
        }
        Map<String, YamlNode> entries = new LinkedHashMap<>(map);
        entries.put(key, new YamlNode(file, line, path + "/" + key, value, null, null, JSON.textNode(value)));
        ObjectNode entriesJson = JSON.objectNode();
        entries.forEach((k, node) -> entriesJson.set(k, node.json));
        return new YamlNode(file, line, path, null, java.util.Collections.unmodifiableMap(entries), null, entriesJson);
    }

    /** This map without one key; anything else unchanged. */
    public YamlNode without(String key) {
        if (map == null || !map.containsKey(key)) {
            return this;
        }
        Map<String, YamlNode> rest = new LinkedHashMap<>(map);
        rest.remove(key);
        ObjectNode restJson = JSON.objectNode();
        rest.forEach((k, node) -> restJson.set(k, node.json));
        return new YamlNode(file, line, path, null, java.util.Collections.unmodifiableMap(rest), null, restJson);
    }

    /** Reports an error at this node. */
    public void error(Problems problems, String what, String remedy) {
        problems.error(file, line, what, remedy);
    }

    @Override
    public String toString() {
        return file + ":" + line + " " + json;
    }
}
