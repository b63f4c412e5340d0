package org.drillsheaf.drill.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The verbs that a step may begin with in one language. */
public record VerbList(Set<String> verbs) {

    public VerbList {
        verbs = Set.copyOf(verbs);
    }

    /** The list that ships for a language; empty when there is none. */
    public static Optional<VerbList> of(String language) {
        try (InputStream in = VerbList.class.getResourceAsStream("verbs-" + language + ".txt")) {
            return in == null
                    ? Optional.empty()
                    : Optional.of(parse(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException("a list inside the program cannot fail to be read", e);
        }
    }

    private static VerbList parse(String text) {
        return new VerbList(text.lines()
                .filter(line -> !line.startsWith("#"))
                .flatMap(line -> java.util.Arrays.stream(line.strip().split("\\s+", -1)))
                .collect(Collectors.toSet()));
    }

    /** Whether the first word is one of the verbs, in any case, with or without a leading mark and Arabic vowel signs. */
    public boolean begins(String step) {
        String first = step.strip().split("[\\s,.:;!?،؛؟]+", 2)[0];
        return verbs.contains(
                first.replaceAll("^[¿¡“\"(]+", "").replaceAll("\\p{Mn}", "").toLowerCase(Locale.ROOT));
    }
}
