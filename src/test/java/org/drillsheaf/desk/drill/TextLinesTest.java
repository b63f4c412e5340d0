package org.drillsheaf.desk.drill;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.junit.jupiter.api.Test;

class TextLinesTest {
    private static final JsonNode STEPS =
            json("[{en: Sit down., es: Siéntese., mark: seat}, Breathe., {en: Stand up., es: Levántese.}]");

    @Test
    void aChangedLineKeepsItsMarkAndItsTranslation() {
        assertThat(TextLines.changed(STEPS, "en", "Sit tall.\nBreathe.\nStand up."))
                .isEqualTo(json(
                        "[{en: Sit tall., es: Siéntese., mark: seat}, Breathe., {en: Stand up., es: Levántese.}]"));
    }

    @Test
    void aLineBetweenIsNewAndAllOthersStay() {
        assertThat(TextLines.changed(STEPS, "en", "Sit down.\nWait.\nBreathe.\nStand up.\n\n"))
                .isEqualTo(json("[{en: Sit down., es: Siéntese., mark: seat}, {en: Wait.}, Breathe., {en: Stand up.,"
                        + " es: Levántese.}]"));
    }

    @Test
    void aLineTakenAwayTakesItsItem() {
        assertThat(TextLines.changed(STEPS, "en", "Sit down.\nStand up."))
                .isEqualTo(json("[{en: Sit down., es: Siéntese., mark: seat}, {en: Stand up., es: Levántese.}]"));
    }

    @Test
    void aLanguageComesAndGoesButEnglishStays() {
        JsonNode both = TextLines.with(STEPS.get(1), "ar", "تنفس.");
        assertThat(both).isEqualTo(json("{en: Breathe., ar: تنفس.}"));
        assertThat(TextLines.with(both, "ar", " ").has("ar")).isFalse();
        assertThat(TextLines.with(JsonNodeFactory.instance.textNode("Breathe."), "en", ""))
                .isEqualTo(JsonNodeFactory.instance.textNode(""));
        assertThat(TextLines.text(STEPS.get(1), "es")).isEmpty();
    }

    @Test
    void differencesAreToldFieldByField() {
        JsonNode before = json("{name: {en: Sit}, steps: [a, b], level: 1}");
        JsonNode now = json("{name: {en: Sit, es: Siéntese}, steps: [a, c], level: 1, family: sit}");

        assertThat(Difference.between(before, now))
                .containsExactly(
                        new Difference("name, es", "", "Siéntese"),
                        new Difference("steps, 2", "b", "c"),
                        new Difference("family", "", "sit"));
        assertThat(Difference.between(now, now)).isEmpty();
    }

    private static JsonNode json(String yaml) {
        return YamlNode.parse("test", "value: " + yaml, new Problems())
                .orElseThrow()
                .nearest("/value")
                .json();
    }
}
