package org.drillsheaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class YamlDocumentTest {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final String TEXT =
            """
            # how we sit
            id: sit-tall   # the file's name
            name: {en: Sit tall, es: Siéntese}
            steps:
              - Sit down. # slowly
              - en: Breathe out.
                es: Suelte el aire.
            # the pose follows
            pose:
              start:
                root: seated
                joints:
                  hip: {flex: 88}   # as measured
            """;

    @Test
    void oneNumberChangesAndNothingElse() {
        assertThat(document()
                        .with("/pose/start/joints/hip/flex", JSON.numberNode(94))
                        .text())
                .isEqualTo(TEXT.replace("{flex: 88}", "{flex: 94}"));
    }

    @Test
    void oneTextChangesBesideItsComment() {
        assertThat(document().with("/steps/0", JSON.textNode("Sit: down")).text())
                .isEqualTo(TEXT.replace("- Sit down. #", "- \"Sit: down\" #"));
        assertThat(document().with("/steps/1/es", JSON.textNode("Sople.")).text())
                .isEqualTo(TEXT.replace("Suelte el aire.", "Sople."));
    }

    @Test
    void aNewKeyComesWhereItsMapUsuallyHasIt() {
        assertThat(document()
                        .with("/level", JSON.numberNode(2), List.of("id", "name", "level", "steps"))
                        .text())
                .isEqualTo(TEXT.replace("steps:", "level: 2\nsteps:"));
        assertThat(document().with("/name/ar", JSON.textNode("اجلس")).text())
                .isEqualTo(TEXT.replace("es: Siéntese", "es: Siéntese, ar: اجلس"));
        assertThat(document()
                        .with("/pose/start/feel", JSON.arrayNode().add("glutes"))
                        .text())
                .endsWith("flex: 88}   # as measured\n    feel: [glutes]\n");
    }

    @Test
    void aKeyIsTakenAway() {
        assertThat(document().without("/name").text())
                .isEqualTo(TEXT.replace("name: {en: Sit tall, es: Siéntese}\n", ""));
        assertThat(document().without("/steps/0").at("/steps").size()).isEqualTo(1);
        assertThat(document().without("/nothing").text()).isEqualTo(TEXT);
    }

    @Test
    void aValueTooLongForALineStandsOnSeveral() {
        ObjectNode name = JSON.objectNode();
        name.put("en", "A name that is far too long for one line of a file, as the house style has it");
        name.put("es", "Un nombre demasiado largo para una sola línea de un archivo, según el estilo");

        assertThat(document().with("/name", name).text())
                .contains("name:\n"
                        + "  en: \"A name that is far too long for one line of a file, as the house style has"
                        + " it\"\n"
                        + "  es:");
    }

    @Test
    void everyPlaceOfEveryDrillCanBeChangedAlone() throws IOException {
        Random random = new Random(7);
        try (Stream<Path> files = Files.list(Path.of("exercise-library"))) {
            for (Path file : files.sorted().toList()) {
                YamlDocument drill = YamlDocument.of(file.toString(), Files.readString(file), new Problems())
                        .orElseThrow();
                List<String> places = new ArrayList<>();
                places(drill.at(""), "", places);
                for (int i = 0; i < 2; i++) {
                    String place = places.get(random.nextInt(places.size()));
                    JsonNode value = JSON.textNode("new: {value}, # " + i + " “π” 𝄞");

                    YamlDocument changed = drill.with(place, value); // itself refuses to change more than it should

                    assertThat(changed.at(place)).as(file + place).isEqualTo(value);
                    long touched = changed.text()
                            .lines()
                            .filter(l -> !drill.text().contains(l))
                            .count();
                    assertThat(touched).as("new lines for " + file + place).isBetween(1L, 12L);
                }
            }
        }
    }

    private static void places(JsonNode json, String here, List<String> places) {
        if (!json.isContainerNode()) {
            places.add(here);
        }
        json.properties().forEach(f -> places(f.getValue(), here + "/" + f.getKey(), places));
        for (int i = 0; json.isArray() && i < json.size(); i++) {
            places(json.get(i), here + "/" + i, places);
        }
    }

    private static YamlDocument document() {
        return YamlDocument.of("sit-tall.yaml", TEXT, new Problems()).orElseThrow();
    }
}
