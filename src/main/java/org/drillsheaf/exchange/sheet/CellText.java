package org.drillsheaf.exchange.sheet;

import java.util.regex.Pattern;

/** A text on its way into a cell and back, so that no spreadsheet takes it for a formula. */
final class CellText {
    /** Most characters that a spreadsheet keeps in one cell. */
    static final int LONGEST = 32_767;

    private static final Pattern LIKE_A_FORMULA = Pattern.compile("^'*[=+\\-@\\t\\r]", Pattern.DOTALL);
    private static final Pattern ESCAPED = Pattern.compile("^'+[=+\\-@\\t\\r]", Pattern.DOTALL);

    private CellText() {}

    static String escape(String text) {
        return LIKE_A_FORMULA.matcher(text).lookingAt() ? "'" + text : text;
    }

    /** The text of a cell that comes in. */
    static String plain(String cell) {
        return normal(ESCAPED.matcher(cell).lookingAt() ? cell.substring(1) : cell);
    }

    /** A text without what spreadsheets change by themselves: ends of lines, hard spaces, spaces around it. */
    static String normal(String text) {
        return text.replace("\r\n", "\n")
                .replace('\r', '\n')
                .replace('\u00a0', ' ')
                .strip();
    }
}
