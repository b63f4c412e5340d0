package org.drillsheaf.saying;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.SimpleDateFormat;
import com.ibm.icu.util.TimeZone;
import com.ibm.icu.util.ULocale;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The fixed phrases of one language. A phrase is an ICU message: {@code {name}} takes a value, {@code {count, plural, …}} the
 * right form of a word; {@code *words*} are printed bold. Immutable and safe for several threads.
 *
 * @param language tag, for example {@code en}
 * @param rightToLeft whether pages of this language are mirrored
 * @param phrases key to phrase
 */
public record Messages(String language, boolean rightToLeft, Map<String, String> phrases) {
    public Messages {
        phrases = java.util.Collections.unmodifiableMap(new TreeMap<>(phrases));
    }

    public boolean has(String key) {
        return phrases.containsKey(key);
    }

    /** These phrases, and those of the other language where one is missing. */
    public Messages over(Messages other) {
        Map<String, String> all = new TreeMap<>(other.phrases);
        all.putAll(phrases);
        return new Messages(language, rightToLeft, all);
    }

    /**
     * The phrase with its values.
     *
     * @throws IllegalArgumentException for a key or a value that is not there
     */
    public String say(String key, Map<String, ?> values) {
        String phrase = phrases.get(key);
        if (phrase == null) {
            throw new IllegalArgumentException("no phrase “" + key + "” in the language “" + language + "”");
        }
        if (isPlain(phrase)) {
            return phrase;
        }
        MessageFormat format = new MessageFormat(phrase, locale());
        Set<String> missing = new TreeSet<>(format.getArgumentNames());
        missing.removeAll(values.keySet());
        if (!missing.isEmpty()) {
            throw new IllegalArgumentException("the phrase “" + key + "” needs " + String.join(", ", missing));
        }
        return format.format(values);
    }

    /** Nothing in it is anything but words; most names of things are so. */
    private static boolean isPlain(String phrase) {
        return phrase.indexOf('{') < 0 && phrase.indexOf('\'') < 0;
    }

    /** The language with the digits that its pages use; some languages are at home with two kinds. */
    private ULocale locale() {
        return new ULocale(language + "@numbers=" + phrases.getOrDefault("number.digits", "latn"));
    }

    /** A date in the pattern that this language keeps under the key, for example {@code date.long}. */
    public String day(LocalDate date, String patternKey) {
        return format(patternKey, Date.from(date.atStartOfDay(ZoneOffset.UTC).toInstant()));
    }

    public String time(LocalTime time) {
        return format("time", Date.from(time.atDate(LocalDate.EPOCH).toInstant(ZoneOffset.UTC)));
    }

    private String format(String patternKey, Date date) {
        String pattern = phrases.get(patternKey);
        if (pattern == null) {
            throw new IllegalArgumentException(
                    "no date pattern “" + patternKey + "” in the language “" + language + "”");
        }
        SimpleDateFormat format = new SimpleDateFormat(pattern, locale());
        format.setTimeZone(TimeZone.GMT_ZONE);
        return format.format(date);
    }

    /** The letter of a picture: A, B, C, or that of the language's own order. */
    public String letter(int index) {
        String letters = phrases.getOrDefault("picture.letters", "ABC");
        return letters.substring(index, index + 1).toUpperCase(Locale.ROOT);
    }
}
