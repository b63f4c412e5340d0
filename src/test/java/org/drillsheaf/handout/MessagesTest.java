package org.drillsheaf.handout;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.saying.Messages;
import org.drillsheaf.saying.MessagesReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Templates, program and phrases name the same keys. */
class MessagesTest {
    private static final Pattern SAID = Pattern.compile("(?:say|phrase|day)\\([^()]*?\"((?:[a-z-]+\\.)*[a-z-]+)\"");
    private static final Pattern BUILT = Pattern.compile("(?:say|phrase)\\((?:messages\\.)?\"((?:[a-z-]+\\.)+)\" \\+");
    private static final Pattern ANY = Pattern.compile("\"((?:[a-z-]+\\.)*[a-z-]+\\.?)\"");

    static Stream<String> languages() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("templates/messages"))) {
            return files.map(f -> f.getFileName().toString().replace(".yaml", "")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void languageHasEveryPhraseThatEnglishHasWithTheSameValues(String language) {
        Messages english = messages("en");
        Messages own = messages(language);

        assertThat(own.phrases().keySet()).isEqualTo(english.phrases().keySet());
        english.phrases().forEach((key, phrase) -> {
            if (!key.startsWith("date.") && !key.equals("time")) {
                assertThat(arguments(own.phrases().get(key), language)).as(key).isEqualTo(arguments(phrase, "en"));
                assertThat(stars(own.phrases().get(key)))
                        .as("bold parts of " + key)
                        .isEqualTo(stars(phrase));
            }
        });
    }

    @Test
    void everyPhraseThatIsSaidIsThere() {
        Set<String> keys = messages("en").phrases().keySet();

        assertThat(SAID.matcher(sources()).results().map(r -> r.group(1)))
                .isNotEmpty()
                .allMatch(key -> keys.contains(key) || keys.stream().anyMatch(k -> k.startsWith(key)), "is a phrase");
        assertThat(BUILT.matcher(sources()).results().map(r -> r.group(1)))
                .isNotEmpty()
                .allMatch(start -> keys.stream().anyMatch(k -> k.startsWith(start)), "begins a phrase");
    }

    @Test
    void everyPhraseIsSaidSomewhere() {
        String sources = sources();
        Set<String> named = ANY.matcher(sources).results().map(r -> r.group(1)).collect(Collectors.toSet());

        Set<String> unused = new TreeSet<>(messages("en").phrases().keySet());
        unused.removeIf(
                key -> named.contains(key) || named.stream().anyMatch(n -> n.endsWith(".") && key.startsWith(n)));
        assertThat(unused).isEmpty();
    }

    private static String sources() {
        try (Stream<Path> templates = Files.walk(Path.of("templates"));
                Stream<Path> makers = Files.walk(Path.of("src/main/java/org/drillsheaf/handout"))) {
            Stream<Path> code =
                    Stream.concat(makers, Stream.of(Path.of("src/main/java/org/drillsheaf/saying/Messages.java")));
            StringBuilder all = new StringBuilder();
            for (Path file : Stream.concat(templates, code)
                    .filter(f -> f.toString().endsWith(".ftlx") || f.toString().endsWith(".java"))
                    .toList()) {
                all.append(Files.readString(file)).append('\n');
            }
            return all.toString();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static Set<String> arguments(String phrase, String language) {
        return new MessageFormat(phrase, new ULocale(language)).getArgumentNames();
    }

    private static long stars(String phrase) {
        return phrase.chars().filter(c -> c == '*').count();
    }

    static Messages messages(String language) {
        Problems problems = new Problems();
        String file = "templates/messages/" + language + ".yaml";
        try {
            return YamlNode.parse(file, Files.readString(Path.of(file)), problems)
                    .flatMap(node -> MessagesReader.read(node, problems))
                    .orElseThrow(() -> new AssertionError(problems.all()));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
