package org.drillsheaf;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.TreeSet;

/**
 * The shape that a YAML file must have, written as a JSON Schema so that editors can complete it too. Immutable and safe
 * for several threads.
 */
public final class YamlSchema {
    private final Schema schema;
    private final JsonNode rules;

    private YamlSchema(Schema schema, JsonNode rules) {
        this.schema = schema;
        this.rules = rules;
    }

    /** Reads a schema of the 2020-12 draft; a schema of ours that does not parse is a broken build, not bad input. */
    public static YamlSchema of(String jsonText) {
        SchemaRegistry registry = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        try {
            return new YamlSchema(registry.getSchema(jsonText), new ObjectMapper().readTree(jsonText));
        } catch (JsonProcessingException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** Reports every place where the document does not have the shape. */
    public void check(YamlNode document, Problems problems) {
        List<Error> errors = schema.validate(document.json());
        TreeSet<String> seen = new TreeSet<>();
        for (Error error : errors) {
            YamlNode place = place(document, error);
            Problem problem = problem(place, error, rulesOf(error));
            if (seen.add(problem.message())) {
                problems.add(problem);
            }
        }
    }

    private static YamlNode place(YamlNode document, Error error) {
        String pointer = error.getInstanceLocation().toString();
        if (pointer.startsWith("$")) {
            throw new IllegalStateException("expected a JSON pointer, got " + pointer);
        }
        YamlNode node = document.nearest(pointer);
        String property = error.getProperty();
        // An unknown or misplaced key is shown on its own line, not where its map begins.
        return property == null ? node : node.get(property).orElse(node);
    }

    /** All that is asked of the value whose error it is. */
    private JsonNode rulesOf(Error error) {
        String broken = String.valueOf(error.getSchemaLocation().getFragment());
        return rules.at(broken.substring(0, Math.max(0, broken.lastIndexOf('/'))));
    }

    private static Problem problem(YamlNode node, Error error, JsonNode rules) {
        String where = node.path().isEmpty()
                ? "the top of the file"
                : "“" + node.path().substring(1).replace('/', '.') + "”";
        String property = error.getProperty();
        return switch (error.getKeyword()) {
            case "required" ->
                Problem.error(
                        node.file(),
                        node.line(),
                        "“" + property + "” is missing in " + where,
                        "Add a line “" + property + ": …”");
            case "additionalProperties", "unevaluatedProperties" ->
                Problem.error(
                        node.file(),
                        node.line(),
                        "“" + property + "” is not known here",
                        "Check the spelling, or remove it; the schema lists the words that may stand here");
            default ->
                Problem.error(
                        node.file(),
                        node.line(),
                        where + " cannot be " + SchemaWords.found(error.getInstanceNode()),
                        SchemaWords.wanted(error.getKeyword(), rules).orElseGet(() -> asTheSchemaSays(error)));
        };
    }

    private static String asTheSchemaSays(Error error) {
        return "The schema says: " + error.getMessage().replaceFirst("^[^:]*: ", "");
    }
}
