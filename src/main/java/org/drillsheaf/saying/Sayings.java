package org.drillsheaf.saying;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** The phrases of every language in which the program can say what it has to say. Immutable and safe for several threads. */
public final class Sayings {
    static final String FALLBACK = "en";

    private final Map<String, Messages> byLanguage;
    /** Each language with the English phrase where its own is missing. */
    private final Map<String, Messages> complete = new TreeMap<>();

    /** @param byLanguage language tag to phrases, English among them */
    public Sayings(Map<String, Messages> byLanguage) {
        this.byLanguage = Collections.unmodifiableMap(new TreeMap<>(byLanguage));
        Messages english = byLanguage.get(FALLBACK);
        if (english == null) {
            throw new IllegalArgumentException("the English phrases are missing");
        }
        byLanguage.forEach((language, own) -> complete.put(language, own.over(english)));
    }

    /** The phrases of each language as they are written, gaps and all. */
    public Map<String, Messages> byLanguage() {
        return byLanguage;
    }

    /** @param language a tag; English where the language has no phrases */
    public Speech in(String language, Speech.Names names) {
        Messages phrases = complete.getOrDefault(language, complete.get(FALLBACK));
        return new Speech(java.util.Objects.requireNonNull(phrases), names);
    }
}
