package org.drillsheaf.saying;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillsheaf.LocalText;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.drill.safety.Measure;
import org.drillsheaf.program.Vocabulary;
import org.drillsheaf.program.VocabularyReader;
import org.drillsheaf.screen.Bar;
import org.drillsheaf.screen.MovementTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The phrases against each other, against the code that says them, and against the house's files. */
class SayingsTest {
    private static final Vocabulary HOUSE =
            VocabularyReader.read(Path.of(""), new Problems()).orElseThrow();
    private static final Map<String, Messages> LANGUAGES = HOUSE.sayings().byLanguage();
    private static final Pattern SAID = Pattern.compile("Saying\\.phrase\\(\\s*\"([a-z.-]+)\"(\\s*\\+)?");
    private static final Pattern ANY = Pattern.compile("\"([a-z]+(?:[.-][a-z]*)+)\"");

    static Stream<String> languages() {
        return LANGUAGES.keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("languages")
    void aLanguageHasEveryPhraseThatEnglishHasAndSaysTheSameThingsInIt(String language) {
        Map<String, String> english = phrases("en");
        Map<String, String> own = phrases(language);

        assertThat(own.keySet()).isEqualTo(english.keySet());
        own.forEach((key, phrase) ->
                assertThat(places(phrase, language)).as(key).isEqualTo(places(english.get(key), "en")));
    }

    @Test
    void everyPhraseThatIsSaidIsThere() {
        Set<String> keys = phrases("en").keySet();
        Matcher said = SAID.matcher(sources());
        int found = 0;
        while (said.find()) {
            found++;
            String key = said.group(1);
            assertThat(keys).as(key).anyMatch(said.group(2) == null ? key::equals : k -> k.startsWith(key));
        }
        assertThat(found).isGreaterThan(100);
    }

    @Test
    void everyPhraseIsSaidSomewhere() {
        String sources = sources();
        Set<String> written =
                ANY.matcher(sources).results().map(m -> m.group(1)).collect(Collectors.toSet());
        List<String> names =
                Arrays.stream(Saying.Name.Kind.values()).map(k -> k.id() + ".").toList();

        Set<String> unused = new TreeSet<>(phrases("en").keySet());
        unused.removeIf(key -> written.contains(key)
                || written.stream().anyMatch(w -> w.endsWith(".") && key.startsWith(w))
                || names.stream().anyMatch(key::startsWith));
        assertThat(unused).isEmpty();
    }

    @Test
    void whatTheHouseNamesByAKeyHasAPhrase() {
        Set<String> keys = phrases("en").keySet();

        assertThat(Arrays.stream(Measure.values()).map(m -> "measure." + m.id()))
                .allMatch(keys::contains);
        assertThat(HOUSE.reading().battery().tests().values().stream()
                        .flatMap(t -> t.marks().stream())
                        .map(mark -> "mark." + mark))
                .allMatch(keys::contains);
        assertThat(Pattern.compile("observed ([a-z-]+)")
                        .matcher(read(Path.of("shared/presentations.yaml")) + read(Path.of("shared/gates.yaml")))
                        .results()
                        .map(m -> "observed." + m.group(1)))
                .isNotEmpty()
                .allMatch(keys::contains);
    }

    /** Their words stand in the rules themselves. */
    @ParameterizedTest
    @MethodSource("languages")
    void theRulesOfTheHouseHaveWordsInEveryLanguage(String language) {
        for (String file : List.of("presentations", "gates", "phases")) {
            for (YamlNode words : wordsIn(yaml(file))) {
                assertThat(words.localText().map(t -> t.has(language)))
                        .as("%s of %s, line %d", language, file, words.line())
                        .contains(true);
            }
        }
        HOUSE.reading().presentations().list().forEach(p -> assertThat(p.name().has(language))
                .as(p.id())
                .isTrue());
        HOUSE.reading().battery().tests().values().forEach(t -> assertThat(
                        t.nameByLanguage().has(language))
                .as(t.id())
                .isTrue());
    }

    /** The window speaks English and Spanish; other languages may lack what only a coach reads there. */
    @Test
    void howATestIsTakenAndWhyItIsNotIsThereInTheLanguagesOfTheWindow() {
        HOUSE.reading().battery().tests().values().forEach(test -> {
            MovementTest.Method method = test.method();
            assertThat(Stream.of(
                                    method.steps().stream(),
                                    Stream.of(method.sign(), method.ends()),
                                    method.doubts().stream(),
                                    test.cares().values().stream(),
                                    test.bars().stream().map(Bar::reason))
                            .flatMap(all -> all))
                    .as(test.id())
                    .allMatch(text -> text.has("en") && text.has("es"));
        });
        HOUSE.reading().safetyGate().questions().forEach(q -> assertThat(
                        q.action().has("es") && q.concern().has("es"))
                .as(q.id())
                .isTrue());
    }

    private static List<YamlNode> wordsIn(YamlNode node) {
        Stream<YamlNode> here = node.get("words").stream();
        Stream<YamlNode> below = Stream.concat(node.entries().values().stream(), node.items().stream())
                .flatMap(n -> wordsIn(n).stream());
        return Stream.concat(here, below).toList();
    }

    @Test
    void aMissingPhraseIsSaidInEnglishAndAMissingNameAsItsId() {
        Messages english = new Messages("en", false, Map.of("rule.free", "{what_inside} free"));
        Messages other = new Messages("es", false, Map.of());
        Speech speech =
                new Sayings(Map.of("en", english, "es", other)).in("es", (kind, id) -> java.util.Optional.empty());

        assertThat(speech.say(
                        Saying.phrase("rule.free").with("what", Saying.name(Saying.Name.Kind.TEST, "thigh-drop"))))
                .isEqualTo("thigh drop free");
    }

    @Test
    void aNumberIsWrittenAsTheLanguageWritesIt() {
        Saying half = Saying.amount(-1.5, "cm");

        assertThat(HOUSE.speech("en").say(half)).isEqualTo("−1.5 cm");
        assertThat(HOUSE.speech("es").say(half)).isEqualTo("−1,5 cm");
        assertThat(HOUSE.speech("ar").say(half)).startsWith("\u200E−1.5").endsWith("\u200E");
    }

    /** Every kind of saying, written and read. */
    @Test
    void aSayingComesBackFromItsLineAsItWas() {
        Saying all = Saying.phrase("values.behind")
                .with(
                        "words",
                        new Saying.Opening(Saying.joined(
                                Saying.Joint.AND,
                                new Saying.Own(
                                        new LocalText(Map.of("en", "on the {side}: \"so\"", "es", "en el lado {side}")),
                                        Map.of("side", Saying.name(Saying.Name.Kind.SIDE, "left"))),
                                Saying.written("a coach's word: {x}, #1"),
                                Saying.written("12"))))
                .with(
                        "values",
                        Saying.joined(
                                Saying.Joint.SEMICOLON, Saying.amount(-9.5, "deg"), new Saying.Amount(3, "", true)))
                .with("count", 2)
                .with("share", 0.25)
                .with("nothing", Saying.NOTHING);

        Problems problems = new Problems();
        YamlNode line = YamlNode.parse("line.yaml", "- " + SayingYaml.write(all) + "\n", problems)
                .orElseThrow();
        assertThat(SayingYaml.read(line.items().get(0))).contains(all);
        assertThat(SayingYaml.write(all)).doesNotContain("\n");
    }

    private static Map<String, String> phrases(String language) {
        return java.util.Objects.requireNonNull(LANGUAGES.get(language)).phrases();
    }

    /** A name inside a sentence is the name. */
    private static Set<String> places(String phrase, String language) {
        return new MessageFormat(phrase, new ULocale(language))
                .getArgumentNames().stream()
                        .map(name -> name.replaceFirst("_inside$", ""))
                        .collect(Collectors.toCollection(TreeSet::new));
    }

    private static YamlNode yaml(String name) {
        return YamlNode.parse(name, read(Path.of("shared/" + name + ".yaml")), new Problems())
                .orElseThrow();
    }

    private static String sources() {
        StringBuilder all = new StringBuilder();
        for (String part : List.of("screen", "drill", "program", "handout", "saying")) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/drillsheaf", part))) {
                files.filter(f -> f.toString().endsWith(".java")).sorted().forEach(f -> all.append(read(f))
                        .append('\n'));
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        }
        return all.toString();
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
