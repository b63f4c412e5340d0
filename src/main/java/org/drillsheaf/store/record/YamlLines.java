package org.drillsheaf.store.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/** Writes values as YAML that our own reader reads back as the very same values. */
final class YamlLines {
    private static final YAMLMapper PLAIN = mapper(true);
    private static final YAMLMapper QUOTED = mapper(false);

    private YamlLines() {}

    /** Without needless quotes where that reads back the same, else with every text quoted. */
    static String write(JsonNode json) {
        String plain = write(PLAIN, json);
        Optional<YamlNode> back = YamlNode.parse("the record", plain, new Problems());
        return back.isPresent() && back.get().json().equals(json) ? plain : write(QUOTED, json);
    }

    private static String write(YAMLMapper mapper, JsonNode json) {
        try {
            return mapper.writeValueAsString(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("values in memory cannot fail to be written", e);
        }
    }

    private static YAMLMapper mapper(boolean plain) {
        YAMLFactory factory = YAMLFactory.builder()
                .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
                .configure(YAMLGenerator.Feature.MINIMIZE_QUOTES, plain)
                .enable(YAMLGenerator.Feature.ALWAYS_QUOTE_NUMBERS_AS_STRINGS)
                .build();
        return new YAMLMapper(factory);
    }
}
