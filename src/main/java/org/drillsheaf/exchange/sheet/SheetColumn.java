package org.drillsheaf.exchange.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;

/**
 * One column of the sheet.
 *
 * @param part what its cells show
 * @param name key of the part, for example {@code action}
 * @param words the part in plain words
 * @param language empty for a part without language
 */
record SheetColumn(Part part, String name, String words, String language) {

    /** First head row: {@code action.es}. */
    String key() {
        return language.isEmpty() ? name : name + "." + language;
    }

    /** Second head row. */
    String title() {
        return language.isEmpty()
                ? words
                : words + ", " + Locale.forLanguageTag(language).getDisplayLanguage(Locale.ENGLISH);
    }

    /** What stands in the cell of a drill. */
    String cell(JsonNode drill) {
        return part.cell(drill, language);
    }
}
