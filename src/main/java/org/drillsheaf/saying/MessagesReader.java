package org.drillsheaf.saying;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.util.ULocale;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;

/** Reads the fixed phrases of one language. */
public final class MessagesReader {
    private MessagesReader() {}

    /** The phrases, empty when {@code problems} got an error. */
    public static Optional<Messages> read(YamlNode file, Problems problems) {
        Problems found = new Problems();
        String language = file.text("language").orElse("");
        String direction = file.text("direction").orElse("");
        if (!language.matches("[a-z]{2,3}(-[A-Za-z0-9]{2,8})*")) {
            file.error(found, "“language” has to be a language tag", "Write a line like “language: en”");
        }
        if (!direction.equals("left-to-right") && !direction.equals("right-to-left")) {
            file.error(
                    found, "“direction” is missing", "Write “direction: left-to-right” or “direction: right-to-left”");
        }
        Map<String, String> phrases = new LinkedHashMap<>();
        file.get("phrases").ifPresent(node -> node.entries().forEach((key, value) -> {
            String text = value.text().orElse("");
            if (text.isBlank()) {
                value.error(found, "The phrase “" + key + "” is empty", "Write the words");
            } else if (isMessage(key) && !isWellFormed(text, language)) {
                value.error(
                        found,
                        "The phrase “" + key + "” has a bracket or a form that is not closed",
                        "Count the { and }");
            }
            phrases.put(key, text);
        }));
        problems.addAll(found.all());
        return found.hasErrors()
                ? Optional.empty()
                : Optional.of(new Messages(language, direction.equals("right-to-left"), phrases));
    }

    /** Patterns of dates and times are no messages. */
    private static boolean isMessage(String key) {
        return !key.startsWith("date.") && !key.equals("time");
    }

    private static boolean isWellFormed(String phrase, String language) {
        try {
            return !new MessageFormat(phrase, new ULocale(language)).toPattern().isEmpty();
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
