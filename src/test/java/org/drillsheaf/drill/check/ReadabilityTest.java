package org.drillsheaf.drill.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadabilityTest {
    private final TestReporter reporter;

    ReadabilityTest(TestReporter reporter) {
        this.reporter = reporter;
    }

    /** Published scores of public readability tests, formula checked from counts. */
    @ParameterizedTest
    @CsvSource({
        "1, 6, 6, 116.145, -1.45",
        "6, 6, 6, 121.22, -3.40",
        "1, 16, 22, 74.27, 6.875",
        "1, 13, 26, 24.44, 13.08",
        "1, 13, 24, 37.46, 11.26",
        "10, 271, 367, 64.76, 10.96"
    })
    void formulasGiveThePublishedScores(int sentences, int words, int syllables, double ease, double grade) {
        Readability counts = new Readability(sentences, words, syllables);

        assertThat(counts.ease()).isCloseTo(ease, within(0.01));
        assertThat(counts.grade()).isCloseTo(grade, within(0.01));
    }

    /** Published syllable counts of a public test: 26 in the sentence. */
    @Test
    void theCounterGivesThePublishedSyllables() {
        String sentence = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.";

        assertThat(Readability.of(sentence)).isEqualTo(new Readability(1, 13, 26));
        assertThat(Readability.of("The cat sat on the mat.")).isEqualTo(new Readability(1, 6, 6));
    }

    /** Counted by hand by speaking them, no source. */
    @Test
    void theCounterIsRightForTheWordsOfOurTrade() {
        Map<String, Integer> spoken = Map.ofEntries(
                Map.entry("shoulder", 2),
                Map.entry("shoulders", 2),
                Map.entry("breathe", 1),
                Map.entry("breathing", 2),
                Map.entry("elbow", 2),
                Map.entry("elbows", 2),
                Map.entry("heavy", 2),
                Map.entry("little", 2),
                Map.entry("table", 2),
                Map.entry("chairs", 1),
                Map.entry("places", 2),
                Map.entry("breathes", 1),
                Map.entry("slides", 1),
                Map.entry("closed", 1),
                Map.entry("lifted", 2),
                Map.entry("pulled", 1),
                Map.entry("softly", 2),
                Map.entry("slowly", 2),
                Map.entry("pelvis", 2),
                Map.entry("pillow", 2),
                Map.entry("cushion", 2),
                Map.entry("towel", 2),
                Map.entry("ceiling", 2),
                Map.entry("muscles", 2),
                Map.entry("fingers", 2),
                Map.entry("knees", 1),
                Map.entry("thighs", 1),
                Map.entry("toes", 1),
                Map.entry("ankles", 2),
                Map.entry("sideways", 2),
                Map.entry("forward", 2),
                Map.entry("belly", 2),
                Map.entry("comfortable", 4),
                Map.entry("exhale", 2),
                Map.entry("gentle", 2),
                Map.entry("position", 3),
                Map.entry("raises", 2),
                Map.entry("nose", 1),
                Map.entry("mouth", 1),
                Map.entry("ribs", 1),
                Map.entry("bending", 2),
                Map.entry("opposite", 3),
                Map.entry("easy", 2),
                Map.entry("body", 2),
                Map.entry("buttocks", 2),
                Map.entry("quiet", 2),
                Map.entry("middle", 2),
                Map.entry("seconds", 2),
                Map.entry("always", 2),
                Map.entry("hands", 1),
                Map.entry("wedge", 1),
                Map.entry("heels", 1),
                Map.entry("lying", 2),
                Map.entry("doing", 2),
                Map.entry("carries", 2),
                Map.entry("uses", 2));
        long right = spoken.entrySet().stream()
                .filter(e -> Syllables.of(e.getKey()) == e.getValue())
                .count();
        assertThat(spoken.entrySet().stream()
                        .filter(e -> Syllables.of(e.getKey()) != e.getValue())
                        .map(e -> e.getKey() + " " + Syllables.of(e.getKey())))
                .as("%d of %d are right", right, spoken.size())
                .hasSizeLessThanOrEqualTo(2);
    }

    /**
     * The counter against the CMU Pronouncing Dictionary (see the head of the file). Words drawn at random from it are mostly
     * names, which no rule of spelling gets right; what counts is how it does on the words of our own texts.
     */
    @ParameterizedTest
    @CsvSource({"our texts, 0.985", "drawn at random, 0.91"})
    void theCounterAgreesWithAPublishedDictionary(String part, double least) throws IOException {
        List<String> wrong = new ArrayList<>();
        int all = 0;
        for (Map.Entry<String, Set<Integer>> word : spoken(part).entrySet()) {
            all++;
            if (!word.getValue().contains(Syllables.of(word.getKey()))) {
                wrong.add(word.getKey() + " " + Syllables.of(word.getKey()) + " for " + word.getValue());
            }
        }
        double agreement = 1 - (double) wrong.size() / all;
        reporter.publishEntry(String.format(
                Locale.ROOT, "%s: %.1f %% of %d words agree; not: %s", part, 100 * agreement, all, wrong));

        assertThat(all).isGreaterThanOrEqualTo(1_000);
        assertThat(agreement).isGreaterThanOrEqualTo(least);
    }

    /** Word to the numbers of syllables with which it is spoken. */
    private static Map<String, Set<Integer>> spoken(String part) throws IOException {
        Map<String, Set<Integer>> words = new TreeMap<>();
        try (InputStream in =
                Objects.requireNonNull(ReadabilityTest.class.getResourceAsStream("spoken-syllables.txt"))) {
            String inPart = "";
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                if (line.startsWith("[")) {
                    inPart = line.substring(1, line.length() - 1);
                } else if (inPart.equals(part) && !line.isBlank()) {
                    String[] cells = line.split(" ");
                    Set<Integer> counts =
                            Stream.of(cells[0].split("/")).map(Integer::valueOf).collect(Collectors.toSet());
                    Stream.of(cells).skip(1).forEach(word -> words.put(word, counts));
                }
            }
        }
        return words;
    }

    @Test
    void aPlaceholderCountsAsANumberWithItsUnit() {
        assertThat(Readability.words("Put your heels {heels-from-wall} from the wall."))
                .hasSize(8);
    }
}
