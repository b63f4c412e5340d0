package org.drillsheaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A drill that is written as YAML reads as it was. */
class DrillYamlTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @Test
    void everyDrillOfTheCatalogueReadsAsItWas() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("exercise-library"))) {
            for (Path file : files.toList()) {
                YamlNode drill = parse(Files.readString(file));
                String written = DrillYaml.write(drill.json());
                assertThat(parse(written).json()).as(file.toString()).isEqualTo(drill.json());
                assertThat(written.lines().filter(l -> l.length() > 200))
                        .as("lines that only hold more than one text")
                        .allMatch(l -> l.indexOf(": ") == l.lastIndexOf(": ") || l.contains("\""));
            }
        }
    }

    @Test
    void itIsWrittenLikeTheCatalogue() throws IOException {
        assertThat(DrillYaml.write(
                        MAPPER.readTree("{\"id\": \"a\", \"reviewed-on\": \"2026-10-12\", \"name\": {\"en\": \"One:"
                                + " two\", \"es\": \"yes\"}, \"level\": 1, \"tags\": {\"held-weight-kg\":"
                                + " 0.5, \"quick\": true}, \"stop\": []}")))
                .isEqualTo(
                        """
                        id: a
                        reviewed-on: 2026-10-12
                        name: {en: 'One: two', es: 'yes'}
                        level: 1
                        tags: {held-weight-kg: 0.5, quick: true}
                        stop: []
                        """);
    }

    /** YAML breaks lines where few programs do; pasted text brings them along. */
    @ParameterizedTest
    @ValueSource(
            strings = {"\u0085", "a\u0085b", "a \u0085 b", "a\u2028b", "\u2029a", "a\u0085\n\u0085", "\u0085a: b #"})
    void theRareBreaksOfALineComeBack(String text) {
        ObjectNode drill = MAPPER.createObjectNode().put("id", "a").put("reason", text);
        drill.putObject("name").put("en", text);

        assertThat(parse(DrillYaml.write(drill)).json()).isEqualTo(drill);
    }

    @Property(tries = 300)
    void anyTextComesBack(@ForAll String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\\p{Cs}\\p{Co}\\p{Cn}\\uFEFF\\uFFFE\\uFFFF]", "")
                .strip();
        ObjectNode drill = MAPPER.createObjectNode();
        drill.put("id", "a");
        drill.putObject("name").put("en", plain + "\n" + plain);
        drill.put("reason", plain);

        assertThat(parse(DrillYaml.write(drill)).json()).isEqualTo(drill);
    }

    private static YamlNode parse(String text) {
        Problems problems = new Problems();
        return YamlNode.parse("drill.yaml", text, problems)
                .orElseThrow(() -> new AssertionError(problems.all().toString()));
    }
}
