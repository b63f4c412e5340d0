package org.drillsheaf.drill.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * How hard an English text is to read.
 *
 * @param sentences at least 1
 * @param words at least 1
 */
public record Readability(int sentences, int words, int syllables) {
    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?:;؟؛])\\s+|\\n+");
    private static final Pattern SPACE = Pattern.compile("[\\s–—/]+");

    /** Counts a text. A sentence ends at a full stop, mark, colon or semicolon, or at the end of a line. */
    public static Readability of(String text) {
        int sentences = 0;
        int words = 0;
        int syllables = 0;
        for (String sentence : sentences(text)) {
            List<String> inIt = words(sentence);
            sentences += inIt.isEmpty() ? 0 : 1;
            words += inIt.size();
            syllables += inIt.stream().mapToInt(Syllables::of).sum();
        }
        return new Readability(Math.max(1, sentences), Math.max(1, words), Math.max(1, syllables));
    }

    public static List<String> sentences(String text) {
        return List.of(SENTENCE_END.split(text.strip()));
    }

    /** The words of a sentence; a placeholder stands for a number and its unit. */
    public static List<String> words(String sentence) {
        List<String> words = new ArrayList<>();
        for (String word :
                SPACE.split(sentence.replaceAll("\\{[^}]*}", "ten cm").strip())) {
            if (word.chars().anyMatch(Character::isLetterOrDigit)) {
                words.add(word);
            }
        }
        return words;
    }

    /** Flesch–Kincaid grade. Kincaid et al., Navy Research Branch Report 8-75, 1975. */
    public double grade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /** Flesch reading ease. Flesch, J Appl Psychol 1948;32:221-233. */
    public double ease() {
        return 206.835 - 1.015 * words / sentences - 84.6 * syllables / words;
    }
}
