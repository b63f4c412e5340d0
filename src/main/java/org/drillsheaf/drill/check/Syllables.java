package org.drillsheaf.drill.check;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Counts the syllables of English words by their vowel groups, with the silent endings and the split pairs of the language
 * taken into account. An estimate: it agrees with a published dictionary for 99 of 100 words of our texts and for 91 of 100 words
 * drawn from it at random, names among them ({@code ReadabilityTest}).
 */
public final class Syllables {
    private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");
    /** Neighbouring vowels that are spoken apart: Austral-i-an, rad-i-o, be-ing, flu-id. */
    private static final Pattern SPLIT = Pattern.compile(
            "(?<![tcsgh])ia|(?<![tcsgh])io|iu|ien(?!d)|[aeou]ing|yi|(?<!q)ua(?!y)|uou|eo(?!u)|[aeiouy][^aeiouy]*ying$|creat(?=e|o|i)");

    private static final Pattern SILENT_END = Pattern.compile("(?<=[a-z]{2})(?<![aeiouyl])e$|(?<=[aeiouy])le$|"
            + "(?<![td])ed$|(?<![aeiouysxzcgl])(?<!sh|ch)es$|(?<=[aeiouy]l)es$|(?<=[^aeiouy])ely$");
    /** A silent e before an ending: move-ment, care-less, taste-ful. */
    private static final Pattern SILENT_INSIDE =
            Pattern.compile("(?<=[aeiouy][^aeiouyl])e(?=(?:ments?|ful|less|lessly)$)");
    /** Words that the rules get wrong and that our texts use. */
    private static final Map<String, Integer> KNOWN = Map.ofEntries(
            Map.entry("something", 2),
            Map.entry("someone", 2),
            Map.entry("sideways", 2),
            Map.entry("sometimes", 2),
            Map.entry("therefore", 2),
            Map.entry("forehead", 2),
            Map.entry("forearm", 2),
            Map.entry("forearms", 2),
            Map.entry("people", 2),
            Map.entry("chest", 1),
            Map.entry("creature", 2),
            Map.entry("being", 2),
            Map.entry("the", 1),
            Map.entry("area", 3),
            Map.entry("idea", 3),
            Map.entry("science", 2),
            Map.entry("quiet", 2),
            Map.entry("quietly", 3),
            Map.entry("diagnosis", 4),
            Map.entry("rhythm", 2),
            Map.entry("muscle", 2),
            Map.entry("muscles", 2),
            Map.entry("exercise", 3),
            Map.entry("leaned", 1),
            Map.entry("drawer", 1));

    private Syllables() {}

    /** At least one for anything with a letter. */
    public static int of(String word) {
        String plain = word.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
        if (plain.isEmpty()) {
            return 1;
        }
        Integer known = KNOWN.get(plain);
        if (known != null) {
            return known;
        }
        int count = matches(VOWELS, plain) + matches(SPLIT, plain);
        if (SILENT_END.matcher(plain).find()) {
            count--;
        }
        if (SILENT_INSIDE.matcher(plain).find()) {
            count--;
        }
        return Math.max(1, count);
    }

    private static int matches(Pattern pattern, String text) {
        Matcher matcher = pattern.matcher(text);
        int count = 0;
        while (matcher.find()) {
            count++;
        }
        return count;
    }
}
