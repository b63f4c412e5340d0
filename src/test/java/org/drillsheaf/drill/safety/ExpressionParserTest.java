package org.drillsheaf.drill.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ExpressionParserTest {
    private static final Map<String, SettingDefinition> SETTINGS = Map.of(
            "lifted", setting("lifted", SettingDefinition.Kind.YES_NO, "no"),
            "limit", setting("limit", SettingDefinition.Kind.NUMBER, "80"),
            "risk", setting("risk", SettingDefinition.Kind.CHOICE, "high"));
    private static final SettingValues VALUES = new SettingValues(
            Map.of("lifted", "no", "limit", "80", "risk", "high"),
            Set.of(),
            OptionalLong.of(11),
            40,
            Set.of("another-adult"),
            false);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "hip-flexion > 80 | NO",
                "hip-flexion > 79.9 | YES",
                "hip-flexion >= limit | YES",
                "hip-in > 0 | UNKNOWN",
                "hip-in > 0 or hip-flexion > 10 | YES",
                "hip-in > 0 and hip-flexion > 90 | NO",
                "not lifted | YES",
                "weeks < 12 and not lifted | YES",
                "risk = low | NO",
                "risk = high and (family:wall-lean or drill:other) | YES",
                "on-floor | UNKNOWN",
                "hip-across | NO",
                "seen:another-adult | YES",
                "seen:floor | NO",
                "both-sides | NO",
                "age < 18 | NO",
                "always | YES",
                "not always or hip-flexion > 10 and not drill:a | YES"
            })
    void expressionsAreReadThreeValued(String text, Truth expected) throws ExpressionParser.UnreadableException {
        Facts facts = new Facts(
                Map.of(Measure.HIP_FLEXION, 80.0), Map.of(Measure.HIP_ACROSS, Truth.NO), Set.of("family:wall-lean"));

        assertThat(new ExpressionParser(SETTINGS).parse(text).evaluate(facts, VALUES))
                .isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hip-flexion",
                "hip-flexion >",
                "(hip-flexion > 3",
                "hip-bend > 3",
                "risk = medium",
                "risk > high",
                "hip-flexion > 3 4",
                "lifted > 3",
                "hip-flexion ~ 3",
                ""
            })
    void whatIsNoRuleIsRefusedWithASentence(String text) {
        assertThatThrownBy(() -> new ExpressionParser(SETTINGS).parse(text))
                .isInstanceOf(ExpressionParser.UnreadableException.class)
                .message()
                .isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "hip-flexion < 80",
                "effort = 3",
                "not hip-across",
                "not (lifted or hip-flexion > 80)",
                "belly <= 1"
            })
    void aMeasureMayOnlyMakeARuleStricterWhenItRises(String text) {
        assertThatThrownBy(() -> new ExpressionParser(SETTINGS).parse(text)).hasMessageContaining("when it rises");
    }

    private static SettingDefinition setting(String id, SettingDefinition.Kind kind, String cautious) {
        return new SettingDefinition(
                id,
                kind,
                cautious,
                List.of("high", "low"),
                LocalText.english(id),
                false,
                new Source(Source.Kind.HOUSE, "test"));
    }
}
