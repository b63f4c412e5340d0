package org.drillsheaf.drill.safety;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.LocalText;
import org.drillsheaf.Source;

/**
 * Something about a condition that a clinician or the house may set.
 *
 * @param cautious what holds when nobody said anything
 * @param words the allowed words of a choice
 * @param disputed sources disagree, or a clinician has to confirm it
 */
public record SettingDefinition(
        String id, Kind kind, String cautious, List<String> words, LocalText name, boolean disputed, Source source) {

    /** What a setting holds. */
    public enum Kind {
        YES_NO,
        NUMBER,
        CHOICE
    }

    public SettingDefinition {
        words = List.copyOf(words);
    }

    /** The value in the one spelling that rules compare with; empty when it is none of this setting's values. */
    public Optional<String> read(String written) {
        return switch (kind) {
            case YES_NO ->
                switch (written) {
                    case "yes", "true" -> Optional.of("yes");
                    case "no", "false" -> Optional.of("no");
                    default -> Optional.empty();
                };
            case NUMBER -> written.matches("-?\\d{1,4}(\\.\\d{1,3})?") ? Optional.of(written) : Optional.empty();
            case CHOICE -> words.contains(written) ? Optional.of(written) : Optional.empty();
        };
    }
}
