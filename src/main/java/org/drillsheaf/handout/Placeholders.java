package org.drillsheaf.handout;

import java.util.LinkedHashMap;
import java.util.Map;
import org.drillsheaf.Side;
import org.drillsheaf.program.Entry;
import org.drillsheaf.saying.Messages;

/** The values that stand for {@code {side}}, {@code {breaths}} or {@code {heels-from-wall}} in the texts of one drill. */
final class Placeholders {
    private static final String OWN = "⟦";
    private static final String OWN_END = "⟧";

    private final Map<String, String> counts = new LinkedHashMap<>();
    private final Map<String, String> distances = new LinkedHashMap<>();

    /** @param inStatures distances by name, in statures */
    Placeholders(Messages messages, double statureCentimetres, Entry entry, Map<String, Double> inStatures) {
        Side side = entry.side().orElse(Side.RIGHT);
        counts.put("side", messages.say("side." + side.id(), Map.of()));
        counts.put("other-side", messages.say("side." + side.opposite().id(), Map.of()));
        String each = messages.say("number", Map.of("value", entry.dose().each()));
        counts.put(entry.dose().count(), each);
        counts.put(
                "seconds", messages.say("number", Map.of("value", entry.dose().holdSeconds())));
        inStatures.forEach((name, statures) -> distances.put(
                name,
                messages.say("length.centimetres", Map.of("value", Math.round(statures * statureCentimetres)))
                        .replace(' ', '\u00a0')));
    }

    String value(String name) {
        return distances.getOrDefault(name, "");
    }

    /** The text with its values; the client's own numbers stand in brackets for {@code Wording.withOwnNumbers}. */
    String fill(String text) {
        return fill(text, OWN, OWN_END);
    }

    String plain(String text) {
        return fill(text, "", "");
    }

    private String fill(String text, String before, String after) {
        String filled = text;
        for (Map.Entry<String, String> count : counts.entrySet()) {
            filled = filled.replace("{" + count.getKey() + "}", count.getValue());
        }
        for (Map.Entry<String, String> distance : distances.entrySet()) {
            filled = filled.replace("{" + distance.getKey() + "}", before + distance.getValue() + after);
        }
        return filled;
    }
}
