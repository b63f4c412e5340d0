package org.drillsheaf.desk.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The texts of the interface against the code that asks for them. */
class WordsTest {
    private static final Pattern KEY = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)*\\.?)\"");

    private static String sources() {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/org/drillsheaf/desk"))) {
            return files.filter(f -> f.toString().endsWith(".java"))
                    .map(WordsTest::read)
                    .collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyLanguageHasTheSameKeysAndPlaces() {
        Map<String, String> english = Words.in("en").all();
        for (String language : Words.LANGUAGES) {
            Map<String, String> texts = Words.in(language).all();
            assertThat(texts.keySet()).as(language).isEqualTo(english.keySet());
            texts.forEach((key, text) -> {
                assertThat(text).as(language + " " + key).isNotBlank();
                assertThat(places(text)).as(language + " " + key).isEqualTo(places(english.get(key)));
            });
        }
    }

    /** A properties file takes the last of two lines with one key, and says nothing. */
    @Test
    void noKeyStandsTwice() {
        for (String language : Words.LANGUAGES) {
            String file = "src/main/resources/org/drillsheaf/desk/words/desk-" + language + ".properties";
            assertThat(read(Path.of(file))
                            .lines()
                            .filter(line -> line.contains(" = "))
                            .map(line -> line.split(" = ")[0]))
                    .as(file)
                    .doesNotHaveDuplicates();
        }
    }

    private static Set<String> places(String text) {
        return Pattern.compile("\\{\\d\\}")
                .matcher(text)
                .results()
                .map(java.util.regex.MatchResult::group)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyKeyThatIsAskedForIsThere() {
        Matcher asked = Pattern.compile("(?:words|words\\(\\))\\s*\\.(text|count)\\(\\s*\"([a-z0-9.-]+)\"\\s*([+,)])")
                .matcher(sources());
        Set<String> keys = Words.in("en").all().keySet();
        int found = 0;
        while (asked.find()) {
            found++;
            String key = asked.group(2);
            boolean known = asked.group(3).equals("+")
                    ? keys.stream().anyMatch(k -> k.startsWith(key))
                    : asked.group(1).equals("count")
                            ? keys.contains(key + ".one") && keys.contains(key + ".many")
                            : keys.contains(key);
            assertThat(known).as("a text under " + key).isTrue();
        }
        assertThat(found).as("texts asked for").isGreaterThan(100);
    }

    @Test
    void noTextIsThereThatNobodyAsksFor() {
        Set<String> written =
                KEY.matcher(sources()).results().map(m -> m.group(1)).collect(Collectors.toSet());
        Set<String> unused = new TreeSet<>();
        for (String key : Words.in("en").all().keySet()) {
            String plain = key.replaceFirst("\\.(one|many)$", "");
            boolean used = written.contains(key)
                    || written.contains(plain)
                    || written.stream().anyMatch(w -> w.endsWith(".") && key.startsWith(w))
                    || written.stream().anyMatch(w -> w.endsWith("-") && key.startsWith(w));
            if (!used) {
                unused.add(key);
            }
        }
        assertThat(unused).isEmpty();
    }
}
