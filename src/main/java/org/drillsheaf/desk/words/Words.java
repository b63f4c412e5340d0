package org.drillsheaf.desk.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/** The texts of the interface in one language. Immutable. */
public final class Words {
    /** Languages the interface speaks, by tag. */
    public static final List<String> LANGUAGES = List.of("en", "es");

    private final String language;
    private final Map<String, String> texts;

    private Words(String language, Map<String, String> texts) {
        this.language = language;
        this.texts = texts;
    }

    /** @param language a tag; English when the interface does not speak it */
    public static Words in(String language) {
        String known = LANGUAGES.contains(language) ? language : "en";
        return new Words(known, read(known));
    }

    private static Map<String, String> read(String language) {
        String file = "desk-" + language + ".properties";
        Properties properties = new Properties();
        try (InputStream bytes = Words.class.getResourceAsStream(file)) {
            if (bytes == null) {
                throw new IllegalStateException(file + " is not in the jar");
            }
            try (Reader reader = new InputStreamReader(bytes, StandardCharsets.UTF_8)) {
                properties.load(reader);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
        Map<String, String> texts = new TreeMap<>();
        properties.forEach((key, text) -> texts.put(key.toString(), text.toString()));
        return Collections.unmodifiableMap(texts);
    }

    public String language() {
        return language;
    }

    public Locale locale() {
        return Locale.forLanguageTag(language);
    }

    /** Every key with its text. */
    public Map<String, String> all() {
        return texts;
    }

    /** Whether there is a text under the key. */
    public boolean has(String key) {
        return texts.containsKey(key);
    }

    /**
     * The text under a key, with {@code {0}}, {@code {1}} … replaced.
     *
     * @throws IllegalArgumentException when there is none; a test looks at every key
     */
    public String text(String key, Object... values) {
        String text = texts.get(key);
        if (text == null) {
            throw new IllegalArgumentException("no text " + key + " in " + language);
        }
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }

    /** One text for one thing and another for several: the keys end in {@code .one} and {@code .many}. */
    public String count(String key, int number, Object... more) {
        Object[] values = new Object[more.length + 1];
        values[0] = number;
        System.arraycopy(more, 0, values, 1, more.length);
        return text(key + (number == 1 ? ".one" : ".many"), values);
    }

    /** What stands between the whole and the broken part of a number. */
    public String decimalSign() {
        return text("format.decimal-sign");
    }

    /** A number of a record or a file, for example {@code -1.6} or {@code 162.0}, as this language writes it: {@code −1,6}, {@code 162}. */
    public String number(String plain) {
        return plain.replaceFirst("\\.0$", "").replace('-', '−').replace(".", decimalSign());
    }

    /** What was typed with point or comma, in any language, as records and files write a number. */
    public static String plain(String typed) {
        return typed.strip().replace('−', '-').replace(',', '.');
    }

    /** A day as on the line of visits, for example {@code 23 April}. */
    public String day(LocalDate date) {
        return DateTimeFormatter.ofPattern(text("format.day"), locale()).format(date);
    }

    /** A day with its year. */
    public String date(LocalDate date) {
        return DateTimeFormatter.ofPattern(text("format.date"), locale()).format(date);
    }

    /** A time of day, for example {@code 10:42}. */
    public String time(LocalTime time) {
        return DateTimeFormatter.ofPattern("HH:mm", locale()).format(time);
    }

    /** The same text with a capital at its beginning, for a line that stands alone. */
    public static String capital(String text) {
        if (text.isEmpty()) {
            return text;
        }
        int first = text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
    }
}
