package org.drillsheaf.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.screen.rule.Rule;
import org.drillsheaf.screen.rule.RuleReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleReaderTest {
    private final Problems problems = new Problems();

    private Rule read(String yaml) {
        YamlNode root = House.yaml(yaml);
        RuleReader reader = new RuleReader(
                PresentationReader.words(
                        House.RULES.battery(), java.util.Set.of("one-side-forward", "extension-both-sides")),
                root.get("definitions").map(YamlNode::entries).orElse(Map.of()),
                root.get("groups").map(YamlNode::entries).orElse(Map.of()),
                problems);
        return reader.read(root.get("rule").orElseThrow());
    }

    @Test
    void aRuleIsReadWithItsDefinitionsAndGroups() {
        Rule rule = read(
                """
                definitions:
                  short: limited breath-out
                groups:
                  signs: [short, limited back-rib-expansion]
                rule:
                  any:
                    - {at-least: 1, at-most: 1, of: signs}
                    - not: {all: [short, value breath-out >= 5]}
                    - some-side: less thigh-drop this
                """);

        assertThat(problems.all()).extracting(Problem::message).isEmpty();
        assertThat(rule).isInstanceOf(Rule.Any.class);
        assertThat(((Rule.Any) rule).rules()).hasSize(3);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "limitd breath-out | neither a statement nor a definition",
                "limited breath-owt | There is no test “breath-owt”",
                "limited thigh-drop | does not say which side",
                "limited breath-out left | has no sides",
                "limited thigh-drop this | speaks of this side where there is none",
                "limited thigh-drop upper | “upper” is no side",
                "limited thigh-drop both and more | has too many words",
                "beyond breath-out | has no mark beyond expected",
                "wide breath-out | is not wide or narrow",
                "marked squat-depth.tips | names no mark of squat-depth",
                "value breath-out | needs a number",
                "value sway-back-stance >= 3 | names no value of sway-back-stance",
                "limited breath-out >= 3 | takes no number",
                "value breath-out >= soon | has no number behind >=",
                "holds nothing-here | There is no presentation “nothing-here”",
                "differ breath-out | has no sides that could differ",
                "limited | does not say of what",
                "loop | leads back to itself",
                "{at-least: 2, of: nowhere} | There is no group “nowhere”",
                "{at-least: two, of: [limited breath-out]} | needs a whole number",
                "{any: [limited breath-out], all: [limited breath-out]} | has 2 of the words",
                "{any: [limited breath-out], wrods: x} | “wrods” is not known in a rule",
                "{each-side: limited thigh-drop} | does not say which side"
            })
    void aMistakeIsToldWithItsLine(String rule, String what) {
        read("definitions:\n  loop: {all: [loop]}\nrule:\n  all:\n    - limited breath-out\n    - " + rule + "\n");

        assertThat(problems.all()).hasSize(1);
        assertThat(problems.all().get(0).what()).contains(what);
        assertThat(problems.all().get(0).remedy()).isNotBlank();
        assertThat(problems.all().get(0).line()).isEqualTo(rule.equals("loop") ? 2 : 6);
    }

    @Test
    void aMistakeInTheProjectsOwnFileIsToldOnItsLine() {
        String text = House.text(House.SHARED.resolve("presentations.yaml"))
                .replace(
                        "- limited hip-extension both\n      - {words: {en: two outer",
                        "- limited hip-extensoin both\n      - {words: {en: two outer");
        Problems found = new Problems();
        var node = YamlNode.parse("presentations.yaml", text, found).orElseThrow();

        assertThat(new PresentationReader(House.schema("presentations"), House.RULES.battery()).read(node, found))
                .isEmpty();
        long expected =
                text.lines().takeWhile(l -> !l.contains("hip-extensoin")).count() + 1;
        assertThat(found.all()).extracting(Problem::line).contains((int) expected);
        assertThat(found.all().get(0).remedy()).isEqualTo("Write “hip-extension” if that was meant");
    }

    @Test
    void everyTestOfTheBatteryHasASourceStepsAndSign() {
        assertThat(House.RULES.battery().tests()).hasSize(16);
        assertThat(House.RULES.battery().tests().values()).allSatisfy(t -> {
            assertThat(t.sources()).isNotEmpty();
            assertThat(t.method().steps()).isNotEmpty();
            assertThat(t.method().sign().english()).isNotBlank();
            assertThat(t.names().client().byLanguage()).containsKeys("en", "es");
        });
        assertThat(House.RULES.battery().tests().values().stream()
                        .mapToInt(MovementTest::minutes)
                        .sum())
                .isEqualTo(29);
        assertThat(House.RULES.battery().shortSet().stream()
                        .mapToInt(MovementTest::minutes)
                        .sum())
                .isEqualTo(14);
        assertThat(List.copyOf(House.RULES.battery().tests().keySet())).startsWith("sway-back-stance", "knee-to-wall");
    }
}
