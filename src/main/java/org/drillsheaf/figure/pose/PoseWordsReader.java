package org.drillsheaf.figure.pose;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;

/** Reads the tables of pose words that ship inside the program. */
final class PoseWordsReader {
    private PoseWordsReader() {}

    /** The table of a language, empty when none ships. */
    static Optional<Map<String, String>> table(String language) {
        if (!language.matches("[a-z]{2,3}")) {
            return Optional.empty();
        }
        try (InputStream in = PoseWordsReader.class.getResourceAsStream("words-" + language + ".properties")) {
            return in == null ? Optional.empty() : Optional.of(read(new InputStreamReader(in, StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException("a table inside the program cannot fail to be read", e);
        }
    }

    private static Map<String, String> read(Reader text) throws IOException {
        Properties words = new Properties();
        words.load(text);
        Map<String, String> table = new TreeMap<>();
        words.stringPropertyNames().forEach(key -> table.put(key, words.getProperty(key)));
        return table;
    }
}
