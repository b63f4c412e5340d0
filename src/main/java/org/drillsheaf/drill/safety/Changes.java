package org.drillsheaf.drill.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.drillsheaf.LocalText;

/** The changes that a drill needs, collected while rules are answered. Not safe for several threads. */
final class Changes {
    private final Set<String> variants = new LinkedHashSet<>();
    private final List<LocalText> texts = new ArrayList<>();
    private DoseLimits limits = DoseLimits.NONE;

    void addVariant(String id) {
        variants.add(id);
    }

    void addLimits(DoseLimits more) {
        limits = limits.and(more);
    }

    /** The sentence of a change that is not a variant; a variant brings its own. */
    void addText(LocalText text) {
        if (!texts.contains(text)) {
            texts.add(text);
        }
    }

    void addAll(Changes other) {
        variants.addAll(other.variants);
        limits = limits.and(other.limits);
        other.texts.forEach(this::addText);
    }

    Set<String> variants() {
        return variants;
    }

    DoseLimits limits() {
        return limits;
    }

    List<LocalText> texts() {
        return texts;
    }

    boolean hasVariantOf(List<String> ids) {
        return ids.stream().anyMatch(variants::contains);
    }

    boolean isEmpty() {
        return variants.isEmpty() && limits.isNone() && texts.isEmpty();
    }
}
