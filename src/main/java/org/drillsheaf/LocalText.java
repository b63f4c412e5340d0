package org.drillsheaf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One text in several languages.
 *
 * @param byLanguage language tag (for example {@code en}) to text, at least one entry
 */
public record LocalText(Map<String, String> byLanguage) {

    public LocalText {
        if (byLanguage.isEmpty()) {
            throw new IllegalArgumentException("a text needs at least one language");
        }
        byLanguage = java.util.Collections.unmodifiableMap(new TreeMap<>(byLanguage));
    }

    public static LocalText english(String text) {
        return new LocalText(Map.of("en", text));
    }

    public boolean has(String language) {
        return byLanguage.containsKey(language);
    }

    public Optional<String> in(String language) {
        return Optional.ofNullable(byLanguage.get(language));
    }

    /** The first of the wanted languages that is there, else English, else whatever there is. */
    public String best(List<String> languages) {
        return java.util.Objects.requireNonNull(byLanguage.get(bestLanguage(languages)));
    }

    /** Tag of the language that {@link #best} takes. */
    public String bestLanguage(List<String> languages) {
        return languages.stream()
                .filter(this::has)
                .findFirst()
                .orElseGet(
                        () -> has("en") ? "en" : byLanguage.keySet().iterator().next());
    }

    public String english() {
        return best(List.of("en"));
    }
}
