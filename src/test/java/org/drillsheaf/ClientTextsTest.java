package org.drillsheaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The texts of the vocabularies that a client reads stand in every language in which a client is written to. */
class ClientTextsTest {
    private static final Set<String> LANGUAGES = Set.of("en", "es", "ar");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*}");
    /** Keys that only the coach reads: what a word means in the trade, the questions that settings ask, how a test is taken. */
    private static final Map<String, Set<String>> OF_THE_COACH = Map.of(
            "goals", Set.of("meaning"),
            "positions", Set.of("meaning"),
            "conditions", Set.of("meaning", "settings"),
            "tests", Set.of("name", "sign", "steps", "ends", "doubts", "bars", "cares"),
            "red-flags", Set.of("concern", "action"));

    @ParameterizedTest
    @ValueSource(
            strings = {"goals", "positions", "equipment", "phases", "cautions", "tests", "red-flags", "conditions"})
    void everyClientTextIsThereInEveryLanguageWithTheSamePlaceholders(String vocabulary) throws IOException {
        List<YamlNode> texts = new ArrayList<>();
        collect(read(vocabulary), OF_THE_COACH.getOrDefault(vocabulary, Set.of()), texts);

        assertThat(texts).isNotEmpty().allSatisfy(text -> {
            Map<String, String> byLanguage = text.localText().orElseThrow().byLanguage();
            assertThat(byLanguage.keySet()).as(text.toString()).containsAll(LANGUAGES);
            byLanguage.forEach((language, words) -> assertThat(placeholders(words))
                    .as("%s in %s", text, language)
                    .isEqualTo(placeholders(byLanguage.getOrDefault("en", ""))));
        });
    }

    /** The window of a coach speaks English or Spanish. */
    @ParameterizedTest
    @ValueSource(strings = {"tests", "red-flags"})
    void whatTheCoachReadsWhileScreeningIsThereInEnglishAndSpanish(String vocabulary) throws IOException {
        List<YamlNode> texts = new ArrayList<>();
        collect(read(vocabulary), Set.of(), texts);

        assertThat(texts).hasSizeGreaterThan(40).allSatisfy(text -> assertThat(
                        text.localText().orElseThrow().byLanguage())
                .as(text.toString())
                .containsKeys("en", "es"));
    }

    private static Set<String> placeholders(String text) {
        return new TreeSet<>(
                PLACEHOLDER.matcher(text).results().map(MatchResult::group).toList());
    }

    private static void collect(YamlNode node, Set<String> left, List<YamlNode> texts) {
        if (node.isMap() && node.has("en")) {
            texts.add(node);
        } else if (node.isMap()) {
            node.entries().entrySet().stream()
                    .filter(e -> !left.contains(e.getKey()))
                    .forEach(e -> collect(e.getValue(), left, texts));
        } else if (node.isList()) {
            node.items().forEach(item -> collect(item, left, texts));
        }
    }

    private static YamlNode read(String vocabulary) throws IOException {
        Path file = Path.of("shared", vocabulary + ".yaml");
        Optional<YamlNode> node = YamlNode.parse(file.toString(), Files.readString(file), new Problems());
        return node.orElseThrow();
    }
}
