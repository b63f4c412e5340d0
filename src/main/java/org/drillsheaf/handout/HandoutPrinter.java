package org.drillsheaf.handout;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.Problems;
import org.drillsheaf.handout.page.Document;
import org.drillsheaf.handout.page.HouseStyle;
import org.drillsheaf.handout.press.Press;
import org.drillsheaf.saying.Messages;

/**
 * Prints documents: a tagged PDF that is PDF/UA-1 and PDF/A-2a at once, the same bytes for the same document. Reads no file
 * and no clock. Safe for several threads.
 */
public final class HandoutPrinter {
    private final Map<String, Messages> messages;
    private final HouseStyle house;
    private final Press press;

    /**
     * @param templates name of each template file to its text
     * @param messages language tag to its fixed phrases, English among them
     */
    public HandoutPrinter(Map<String, String> templates, Map<String, Messages> messages, HouseStyle house) {
        this.messages = Map.copyOf(messages);
        this.house = house;
        this.press = new Press(templates, house);
    }

    /**
     * Prints one document.
     *
     * @return the PDF, empty when {@code problems} got an error: a letter without a font, a fault in a template
     */
    public Optional<byte[]> print(Document document, Problems problems) {
        return press.print(document, this::messagesFor, problems);
    }

    /** Languages whose fixed phrases are there. */
    public Set<String> languages() {
        return messages.keySet();
    }

    public HouseStyle house() {
        return house;
    }

    /** The phrases of the language, each gap filled with English. */
    public Messages messagesFor(String language) {
        Messages english = java.util.Objects.requireNonNull(messages.get("en"));
        Messages own = messages.get(language);
        return own == null ? english : own.over(english);
    }
}
