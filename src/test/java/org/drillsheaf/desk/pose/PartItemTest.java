package org.drillsheaf.desk.pose;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Map;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.desk.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The fields of a prop as the coach reads and types them; the drill's file knows only points. */
class PartItemTest {
    private static final JsonNode PILLOW = item("{pillow: {at: [0.1, -0.05, 0], size: 0.25, to: head}}");

    private static JsonNode item(String yaml) {
        return YamlNode.parse("drill.yaml", yaml, new Problems()).orElseThrow().json();
    }

    @Test
    void numbersAreShownInTheLanguageOfTheWindow() {
        assertThat(PartItem.fields(PILLOW, Words.in("en")))
                .isEqualTo(Map.of("/pillow/at", "[0.1, −0.05, 0]", "/pillow/size", "0.25", "/pillow/to", "head"));
        assertThat(PartItem.fields(PILLOW, Words.in("es")))
                .isEqualTo(Map.of("/pillow/at", "[0,1; −0,05; 0]", "/pillow/size", "0,25", "/pillow/to", "head"));
    }

    @ParameterizedTest
    @CsvSource({
        "/pillow/size, '0,3', '{pillow: {at: [0.1, -0.05, 0], size: 0.3, to: head}}'",
        "/pillow/size, '0.3', '{pillow: {at: [0.1, -0.05, 0], size: 0.3, to: head}}'",
        "/pillow/at, '[0,2; −0,5; 1]', '{pillow: {at: [0.2, -0.5, 1], size: 0.25, to: head}}'",
        "/pillow/at, '[0.2, -0.5, 1]', '{pillow: {at: [0.2, -0.5, 1], size: 0.25, to: head}}'",
        "/pillow/to, 'knee.R', '{pillow: {at: [0.1, -0.05, 0], size: 0.25, to: knee.R}}'"
    })
    void pointAndCommaMeanTheSameInTheFile(String field, String typed, String file) {
        assertThat(PartItem.with(PILLOW, field, typed)).contains(item(file));
    }
}
