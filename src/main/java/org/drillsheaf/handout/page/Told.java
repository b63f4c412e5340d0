package org.drillsheaf.handout.page;

import java.util.List;
import org.drillsheaf.LocalText;

/**
 * A text as the reader gets it, with the language it is in: not every text is there in every language.
 *
 * @param language tag, for example {@code en}
 */
public record Told(String text, String language) {

    /** The text in the first of the languages that is there, else in English. */
    public static Told best(LocalText text, List<String> languages) {
        return new Told(text.best(languages), text.bestLanguage(languages));
    }
}
