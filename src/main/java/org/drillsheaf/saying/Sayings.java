package org.drillsheaf.saying;

import java.util.Map;
import java.util.TreeMap;

/**
 * The phrases of every language in which the program can say what it has to say.
 *
 * @param byLanguage language tag to phrases, English among them
 */
public record Sayings(Map<String, Messages> byLanguage) {
    static final String FALLBACK = "en";

    public Sayings {
        byLanguage = java.util.Collections.unmodifiableMap(new TreeMap<>(byLanguage));
        if (!byLanguage.containsKey(FALLBACK)) {
            throw new IllegalArgumentException("the English phrases are missing");
        }
    }

    /** @param language a tag; English where the language has no phrases */
    public Speech in(String language, Speech.Names names) {
        Messages english = java.util.Objects.requireNonNull(byLanguage.get(FALLBACK));
        Messages own = byLanguage.getOrDefault(language, english);
        return new Speech(own.over(english), names);
    }
}
